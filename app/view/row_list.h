#pragma once

#include "view/mark.h"

#include <QAbstractListModel>
#include <QString>
#include <QtQml/qqmlregistration.h>
#include <vector>

namespace groundcount::view {

/// One row of a list as it is shown: symbol, words and figures already formatted.
struct Row {
    QString id;
    Mark mark = Mark::Nothing;
    QString lead;    ///< bold, before the title: a test number
    QString title;
    QString second;  ///< second line
    QString figure;  ///< right-aligned
    QString unit;
    QString word;    ///< under the figure
    Mark wordMark = Mark::Nothing;  ///< whose colour the word takes
    bool hasBearing = false;
    double bearing = 0;  ///< degrees clockwise from up
    bool chevron = false;
    bool operator==(const Row&) const = default;

    /// A row of words only: title over second line, a word at the right.
    static Row ofWords(const QString& title, const QString& second, const QString& word);
};

/// Rows of a list, with a role per field of Row (named as the field; `rowId` for the id).
class RowList : public QAbstractListModel {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("Rows come from a view-model.")
    Q_PROPERTY(int count READ count NOTIFY countChanged)

public:
    using QAbstractListModel::QAbstractListModel;
    int count() const { return static_cast<int>(m_rows.size()); }
    const std::vector<Row>& rows() const { return m_rows; }
    /// Replaces the rows; nothing is emitted when they are the same.
    void setRows(std::vector<Row> rows);

    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;
    QHash<int, QByteArray> roleNames() const override;

signals:
    void countChanged();

private:
    std::vector<Row> m_rows;
};

}  // namespace groundcount::view
