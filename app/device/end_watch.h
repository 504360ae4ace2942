#pragma once

#include <chrono>
#include <functional>
#include <thread>

namespace groundcount::device {

/// Watches an end that may hang below Qt: a camera's pipeline that is taken down did, in GStreamer, for ever. If the watch still stands
/// after `patience`, `late` is called on a thread of its own, with whatever else still running: it may end the program, since what was
/// sealed is on disk. A watch that is taken down in time calls nothing.
class EndWatch {
public:
    EndWatch(std::chrono::milliseconds patience, std::function<void()> late);

private:
    std::jthread m_thread;
};

}  // namespace groundcount::device
