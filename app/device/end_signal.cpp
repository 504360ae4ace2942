#include "device/end_signal.h"

#include <QDBusConnection>
#include <QDBusMessage>
#include <QDBusPendingCallWatcher>
#include <QDBusPendingReply>
#include <QVariantMap>

namespace groundcount::device {
namespace {

constexpr auto kApplication = "groundcount";
constexpr int kOnce = -1;  // each feedback of the event runs once
constexpr int kPatience = 2000;  // ms

}  // namespace

void EndSignal::give(const QString& text)
{
    const auto bus = QDBusConnection::sessionBus();
    if (!bus.isConnected()) {
        emit given({});
        return;
    }
    auto call = QDBusMessage::createMethodCall(QStringLiteral("org.sigxcpu.Feedback"), QStringLiteral("/org/sigxcpu/Feedback"),
                                               QStringLiteral("org.sigxcpu.Feedback"), QStringLiteral("TriggerFeedback"));
    call << QString::fromLatin1(kApplication) << QStringLiteral("timeout-completed") << QVariantMap() << kOnce;
    auto* watcher = new QDBusPendingCallWatcher(bus.asyncCall(call, kPatience), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, watcher, text] {
        watcher->deleteLater();
        if (watcher->isError())
            notify(text);
        else
            emit given(QStringLiteral("feedback"));
    });
}

void EndSignal::notify(const QString& text)
{
    auto call = QDBusMessage::createMethodCall(QStringLiteral("org.freedesktop.Notifications"), QStringLiteral("/org/freedesktop/Notifications"),
                                               QStringLiteral("org.freedesktop.Notifications"), QStringLiteral("Notify"));
    const QVariantMap hints{{QStringLiteral("sound-name"), QStringLiteral("complete")}, {QStringLiteral("transient"), true}};
    call << QString::fromLatin1(kApplication) << 0U << QString() << text << QString() << QStringList() << hints << -1;
    auto* watcher = new QDBusPendingCallWatcher(QDBusConnection::sessionBus().asyncCall(call, kPatience), this);
    connect(watcher, &QDBusPendingCallWatcher::finished, this, [this, watcher] {
        watcher->deleteLater();
        emit given(watcher->isError() ? QString() : QStringLiteral("notice"));
    });
}

}  // namespace groundcount::device
