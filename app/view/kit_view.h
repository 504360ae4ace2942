#pragma once

#include "view/row_list.h"
#include "view/session.h"

#include <QObject>

namespace groundcount::view {

/// What must be right before anything counts: gauges with papers, standard counts, reference tests, people, the rule set,
/// job and coordinate system. Read only here; each list says what is sealed.
class KitView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY sessionChanged REQUIRED)
    Q_PROPERTY(groundcount::view::RowList* gauges READ gauges CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* standardCounts READ standardCounts CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* references READ references CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* people READ people CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* limits READ limits CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* choices READ choices CONSTANT)
    Q_PROPERTY(groundcount::view::RowList* job READ job CONSTANT)
    Q_PROPERTY(QString rulesTitle READ rulesTitle NOTIFY changed)

public:
    explicit KitView(QObject* parent = nullptr);
    Session* session() const { return m_session; }
    void setSession(Session* session);
    RowList* gauges() { return &m_gauges; }
    RowList* standardCounts() { return &m_standardCounts; }
    RowList* references() { return &m_references; }
    RowList* people() { return &m_people; }
    RowList* limits() { return &m_limits; }
    RowList* choices() { return &m_choices; }
    RowList* job() { return &m_job; }
    QString rulesTitle() const { return m_rulesTitle; }

signals:
    void sessionChanged();
    void changed();

private:
    void refresh();
    void refreshGauges();
    void refreshRules();

    Session* m_session = nullptr;
    QString m_rulesTitle;
    RowList m_gauges, m_standardCounts, m_references, m_people, m_limits, m_choices, m_job;
};

}  // namespace groundcount::view
