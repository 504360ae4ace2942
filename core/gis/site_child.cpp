#include "gis/foreign_child.h"
#include "gis/site_file.h"

#include <algorithm>
#include <filesystem>
#include <sched.h>
#include <sys/prctl.h>
#include <sys/resource.h>

namespace groundcount::gis {
namespace {

namespace fs = std::filesystem;

}  // namespace

void boundReader(const SiteLimits& limits)
{
    const auto bound = [](auto what, rlim_t most) {
        const rlimit both{most, most};
        ::setrlimit(what, &both);
    };
#if !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)  // which keep terabytes of addresses for themselves
    bound(RLIMIT_AS, limits.memoryBytes);
#endif
    bound(RLIMIT_CPU, static_cast<rlim_t>(limits.time.count()));
    bound(RLIMIT_CORE, 0);
    bound(RLIMIT_FSIZE, limits.writeBytes);  // SQLite wants a little beside the copy; all of it goes with the folder
    ::prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0);
    // A network of its own is an empty one. Some systems do not let a process ask for it; the drivers here never call out.
    if (::unshare(CLONE_NEWUSER | CLONE_NEWNET) != 0)
        ::unshare(CLONE_NEWNET);
}

Result<SiteFile> readSiteFile(const std::vector<std::string>& reader, const std::string& path, const SiteLimits& limits)
{
    const PrivateFolder folder;
    if (folder.path().empty())
        return unavailable("No private folder can be made to read the file in.");
    const fs::path source(path);
    const std::string ending = source.extension().string();
    const std::string copy = folder.path() + "/site" + ending;
    if (const auto copied = copyPlain(path, copy, limits.fileBytes, "site file"); !copied)
        return tl::unexpected(copied.error());
    if (ending == ".shp" || ending == ".SHP") {
        for (std::string part : {".shx", ".dbf", ".prj", ".cpg"}) {
            if (ending == ".SHP")
                std::transform(part.begin(), part.end(), part.begin(), [](char c) { return c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c; });
            const std::string beside = fs::path(source).replace_extension(part).string();
            std::error_code none;
            if (fs::exists(beside, none))
                if (const auto copied = copyPlain(beside, folder.path() + "/site" + part, limits.fileBytes, "site file"); !copied)
                    return tl::unexpected(copied.error());
        }
    }
    std::vector<std::string> command = reader;
    command.push_back(copy);
    const auto answer = runChild(command, limits);
    if (!answer)
        return tl::unexpected(answer.error());
    const auto text = answerOf(*answer, source.filename().string(), limits);
    return text ? siteFileFrom(*text) : tl::unexpected(text.error());
}

}  // namespace groundcount::gis
