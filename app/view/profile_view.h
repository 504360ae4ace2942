#pragma once

#include "view/lot_plot.h"
#include "view/row_list.h"
#include "view/session.h"

#include <QObject>

namespace groundcount::view {

/// The tests of a lot's line, station across and lift upward, and how each lift of the lot stands. A lot given by its corners has the
/// distance along its longest side across.
class ProfileView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY sessionChanged REQUIRED)
    Q_PROPERTY(QString lot READ lot WRITE setLot NOTIFY changed)
    Q_PROPERTY(QString title MEMBER m_title NOTIFY changed)
    Q_PROPERTY(QString note MEMBER m_note NOTIFY changed)
    Q_PROPERTY(groundcount::view::ProfilePlot plot READ plot NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* lifts READ lifts CONSTANT)

public:
    explicit ProfileView(QObject* parent = nullptr) : QObject(parent) {}
    Session* session() const { return m_session; }
    void setSession(Session* session);
    QString lot() const { return m_lot; }
    void setLot(const QString& id);
    ProfilePlot plot() const { return m_plot; }
    RowList* lifts() { return &m_lifts; }

signals:
    void sessionChanged();
    void changed();

private:
    void refresh();

    Session* m_session = nullptr;
    QString m_lot, m_title, m_note;
    ProfilePlot m_plot;
    RowList m_lifts;
};

}  // namespace groundcount::view
