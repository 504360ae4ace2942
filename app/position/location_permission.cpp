#include "position/location_permission.h"

#include <QtGlobal>

#include <utility>

#if QT_VERSION >= QT_VERSION_CHECK(6, 6, 0)
#include <QCoreApplication>
#include <QPermissions>
#endif

namespace groundcount::position {

void LocationPermission::ask(QObject* context, std::function<void(Answer)> then)
{
#if QT_VERSION >= QT_VERSION_CHECK(6, 6, 0) && QT_CONFIG(permissions)
    QLocationPermission wanted;
    wanted.setAccuracy(QLocationPermission::Precise);
    wanted.setAvailability(QLocationPermission::WhenInUse);
    switch (qApp->checkPermission(wanted)) {
    case Qt::PermissionStatus::Granted: then(Answer::Granted); return;
    case Qt::PermissionStatus::Denied: then(Answer::Denied); return;
    case Qt::PermissionStatus::Undetermined: break;
    }
    qApp->requestPermission(wanted, context, [then = std::move(then)](const QPermission& permission) {
        then(permission.status() == Qt::PermissionStatus::Granted ? Answer::Granted : Answer::Denied);
    });
#else
    Q_UNUSED(context);
    then(Answer::Granted);
#endif
}

}  // namespace groundcount::position
