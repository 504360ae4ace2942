#pragma once

#include <QObject>

namespace groundcount::device {

/// The end of a count, heard and felt: the device's feedback service does what its owner allows (org.sigxcpu.Feedback, the event
/// "timeout-completed" of the freedesktop event names: a sound and a short buzz on Linux phones); where there is none, a notice of
/// the desktop with the sound "complete" (freedesktop Desktop Notifications). Nothing waits for either; a device with neither stays silent.
class EndSignal : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    /// @param text what a desktop's notice says
    void give(const QString& text);

signals:
    /// How it was given: "feedback", "notice" or "" for neither.
    void given(const QString& how);

private:
    void notify(const QString& text);
};

}  // namespace groundcount::device
