#pragma once

#include <QCoreApplication>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QProcess>
#include <QProcessEnvironment>
#include <QTemporaryDir>
#include <QtTest>

/// Key of a JSON object.
inline QLatin1String operator""_k(const char* key, std::size_t size)
{
    return QLatin1String(key, static_cast<int>(size));
}

/// A folder of its own and groundbook in it, for the tests of the command line.
class Bench {
public:
    struct Answer {
        int code = -1;
        QByteArray out, err;
        /// Refused in exactly one sentence on standard error, nothing on standard output.
        bool isRefusal() const { return code == 1 && out.isEmpty() && err.count('\n') == 1 && err.trimmed().size() > 20; }
    };

    static QString program() { return QCoreApplication::applicationDirPath() + "/../app/command/groundbook"; }
    static QString source(const QString& path) { return QStringLiteral(GROUNDCOUNT_SOURCE_DIR "/") + path; }

    QString path(const QString& name) const { return m_folder.filePath(name); }

    Answer run(const QStringList& arguments, const QByteArray& input = {}) const
    {
        QProcess process;
        auto environment = QProcessEnvironment::systemEnvironment();
        environment.insert("XDG_DATA_HOME", path("data"));  // the user's own key stays untouched
        environment.insert("HOME", m_folder.path());
        process.setProcessEnvironment(environment);
        process.setWorkingDirectory(m_folder.path());
        process.start(program(), arguments);
        process.write(input);
        process.closeWriteChannel();
        if (!process.waitForFinished(120000))
            return {-2, {}, "did not end"};
        return {process.exitStatus() == QProcess::NormalExit ? process.exitCode() : -3, process.readAllStandardOutput(),
                process.readAllStandardError()};
    }

    Answer play(const QString& book) const { return run({"play", path(book), source("demo/scenario.json")}); }

    Answer make(const QString& book) const
    {
        return run({"make", path(book), "--name", "North approach", "--epsg", "6411", "--person", "A. Sample"});
    }

    /// Everything but the key's folder.
    QStringList files() const
    {
        auto names = QDir(m_folder.path()).entryList(QDir::Files, QDir::Name);
        return names;
    }

    static QByteArray read(const QString& file)
    {
        QFile f(file);
        return f.open(QIODevice::ReadOnly) ? f.readAll() : QByteArray();
    }

    QString write(const QString& name, const QByteArray& content) const
    {
        QFile f(path(name));
        if (!f.open(QIODevice::WriteOnly) || f.write(content) != content.size())
            qFatal("cannot write a test file");
        return f.fileName();
    }

    static QJsonObject object(const QByteArray& json) { return QJsonDocument::fromJson(json).object(); }

    /// The book with one digit of a sealed count changed, as a worn card might.
    QString damaged(const QString& from, const QString& name) const
    {
        QByteArray bytes = read(path(from));
        const QByteArray sealed = "\"density_count\":1905";
        if (bytes.count(sealed) < 1)
            qFatal("the count to be damaged is not in the book");
        bytes.replace(sealed, "\"density_count\":1906");
        return write(name, bytes);
    }

private:
    QTemporaryDir m_folder;
};
