#include "view/photo_take.h"

namespace groundcount::view {
namespace {

constexpr int kPatience = 15000;  // ms: a slow phone writes a picture in 2 or 3 s

}  // namespace

PhotoTake::PhotoTake(std::function<const Session*()> session, QObject* parent) : QObject(parent), m_session(std::move(session))
{
    m_patience.setSingleShot(true);
    m_patience.setInterval(kPatience);
    connect(&m_patience, &QTimer::timeout, this, [this] { end(tr("The camera gave no picture in %1 s. Attach a photo from a file.").arg(kPatience / 1000)); });
}

void PhotoTake::end(const QString& sentence)
{
    m_patience.stop();
    m_open = false;
    m_path.clear();
    m_folder.reset();
    m_trouble = sentence;
    emit changed();
}

void PhotoTake::ask()
{
    m_permission.ask(device::Permission::What::Camera, this, [this](device::Permission::Answer answer) {
        if (answer == device::Permission::Answer::Denied) {
            end(tr("The app may not use the camera. Allow it in the device's settings, or attach a photo from a file."));
            return;
        }
        m_open = m_held = true;
        m_trouble.clear();
        emit changed();
    });
}

void PhotoTake::press()
{
    if (!m_open || isWaiting())
        return;
    m_folder = std::make_unique<QTemporaryDir>();
    if (!m_folder->isValid()) {
        end(tr("No room for a picture: %1.").arg(m_folder->errorString()));
        return;
    }
    m_patience.start();
    const QDateTime local = m_session()->now().toOffsetFromUtc(m_session()->offsetMinutes() * 60);
    m_path = m_folder->filePath(QStringLiteral("photo-%1.jpg").arg(local.toString(QStringLiteral("yyyyMMdd-hhmmss"))));
    emit changed();
}

void PhotoTake::arrived(const QString& path)
{
    if (!isWaiting())
        return;
    m_patience.stop();
    emit taken(QUrl::fromLocalFile(path));
    end({});
}

void PhotoTake::missing()
{
    // Not at once: the page that says so goes with it.
    QMetaObject::invokeMethod(this, [this] {
        m_held = false;
        end(tr("No camera on this device. Attach a photo from a file."));
    }, Qt::QueuedConnection);
}

void PhotoTake::failed(const QString& why)
{
    if (m_open)
        end(tr("The camera gives no picture: %1. Attach a photo from a file.").arg(why));
}

void PhotoTake::close()
{
    end({});
}

}  // namespace groundcount::view
