#pragma once

#include <QProcess>
#include <QThread>
#include <cerrno>
#include <cstring>
#include <sched.h>
#include <string>
#include <sys/stat.h>
#include <unistd.h>

/// Two machines and a cable between them: this process in a network namespace of its own, a second namespace for a server, and a pair of
/// virtual interfaces. Everything vanishes with the process. Addresses are those that RFC 5737 keeps for examples.
class Network {
public:
    static constexpr const char* kNear = "192.0.2.1";
    static constexpr const char* kFar = "192.0.2.2";

    /// Moves this process into a namespace of its own: before it has threads.
    /// @return "" or why it cannot
    static std::string leave()
    {
        return ::unshare(CLONE_NEWNET) == 0 ? std::string() : std::string("no network namespace can be made here: ") + std::strerror(errno);
    }

    /// Lays the cable. @return "" or why it cannot
    std::string lay()
    {
        m_holder.start("setpriv", {"--pdeathsig", "KILL", "unshare", "-n", "sleep", "3600"});
        if (!m_holder.waitForStarted())
            return "util-linux is missing";
        const QString pid = QString::number(m_holder.processId());
        while (namespaceOf(pid) == namespaceOf("self"))
            QThread::msleep(5);
        m_far = {"nsenter", "-t", pid, "-n"};
        if (!did({"ip", "link", "add", "near", "type", "veth", "peer", "name", "far", "netns", pid}))
            return "the kernel gives no pair of virtual interfaces";
        for (const char* line : {"ip addr add 192.0.2.1/24 dev near", "ip link set near up", "ip link set lo up"})
            if (!did(QString(line).split(' ')))
                qFatal("%s failed", line);
        for (const char* line : {"ip addr add 192.0.2.2/24 dev far", "ip link set far up", "ip link set lo up"})
            if (!did(m_far + QString(line).split(' ')))
                qFatal("%s failed on the far side", line);
        return {};
    }
    ~Network()
    {
        m_holder.kill();
        m_holder.waitForFinished();
    }

    /// Words that make a program run on the far machine.
    QStringList far() const { return m_far; }

    /// Nothing passes in either direction.
    bool cut() { return did(m_far + QStringList{"ip", "link", "set", "far", "down"}); }
    bool join() { return did(m_far + QStringList{"ip", "link", "set", "far", "up"}); }
    /// What is sent arrives and is worked on; every answer is dropped without a word.
    bool silence() { return did(m_far + QStringList{"ip", "route", "add", "blackhole", kNear}); }
    bool speak() { return did(m_far + QStringList{"ip", "route", "del", "blackhole", kNear}); }

private:
    static ino_t namespaceOf(const QString& process)
    {
        struct stat found = {};
        return ::stat(("/proc/" + process + "/ns/net").toLocal8Bit().constData(), &found) == 0 ? found.st_ino : 0;
    }
    static bool did(QStringList command)
    {
        const QString program = command.takeFirst();
        return QProcess::execute(program, command) == 0;
    }

    QProcess m_holder;
    QStringList m_far;
};
