#include "view/test_list.h"

#include "view/figure_text.h"
#include "view/test_rows.h"

namespace groundcount::view {
namespace {

enum Role { Id = Qt::UserRole, MarkRole, Lead, Title, Second, Figure, Unit, Word, WordMark };

}  // namespace

void TestList::show(const Session* session, std::vector<std::uint32_t> places)
{
    beginResetModel();
    m_session = session;
    m_places = std::move(places);
    m_formattedRow = -1;
    endResetModel();
    emit countChanged();
}

int TestList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant TestList::data(const QModelIndex& index, int role) const
{
    const auto& tests = m_session->snapshot().tests;
    if (!index.isValid() || index.row() >= count() || m_places[static_cast<std::size_t>(index.row())] >= tests.size())
        return {};
    if (index.row() != m_formattedRow) {
        const auto& test = tests[m_places[static_cast<std::size_t>(index.row())]];
        m_formatted = testRow(test);
        m_formatted.second += ", " + localText(test.startedAt, test.offsetMinutes, QStringLiteral("MMM d, h:mm"));
        m_formattedRow = index.row();
    }
    switch (role) {
    case Id: return m_formatted.id;
    case MarkRole: return static_cast<int>(m_formatted.mark);
    case Lead: return m_formatted.lead;
    case Title: return m_formatted.title;
    case Second: return m_formatted.second;
    case Figure: return m_formatted.figure;
    case Unit: return m_formatted.unit;
    case Word: return m_formatted.word;
    case WordMark: return static_cast<int>(m_formatted.wordMark);
    default: return {};
    }
}

QHash<int, QByteArray> TestList::roleNames() const
{
    return {{Id, "rowId"}, {MarkRole, "mark"}, {Lead, "lead"}, {Title, "title"}, {Second, "second"}, {Figure, "figure"}, {Unit, "unit"}, {Word, "word"}, {WordMark, "wordMark"}};
}

}  // namespace groundcount::view
