#include "device/end_watch.h"

#include <condition_variable>
#include <mutex>

namespace groundcount::device {

EndWatch::EndWatch(std::chrono::milliseconds patience, std::function<void()> late)
    : m_thread([patience, late = std::move(late)](const std::stop_token& taken) {
          std::mutex mutex;
          std::condition_variable_any bell;
          std::unique_lock lock(mutex);
          if (!bell.wait_for(lock, taken, patience, [&taken] { return taken.stop_requested(); })) {
              late();
          }
      })
{
}

}  // namespace groundcount::device
