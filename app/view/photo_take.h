#pragma once

#include "device/permission.h"
#include "view/session.h"

#include <QObject>
#include <QTemporaryDir>
#include <QTimer>
#include <QUrl>
#include <QtQml/qqmlregistration.h>

#include <functional>
#include <memory>

namespace groundcount::view {

/// A photo from the device's camera: asks whether it may be used, says where the picture goes until it is sealed, and why none came.
/// The camera itself is a page that is loaded only when `open`; a device without one loses nothing but the sentence in `trouble`.
class PhotoTake : public QObject {
    Q_OBJECT
    QML_NAMED_ELEMENT(PhotoTake)
    QML_UNCREATABLE("belongs to a SheetRecord")
    Q_PROPERTY(bool open READ isOpen NOTIFY changed)
    /// Whether the camera is kept: from its first use on, at rest while not open. With Qt 6.4.2 on Linux GStreamer hangs for good in one
    /// of ten times when it is taken down.
    Q_PROPERTY(bool held READ isHeld NOTIFY changed)
    Q_PROPERTY(bool waiting READ isWaiting NOTIFY changed)
    Q_PROPERTY(QString path MEMBER m_path NOTIFY changed)
    Q_PROPERTY(QString trouble MEMBER m_trouble NOTIFY changed)

public:
    /// @param session the session of now, for the picture's name
    explicit PhotoTake(std::function<const Session*()> session, QObject* parent = nullptr);

    bool isOpen() const { return m_open; }
    bool isHeld() const { return m_held; }
    /// The shutter was pressed, the picture is not here yet.
    bool isWaiting() const { return m_patience.isActive(); }

    /// Opens the camera once the person has allowed it.
    Q_INVOKABLE void ask();
    /// Presses the shutter: `path` says where the picture is to be written, in a folder that goes with the camera.
    Q_INVOKABLE void press();
    /// The picture is whole on disk.
    Q_INVOKABLE void arrived(const QString& path);
    /// There is no camera, or nothing that could drive one.
    Q_INVOKABLE void missing();
    /// @param why the camera's own words
    Q_INVOKABLE void failed(const QString& why);
    Q_INVOKABLE void close();

signals:
    void changed();
    /// A picture to be read at once: its file is gone when this returns.
    void taken(const QUrl& file);

private:
    void end(const QString& sentence);

    std::function<const Session*()> m_session;
    device::Permission m_permission;
    std::unique_ptr<QTemporaryDir> m_folder;
    QTimer m_patience;
    bool m_open = false, m_held = false;
    QString m_path, m_trouble;
};

}  // namespace groundcount::view
