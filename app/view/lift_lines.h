#pragma once

#include "view/row_list.h"

#include <QAbstractListModel>
#include <memory>
#include <vector>

namespace groundcount::view {

/// One lift of a lot as a line of the grid: number, a cell of marks per sublot, how many made.
struct LiftLine {
    int number = 0;
    QString made;
    bool complete = false;
    std::vector<std::vector<Row>> cells;  ///< per sublot, the marks of its tests and owed sites
};

/// The lifts of a lot, newest first. Role `cells` is a list of rows whose `mark` fields are drawn side by side; role
/// `cellOf` of such a row is its sublot (from 0).
class LiftLines : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Lines come from a view-model.")
    Q_PROPERTY(int count READ count NOTIFY countChanged)
public:
    using QAbstractListModel::QAbstractListModel;
    int count() const { return static_cast<int>(m_lines.size()); }
    void setLines(std::vector<LiftLine> lines);
    const std::vector<LiftLine>& lines() const { return m_lines; }
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

signals:
    void countChanged();

private:
    std::vector<LiftLine> m_lines;
    std::vector<std::unique_ptr<RowList>> m_cells;  ///< one list a line and sublot, line by line
    int m_sublots = 0;
};

}  // namespace groundcount::view
