#include "view/lift_lines.h"

namespace groundcount::view {
namespace {

enum Role { Number = Qt::UserRole, Made, Complete, Cells };

}  // namespace

void LiftLines::setLines(std::vector<LiftLine> lines)
{
    beginResetModel();
    m_lines = std::move(lines);
    m_cells.clear();
    m_sublots = 0;
    for (const auto& line : m_lines) {
        m_sublots = static_cast<int>(line.cells.size());
        for (std::size_t i = 0; i < line.cells.size(); ++i) {
            auto list = std::make_unique<RowList>();
            list->setRows(line.cells[i]);
            m_cells.push_back(std::move(list));
        }
    }
    endResetModel();
    emit countChanged();
}

int LiftLines::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant LiftLines::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= count())
        return {};
    const LiftLine& line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Number: return line.number;
    case Made: return line.made;
    case Complete: return line.complete;
    case Cells: {
        QObjectList lists;
        for (int i = 0; i < m_sublots; ++i)
            lists.append(m_cells[static_cast<std::size_t>(index.row() * m_sublots + i)].get());
        return QVariant::fromValue(lists);
    }
    default: return {};
    }
}

QHash<int, QByteArray> LiftLines::roleNames() const
{
    return {{Number, "number"}, {Made, "made"}, {Complete, "complete"}, {Cells, "cells"}};
}

}  // namespace groundcount::view
