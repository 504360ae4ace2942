#pragma once

#include <atomic>
#include <string>
#include <vector>

/// What is done with a shared server or a bundle beside the pages: each opens the book anew, so that the pages go on with theirs.
namespace groundcount::view {

/// How far the work is; written by it, read by the page.
struct ServerProgress {
    enum Stage { Reaching, Sending, Taking };
    std::atomic<int> stage = Reaching;
    std::atomic<std::size_t> count = 0;
};

struct ServerOutcome {
    std::size_t sent = 0, taken = 0, contents = 0;
    std::vector<std::string> refused;  ///< what came and is not sound
    bool stopped = false;
    std::string trouble;
};

/// A push and a pull.
ServerOutcome exchangeWith(const std::string& book, const std::string& address, ServerProgress& progress, const std::atomic<bool>& stop);
/// The first pull into an empty book. @param job id of the book to be copied
ServerOutcome joinJob(const std::string& book, const std::string& address, const std::string& job, ServerProgress& progress, const std::atomic<bool>& stop);
/// Takes a bundle in.
ServerOutcome takeBundle(const std::string& book, const std::string& path, ServerProgress& progress, const std::atomic<bool>& stop);

}  // namespace groundcount::view
