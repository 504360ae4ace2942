#pragma once

#include "method/accept/explain.h"

#include <QAbstractListModel>
#include <QtQml/qqmlregistration.h>

#include <vector>

namespace groundcount::view {

/// The arithmetic of a verdict for ArithmeticList.qml: name, formula, numbers, value, source.
class ArithmeticModel : public QAbstractListModel {
    Q_OBJECT
    QML_ANONYMOUS
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    using QAbstractListModel::QAbstractListModel;
    int count() const { return static_cast<int>(m_steps.size()); }
    void setSteps(std::vector<method::ExplainStep> steps);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

signals:
    void countChanged();

private:
    std::vector<method::ExplainStep> m_steps;
};

}  // namespace groundcount::view
