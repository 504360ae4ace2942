#pragma once

#include <QObject>
#include <QString>
#include <QtQml/qqmlregistration.h>

namespace groundcount::view {

/// A question that wants a reason before something is changed: what happens, in words, and what the button does.
class SheetAsk : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(SheetAsk)
    QML_UNCREATABLE("belongs to a TestSheet")
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY changed)
    Q_PROPERTY(QString title MEMBER m_title NOTIFY changed)
    Q_PROPERTY(QString what MEMBER m_what NOTIFY changed)
    Q_PROPERTY(QString act MEMBER m_act NOTIFY changed)
    Q_PROPERTY(QString missing MEMBER m_missing NOTIFY changed)

public:
    enum class About { Nothing, Amend, Void };
    using QObject::QObject;

    bool isOpen() const { return m_about != About::Nothing; }
    About about() const { return m_about; }
    void open(About about, const QString& title, const QString& what, const QString& act);
    /// Says what the answer lacks; the question stays open.
    void miss(const QString& sentence);
    Q_INVOKABLE void close();

signals:
    void changed();

private:
    About m_about = About::Nothing;
    QString m_title, m_what, m_act, m_missing;
};

}  // namespace groundcount::view
