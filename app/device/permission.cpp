#include "device/permission.h"

#include <QtGlobal>

#include <utility>

#if QT_VERSION >= QT_VERSION_CHECK(6, 6, 0)
#include <QCoreApplication>
#include <QPermissions>
#endif

namespace groundcount::device {

#if QT_VERSION >= QT_VERSION_CHECK(6, 6, 0) && QT_CONFIG(permissions)

namespace {

template <typename Wanted>
void askFor(const Wanted& wanted, QObject* context, std::function<void(Permission::Answer)> then)
{
    switch (qApp->checkPermission(wanted)) {
    case Qt::PermissionStatus::Granted: then(Permission::Answer::Granted); return;
    case Qt::PermissionStatus::Denied: then(Permission::Answer::Denied); return;
    case Qt::PermissionStatus::Undetermined: break;
    }
    qApp->requestPermission(wanted, context, [then = std::move(then)](const QPermission& permission) {
        then(permission.status() == Qt::PermissionStatus::Granted ? Permission::Answer::Granted : Permission::Answer::Denied);
    });
}

}  // namespace

void Permission::ask(What what, QObject* context, std::function<void(Answer)> then)
{
    if (what == What::Camera) {
        askFor(QCameraPermission(), context, std::move(then));
        return;
    }
    QLocationPermission wanted;
    wanted.setAccuracy(QLocationPermission::Precise);
    wanted.setAvailability(QLocationPermission::WhenInUse);
    askFor(wanted, context, std::move(then));
}

#else

void Permission::ask(What, QObject*, std::function<void(Answer)> then)
{
    then(Answer::Granted);
}

#endif

}  // namespace groundcount::device
