#pragma once

#include <QAbstractListModel>
#include <QString>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace groundcount::view {

/// The six steps for StepHead.qml: word and whether it is sealed.
class StepModel : public QAbstractListModel {
    Q_OBJECT
    QML_ANONYMOUS

public:
    struct Item {
        QString word;
        bool isSealed = false;
        bool operator==(const Item&) const = default;
    };
    using QAbstractListModel::QAbstractListModel;
    const std::vector<Item>& items() const { return m_items; }
    void setItems(std::vector<Item> items);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

private:
    std::vector<Item> m_items;
};

}  // namespace groundcount::view
