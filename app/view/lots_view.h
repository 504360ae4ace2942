#pragma once

#include "view/row_list.h"
#include "view/session.h"

#include <QAbstractListModel>
#include <QObject>
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

/// Owed and done, lot by lot; inside a lot the grid of lifts and sublots and what is open.
class LotsView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY sessionChanged REQUIRED)
    Q_PROPERTY(groundcount::view::RowList* lots READ lots CONSTANT)
    Q_PROPERTY(QString summary READ summary NOTIFY changed)
    Q_PROPERTY(QString chosenLot READ chosenLot WRITE setChosenLot NOTIFY changed)
    Q_PROPERTY(QString lotTitle READ lotTitle NOTIFY changed)
    Q_PROPERTY(QString lotContext READ lotContext NOTIFY changed)
    Q_PROPERTY(QString requirement READ requirement NOTIFY changed)
    Q_PROPERTY(QStringList columns READ columns NOTIFY changed)
    Q_PROPERTY(groundcount::view::LiftLines* lifts READ lifts CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* failures READ failures CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* tests READ tests CONSTANT)

public:
    explicit LotsView(QObject* parent = nullptr);
    Session* session() const { return m_session; }
    void setSession(Session* session);
    RowList* lots() { return &m_lots; }
    QString summary() const { return m_summary; }
    QString chosenLot() const { return m_chosen; }
    void setChosenLot(const QString& id);
    QString lotTitle() const { return m_lotTitle; }
    QString lotContext() const { return m_lotContext; }
    /// "95 % or more, moisture −2 to +2 of optimum"
    QString requirement() const { return m_requirement; }
    /// Station at the begin of each sublot.
    QStringList columns() const { return m_columns; }
    LiftLines* lifts() { return &m_lifts; }
    RowList* failures() { return &m_failures; }
    RowList* tests() { return &m_tests; }

signals:
    void sessionChanged();
    void changed();

private:
    void refresh();
    void refreshLot(const book::LotRow& lot);

    Session* m_session = nullptr;
    QString m_summary, m_chosen, m_lotTitle, m_lotContext, m_requirement;
    QStringList m_columns;
    RowList m_lots, m_failures, m_tests;
    LiftLines m_lifts;
};

/// "95 % or more, moisture −2 to +2 of optimum" of a lot.
QString requirementText(const book::LotRow& lot);

}  // namespace groundcount::view
