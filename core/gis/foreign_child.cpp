#include "gis/foreign_child.h"

#include <algorithm>
#include <array>
#include <cerrno>
#include <chrono>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <poll.h>
#include <signal.h>
#include <spawn.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

namespace groundcount::gis {
namespace {

namespace fs = std::filesystem;

constexpr int kLookMs = 50;  // how often somebody who waits may change their mind

class Descriptor {
public:
    explicit Descriptor(int file) : m_file(file) {}
    ~Descriptor() { reset(); }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    int get() const { return m_file; }
    void reset()
    {
        if (m_file >= 0)
            ::close(m_file);
        m_file = -1;
    }

private:
    int m_file;
};

std::string firstLine(const std::string& text)
{
    return text.substr(0, std::min(text.find('\n'), std::size_t{600}));
}

}  // namespace

PrivateFolder::PrivateFolder()
{
    std::error_code none;
    std::string name = (fs::temp_directory_path(none) / "groundcount-site-XXXXXX").string();
    if (::mkdtemp(name.data()))
        m_path = name;
}

PrivateFolder::~PrivateFolder()
{
    std::error_code ignored;
    if (!m_path.empty())
        fs::remove_all(m_path, ignored);
}

Result<void> copyPlain(const std::string& from, const std::string& to, std::size_t most, const std::string& what)
{
    // Without O_NONBLOCK the open of a pipe would wait for ever.
    const Descriptor in(::open(from.c_str(), O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOCTTY));
    struct stat facts {};
    if (in.get() < 0)
        return refused("The file \"" + from + "\" cannot be opened (" + std::strerror(errno) + ").");
    if (::fstat(in.get(), &facts) != 0 || !S_ISREG(facts.st_mode))
        return refused("A " + what + " must be a plain file; \"" + from + "\" is not.");
    if (static_cast<std::uintmax_t>(facts.st_size) > most)
        return refused("A " + what + " must be at most " + std::to_string(most >> 20) + " MiB; \"" + from + "\" has " + std::to_string(facts.st_size >> 20) + ".");
    const Descriptor out(::open(to.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0600));
    std::array<char, 1 << 16> part;
    std::size_t sum = 0;
    for (;;) {
        const ssize_t got = ::read(in.get(), part.data(), part.size());
        if (got == 0)
            return {};
        sum += got > 0 ? static_cast<std::size_t>(got) : 0;
        if (got < 0 || sum > most || ::write(out.get(), part.data(), static_cast<std::size_t>(got)) != got)
            return unavailable("The file \"" + from + "\" was not copied (" + std::strerror(errno) + ").");
    }
}

Result<ChildAnswer> runChild(const std::vector<std::string>& command, const SiteLimits& limits)
{
    int outEnds[2], errEnds[2];
    if (::pipe2(outEnds, O_CLOEXEC) != 0)
        return unavailable("The reader cannot be started: no pipe.");
    Descriptor outRead(outEnds[0]), outWrite(outEnds[1]);
    if (::pipe2(errEnds, O_CLOEXEC) != 0)
        return unavailable("The reader cannot be started: no pipe.");
    Descriptor errRead(errEnds[0]), errWrite(errEnds[1]);
    posix_spawn_file_actions_t actions;
    ::posix_spawn_file_actions_init(&actions);
    ::posix_spawn_file_actions_addopen(&actions, 0, "/dev/null", O_RDONLY, 0);
    ::posix_spawn_file_actions_adddup2(&actions, outWrite.get(), 1);
    ::posix_spawn_file_actions_adddup2(&actions, errWrite.get(), 2);
    std::vector<char*> arguments;
    arguments.reserve(command.size() + 1);
    for (const auto& word : command)
        arguments.push_back(const_cast<char*>(word.c_str()));
    arguments.push_back(nullptr);
    // Nothing of the caller's environment may change what the reader loads: no GDAL_*, PROJ_*, LD_* variables.
    std::string path = "PATH=/usr/bin:/bin", locale = "LC_ALL=C.UTF-8";
    char* environment[] = {path.data(), locale.data(), nullptr};
    pid_t child = 0;
    const int failed = ::posix_spawn(&child, command.front().c_str(), &actions, nullptr, arguments.data(), environment);
    ::posix_spawn_file_actions_destroy(&actions);
    if (failed)
        return unavailable("The reader \"" + command.front() + "\" does not start (" + std::strerror(failed) + ").");
    outWrite.reset();
    errWrite.reset();
    ChildAnswer answer;
    const auto end = std::chrono::steady_clock::now() + limits.time;
    std::array<pollfd, 2> ends{pollfd{outRead.get(), POLLIN, 0}, pollfd{errRead.get(), POLLIN, 0}};
    std::array<char, 1 << 16> part;
    while (ends[0].fd >= 0 || ends[1].fd >= 0) {
        const auto left = std::chrono::duration_cast<std::chrono::milliseconds>(end - std::chrono::steady_clock::now()).count();
        answer.late = left <= 0 || (limits.stop && *limits.stop);
        answer.long_ = answer.out.size() > limits.memoryBytes / 4 || answer.err.size() > 1u << 20;
        if (answer.late || answer.long_) {
            ::kill(child, SIGKILL);
            break;
        }
        const auto wait = limits.stop ? std::min<decltype(left)>(left, kLookMs) : left;
        if (::poll(ends.data(), ends.size(), static_cast<int>(wait)) < 0 && errno != EINTR)
            break;
        for (auto& one : ends) {
            if (one.fd < 0 || !one.revents)
                continue;
            const ssize_t got = ::read(one.fd, part.data(), part.size());
            if (got > 0)
                (one.fd == outRead.get() ? answer.out : answer.err).append(part.data(), static_cast<std::size_t>(got));
            else if (got == 0 || errno != EINTR)
                one.fd = -1;
        }
    }
    while (::waitpid(child, &answer.status, 0) < 0 && errno == EINTR) {
    }
    return answer;
}

Result<std::string> answerOf(const ChildAnswer& answer, const std::string& name, const SiteLimits& limits)
{
    if (limits.stop && *limits.stop)
        return refused("Reading \"" + name + "\" was stopped.");
    if (answer.late || (WIFSIGNALED(answer.status) && WTERMSIG(answer.status) == SIGXCPU))
        return refused("Reading \"" + name + "\" took longer than " + std::to_string(limits.time.count()) + " s and was stopped.");
    if (answer.long_)
        return refused("The content of \"" + name + "\" is larger than a site file may be.");
    if (WIFEXITED(answer.status) && WEXITSTATUS(answer.status) == 1 && !answer.err.empty())
        return refused(name + ": " + firstLine(answer.err));
    if (!WIFEXITED(answer.status) || WEXITSTATUS(answer.status) != 0)
        return refused("Reading \"" + name + "\" failed: the reader ended " + (WIFSIGNALED(answer.status) ? "by signal " + std::to_string(WTERMSIG(answer.status))
                                                                                                             : "with " + std::to_string(WEXITSTATUS(answer.status))) + ".");
    return answer.out;
}

}  // namespace groundcount::gis
