#pragma once

#include "view/session.h"

#include <QObject>

namespace groundcount::view {

/// Where the positions of this device come from: its own receiver, one on the local network, one on a serial line, or none. What was
/// chosen is kept as a draft of this device and opened again with the book.
class Receiver : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("belongs to the desk")
    Q_PROPERTY(QStringList kindWords READ kindWords NOTIFY changed)
    Q_PROPERTY(int kindIndex READ kindIndex NOTIFY changed)
    Q_PROPERTY(QString whereLabel READ whereLabel NOTIFY changed)
    Q_PROPERTY(QString where READ where WRITE setWhere NOTIFY changed)
    Q_PROPERTY(QString speed READ speed WRITE setSpeed NOTIFY changed)
    Q_PROPERTY(bool asksSpeed READ asksSpeed NOTIFY changed)
    Q_PROPERTY(QString missing READ missing NOTIFY changed)
    Q_PROPERTY(QString state READ state NOTIFY changed)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)

public:
    enum Kind { None, Own, Network, Serial };

    explicit Receiver(Session* session, QObject* parent = nullptr);

    QStringList kindWords() const { return {tr("None"), tr("This device"), tr("Network"), tr("Serial line")}; }
    int kindIndex() const { return m_kind; }
    QString whereLabel() const;
    QString where() const { return m_where; }
    void setWhere(const QString& where);
    /// Bits a second of the serial line, as typed.
    QString speed() const { return m_speed; }
    void setSpeed(const QString& speed);
    bool asksSpeed() const { return m_kind == Serial; }
    /// What is still to be typed before the receiver can be used, "" when nothing.
    QString missing() const;
    /// In words: no receiver, waiting for the first position, positions come, lost.
    QString state() const;
    QString trouble() const;

    Q_INVOKABLE void pickKind(int index);
    /// Opens what was chosen and keeps the choice.
    Q_INVOKABLE void use();

signals:
    void changed();

private:
    void readDraft();
    Result<void> open();

    Session* m_session;
    QString m_book, m_where, m_speed = QStringLiteral("115200"), m_refusal;
    int m_kind = None;
};

}  // namespace groundcount::view
