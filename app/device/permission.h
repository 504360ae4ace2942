#pragma once

#include <QObject>

#include <functional>

namespace groundcount::device {

/// The one place that asks the person what the app may use of the device.
/// Up to Qt 6.5 the phone's own back ends ask by themselves when they start, so there is nothing to ask here; from 6.6 on the app must.
class Permission : public QObject {
    Q_OBJECT
public:
    enum class What { Position, Camera };
    enum class Answer { Granted, Denied };
    using QObject::QObject;

    /// Calls `then` once: at once if the answer is known, else when the person has answered. Never after `context` is gone.
    void ask(What what, QObject* context, std::function<void(Answer)> then);
};

}  // namespace groundcount::device
