#pragma once

#include <QtQml/qqmlregistration.h>

#include <QObject>
#include <QQuickItem>

namespace groundcount::keys {

/// Types on the screen's keypad as a hardware keyboard would, so that both take one way into a field.
class Typist : public QObject {
    Q_OBJECT
    QML_ELEMENT

public:
    using QObject::QObject;

    /// Sends a press and a release of the key that writes `character` (one of 0 to 9 or the point) to `item`.
    Q_INVOKABLE void type(QQuickItem* item, const QString& character) const;

    /// Sends a press and a release of Backspace to `item`.
    Q_INVOKABLE void eraseLast(QQuickItem* item) const;
};

} // namespace groundcount::keys
