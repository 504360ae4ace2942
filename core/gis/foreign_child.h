#pragma once

#include "gis/site_file.h"
#include "method/error.h"

#include <cstddef>
#include <string>
#include <vector>

namespace groundcount::gis {

/// A fresh folder that only this user may enter; it goes with everything in it at the end.
class PrivateFolder {
public:
    PrivateFolder();
    ~PrivateFolder();
    PrivateFolder(const PrivateFolder&) = delete;
    PrivateFolder& operator=(const PrivateFolder&) = delete;
    const std::string& path() const { return m_path; }  ///< "" when none could be made

private:
    std::string m_path;
};

/// Copies a plain file without following what it might be instead. @param what named in the sentence, "site file"
/// @error Refused: no plain file, or larger than `most` bytes. Unavailable: the copy fails.
Result<void> copyPlain(const std::string& from, const std::string& to, std::size_t most, const std::string& what);

struct ChildAnswer {
    int status = 0;  ///< as of waitpid
    std::string out, err;
    bool late = false, long_ = false;
};

/// Runs a reader as a child with an empty environment and takes its answer; ends it when the time or `limits.stop` says so.
/// @error Unavailable: it does not start.
Result<ChildAnswer> runChild(const std::vector<std::string>& command, const SiteLimits& limits);

/// What the child printed, or the sentence that says why there is nothing: late, too long, refused by the child, or it broke.
/// @param name of the foreign file, for the sentence
Result<std::string> answerOf(const ChildAnswer& answer, const std::string& name, const SiteLimits& limits);

}  // namespace groundcount::gis
