#pragma once

#include <QDir>
#include <QElapsedTimer>
#include <QProcess>
#include <QTemporaryDir>
#include <QThread>
#include <functional>
#include <libpq-fe.h>
#include <pwd.h>
#include <string>
#include <unistd.h>

/// A PostgreSQL of the test's own: a fresh cluster in a temporary folder, reached by a socket there and by nothing else.
/// It refuses to run as root, so that root starts it as the user that Debian's package made.
class Postgres {
public:
    /// What a server needs beyond its socket: words before its programs, and settings of its own.
    struct Place {
        QStringList inside;
        QStringList settings;
    };

    Postgres() : Postgres(Place{}) {}
    explicit Postgres(const Place& place, const std::function<void(const QString& data, const QString& owner)>& furnish = {})
        : m_settings(place.settings)
    {
        if (::geteuid() == 0) {
            const passwd* user = ::getpwnam("postgres");
            if (!user || ::chown(m_folder.path().toLocal8Bit().constData(), user->pw_uid, user->pw_gid) != 0)
                qFatal("PostgreSQL does not run as root and there is no user postgres: Debian package postgresql");
            m_as = {"runuser", "-u", "postgres", "--"};
        }
        m_as = place.inside + m_as;
        run({"initdb", "-D", data(), "-U", "boss", "-A", "trust", "-E", "UTF8", "--locale=C", "-N"});
        if (furnish)
            furnish(data(), ::geteuid() == 0 ? "postgres" : "");
        start();
    }
    ~Postgres() { stop("immediate"); }

    void start()
    {
        QString settings = "-c listen_addresses='' -c unix_socket_directories=" + m_folder.path() + " -c fsync=off -c max_connections=40";
        for (const QString& one : m_settings)
            settings += " -c " + one;
        run({"pg_ctl", "-D", data(), "-l", m_folder.filePath("log"), "-w", "-t", "60", "-o", settings, "start"});
    }
    void stop(const char* how) { run({"pg_ctl", "-D", data(), "-m", how, "-w", "stop"}); }

    std::string address(const char* login) const
    {
        return "host=" + m_folder.path().toStdString() + " dbname=postgres user=" + login;
    }

    /// Statements of the administrator (or another login); the first cell of the last answer, or what the server says against it.
    std::string ask(const char* login, const std::string& sql) const
    {
        PGconn* raw = PQconnectdb(address(login).c_str());
        PGresult* answer = PQexec(raw, sql.c_str());
        const ExecStatusType status = PQresultStatus(answer);
        std::string said = status == PGRES_TUPLES_OK && PQntuples(answer) > 0 ? PQgetvalue(answer, 0, 0)
                           : status == PGRES_TUPLES_OK || status == PGRES_COMMAND_OK ? "" : std::string("error ") + PQresultErrorField(answer, PG_DIAG_SQLSTATE);
        PQclear(answer);
        PQfinish(raw);
        return said;
    }

    QString logFile() const { return m_folder.filePath("log"); }

private:
    QString data() const { return m_folder.filePath("data"); }

    void run(QStringList command)
    {
        QDir versions("/usr/lib/postgresql");
        const QStringList found = versions.entryList(QDir::Dirs | QDir::NoDotAndDotDot, QDir::Name);
        if (found.isEmpty())
            qFatal("PostgreSQL is missing: Debian package postgresql");
        command[0] = versions.filePath(found.back() + "/bin/" + command[0]);
        command = m_as + command;
        QProcess process;
        process.setProcessChannelMode(QProcess::MergedChannels);
        process.setStandardOutputFile(QProcess::nullDevice());  // the server would keep a pipe open
        process.setWorkingDirectory(m_folder.path());
        process.start(command.takeFirst(), command);
        if (!process.waitForFinished(120'000) || process.exitCode() != 0)
            qFatal("%s", qPrintable(command.join(' ')));
    }

    QTemporaryDir m_folder;
    QStringList m_as, m_settings;
};
