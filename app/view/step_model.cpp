#include "view/step_model.h"

#include <utility>

namespace groundcount::view {
namespace {

enum Role { Word = Qt::UserRole + 1, IsSealed };

}  // namespace

void StepModel::setItems(std::vector<Item> items)
{
    if (items == m_items)
        return;
    if (items.size() != m_items.size()) {
        beginResetModel();
        m_items = std::move(items);
        endResetModel();
        return;
    }
    m_items = std::move(items);
    emit dataChanged(index(0), index(static_cast<int>(m_items.size()) - 1));
}

int StepModel::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : static_cast<int>(m_items.size());
}

QVariant StepModel::data(const QModelIndex& index, int role) const
{
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const auto& item = m_items[static_cast<std::size_t>(index.row())];
    return role == Word ? QVariant(item.word) : role == IsSealed ? QVariant(item.isSealed) : QVariant();
}

QHash<int, QByteArray> StepModel::roleNames() const
{
    return {{Word, "word"}, {IsSealed, "isSealed"}};
}

}  // namespace groundcount::view
