#pragma once

#include "view/row_list.h"
#include "view/session.h"

#include <QObject>

namespace groundcount::view {

/// What must be right before anything counts: gauges with papers, standard counts, reference tests, people, the rule set,
/// job and coordinate system. Each row's id names the sheet that it leads to (Desk::kit), empty for none.
class KitView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY sessionChanged REQUIRED)
    Q_PROPERTY(groundcount::view::RowList* gauges READ gauges CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* standardCounts READ standardCounts CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* references READ references CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* people READ people CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* rules READ rules CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* offsets READ offsets CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* job READ job CONSTANT)

public:
    explicit KitView(QObject* parent = nullptr);
    Session* session() const { return m_session; }
    void setSession(Session* session);
    RowList* gauges() { return &m_gauges; }
    RowList* standardCounts() { return &m_standardCounts; }
    RowList* references() { return &m_references; }
    RowList* people() { return &m_people; }
    RowList* rules() { return &m_rules; }
    RowList* offsets() { return &m_offsets; }
    RowList* job() { return &m_job; }

signals:
    void sessionChanged();

private:
    void refresh();
    void refreshGauges();
    void refreshOffsets();

    Session* m_session = nullptr;
    RowList m_gauges, m_standardCounts, m_references, m_people, m_rules, m_offsets, m_job;
};

}  // namespace groundcount::view
