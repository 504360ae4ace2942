#include "device/end_signal.h"

#include <QCoreApplication>
#include <QJniObject>

// Written from the documents of Qt 6 and Android (VibrationEffect is there from API 26 on, the lowest we ask for); no kit has built it.
namespace groundcount::device {
namespace {

constexpr jlong kBuzzMs = 400;
constexpr jint kDefaultStrength = -1;  // VibrationEffect.DEFAULT_AMPLITUDE

}  // namespace

void EndSignal::give(const QString&)
{
    const QJniObject context = QNativeInterface::QAndroidApplication::context();
    const QJniObject name = QJniObject::fromString(QStringLiteral("vibrator"));  // Context.VIBRATOR_SERVICE
    const QJniObject vibrator = context.callObjectMethod("getSystemService", "(Ljava/lang/String;)Ljava/lang/Object;", name.object<jstring>());
    if (!vibrator.isValid() || !vibrator.callMethod<jboolean>("hasVibrator")) {
        emit given({});
        return;
    }
    const QJniObject buzz = QJniObject::callStaticObjectMethod("android/os/VibrationEffect", "createOneShot", "(JI)Landroid/os/VibrationEffect;", kBuzzMs, kDefaultStrength);
    vibrator.callMethod<void>("vibrate", "(Landroid/os/VibrationEffect;)V", buzz.object());
    emit given(QStringLiteral("vibration"));
}

}  // namespace groundcount::device
