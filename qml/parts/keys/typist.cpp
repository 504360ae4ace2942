#include "typist.h"

#include <QCoreApplication>
#include <QKeyEvent>

namespace groundcount::keys {

namespace {

void strike(QQuickItem* item, int key, const QString& text)
{
    if (item == nullptr) {
        return;
    }
    QKeyEvent press(QEvent::KeyPress, key, Qt::NoModifier, text);
    QCoreApplication::sendEvent(item, &press);
    QKeyEvent release(QEvent::KeyRelease, key, Qt::NoModifier, text);
    QCoreApplication::sendEvent(item, &release);
}

} // namespace

void Typist::type(QQuickItem* item, const QString& character) const
{
    if (character.size() == 1) {
        strike(item, character.front().unicode(), character);
    }
}

void Typist::eraseLast(QQuickItem* item) const
{
    strike(item, Qt::Key_Backspace, QString());
}

} // namespace groundcount::keys
