#pragma once

#include <QObject>

#include <functional>

namespace groundcount::position {

/// The one place that asks the person whether the app may know where it is.
/// Up to Qt 6.5 the phone's own back ends ask by themselves when updates start, so there is nothing to ask here; from 6.6 on the app must.
class LocationPermission : public QObject {
    Q_OBJECT
public:
    enum class Answer { Granted, Denied };
    using QObject::QObject;

    /// Calls `then` once: at once if the answer is known, else when the person has answered. Never after `context` is gone.
    void ask(QObject* context, std::function<void(Answer)> then);
};

}  // namespace groundcount::position
