#include "view/day_view.h"

namespace groundcount::view {
namespace {

enum Role { Label = Qt::UserRole, Figure, Deviation, MarkRole, LowLimit, HighLimit, Value };

}  // namespace

void CountLines::setLines(std::vector<CountLine> lines)
{
    if (lines == m_lines)
        return;
    beginResetModel();
    m_lines = std::move(lines);
    endResetModel();
}

int CountLines::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_lines.size());
}

QVariant CountLines::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const CountLine& line = m_lines[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Label: return line.label;
    case Figure: return line.figure;
    case Deviation: return line.deviation;
    case MarkRole: return static_cast<int>(line.mark);
    case LowLimit: return line.lowLimit;
    case HighLimit: return line.highLimit;
    case Value: return line.value;
    default: return {};
    }
}

QHash<int, QByteArray> CountLines::roleNames() const
{
    return {{Label, "label"},       {Figure, "figure"},       {Deviation, "deviation"}, {MarkRole, "mark"},
            {LowLimit, "lowLimit"}, {HighLimit, "highLimit"}, {Value, "value"}};
}

}  // namespace groundcount::view
