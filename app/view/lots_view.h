#pragma once

#include "book/engineer_review.h"
#include "view/lift_lines.h"
#include "view/row_list.h"
#include "view/session.h"

#include <QObject>

namespace groundcount::view {

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
    /// Where the chosen lot stands and why.
    Q_PROPERTY(int standingMark MEMBER m_standingMark NOTIFY changed)
    Q_PROPERTY(QString standingWord MEMBER m_standingWord NOTIFY changed)
    Q_PROPERTY(QString standingReason MEMBER m_standingReason NOTIFY changed)
    Q_PROPERTY(QStringList columns READ columns NOTIFY changed)
    Q_PROPERTY(groundcount::view::LiftLines* lifts READ lifts CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* failures READ failures CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* tests READ tests CONSTANT)
    /// The gauges that tested in the chosen lot.
    Q_PROPERTY(groundcount::view::RowList* gauges READ gauges CONSTANT)

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
    RowList* gauges() { return &m_gauges; }

signals:
    void sessionChanged();
    void changed();

private:
    void refresh();
    void refreshLot(const book::LotRow& lot);
    void showGauges(const book::LotRow& lot);
    void showStanding(const book::ReviewedLot& lot);

    Session* m_session = nullptr;
    int m_standingMark = 0;
    QString m_standingWord, m_standingReason;
    QString m_summary, m_chosen, m_lotTitle, m_lotContext, m_requirement;
    QStringList m_columns;
    RowList m_lots, m_failures, m_tests, m_gauges;
    LiftLines m_lifts;
};

/// "95 % or more, moisture −2 to +2 of optimum" of a lot.
QString requirementText(const book::LotRow& lot);

}  // namespace groundcount::view
