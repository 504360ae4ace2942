#include "view/arithmetic_model.h"

#include <utility>

namespace groundcount::view {
namespace {

enum Role { Name = Qt::UserRole + 1, Formula, Numbers, Value, Source };

}  // namespace

void ArithmeticModel::setSteps(std::vector<method::ExplainStep> steps)
{
    beginResetModel();
    m_steps = std::move(steps);
    endResetModel();
    emit countChanged();
}

int ArithmeticModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : count();
}

QVariant ArithmeticModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= count())
        return {};
    const auto& step = m_steps[static_cast<std::size_t>(index.row())];
    const auto text = [](std::string shown) {
        // Core's plain unit becomes the typographic one on the screen.
        return QString::fromStdString(shown).replace(QStringLiteral("ft3"), QStringLiteral("ft³")).replace(QStringLiteral("kg/m3"), QStringLiteral("kg/m³"));
    };
    switch (role) {
    case Name: return text(step.name);
    case Formula: return text(step.formula);
    case Numbers: return text(step.numbers);
    case Value: return text(step.value);
    case Source: return QString::fromStdString(step.source);
    default: return {};
    }
}

QHash<int, QByteArray> ArithmeticModel::roleNames() const
{
    return {{Name, "name"}, {Formula, "formula"}, {Numbers, "numbers"}, {Value, "value"}, {Source, "source"}};
}

}  // namespace groundcount::view
