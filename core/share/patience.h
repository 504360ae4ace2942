#pragma once

#include <functional>

namespace groundcount::share {

/// Whether to go on waiting for a silent server, asked at least every 50 ms, on any thread; empty: always.
using Patience = std::function<bool()>;

}  // namespace groundcount::share
