#include "view/made_rows.h"

#include <utility>
#include <vector>

namespace groundcount::view {
namespace {

constexpr std::size_t kShort = 1000;

}  // namespace

void MadeRows::show(std::size_t count, std::function<Row(std::size_t)> make)
{
    if (count <= kShort) {
        std::vector<Row> rows;
        for (std::size_t i = 0; i < count; ++i)
            rows.push_back(make(i));
        if (m_make) {
            beginResetModel();
            m_make = nullptr;
            endResetModel();
        }
        setRows(std::move(rows));
        return;
    }
    setRows({});
    beginResetModel();
    m_make = std::move(make);
    m_count = count;
    m_seenRow = -1;
    endResetModel();
    emit countChanged();
}

int MadeRows::rowCount(const QModelIndex& parent) const
{
    return !m_make || parent.isValid() ? RowList::rowCount(parent) : static_cast<int>(m_count);
}

QVariant MadeRows::data(const QModelIndex& index, int role) const
{
    if (!m_make)
        return RowList::data(index, role);
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    if (index.row() != m_seenRow) {
        m_seen.setRows({m_make(static_cast<std::size_t>(index.row()))});
        m_seenRow = index.row();
    }
    return m_seen.data(m_seen.index(0), role);
}

}  // namespace groundcount::view
