#include "view/row_list.h"

namespace groundcount::view {
namespace {

enum Role { Id = Qt::UserRole, MarkRole, Lead, Title, Second, Figure, Unit, Word, WordMark, HasBearing, Bearing, Chevron };

}  // namespace

Row Row::ofWords(const QString& title, const QString& second, const QString& word)
{
    Row row;
    row.title = title;
    row.second = second;
    row.word = word;
    return row;
}

void RowList::setRows(std::vector<Row> rows)
{
    if (rows == m_rows)
        return;
    beginResetModel();
    m_rows = std::move(rows);
    endResetModel();
    emit countChanged();
}

int RowList::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant RowList::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= count())
        return {};
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Id: return row.id;
    case MarkRole: return static_cast<int>(row.mark);
    case Lead: return row.lead;
    case Title: return row.title;
    case Second: return row.second;
    case Figure: return row.figure;
    case Unit: return row.unit;
    case Word: return row.word;
    case WordMark: return static_cast<int>(row.wordMark);
    case HasBearing: return row.hasBearing;
    case Bearing: return row.bearing;
    case Chevron: return row.chevron;
    default: return {};
    }
}

QHash<int, QByteArray> RowList::roleNames() const
{
    return {{Id, "rowId"},     {MarkRole, "mark"}, {Lead, "lead"},         {Title, "title"},
            {Second, "second"}, {Figure, "figure"}, {Unit, "unit"},         {Word, "word"},
            {WordMark, "wordMark"}, {HasBearing, "hasBearing"}, {Bearing, "bearing"}, {Chevron, "chevron"}};
}

}  // namespace groundcount::view
