#include "view/book_shelf.h"

#include "book/store.h"
#include "view/figure_text.h"

#include <QDateTime>
#include <QDir>
#include <QFileInfo>
#include <QLocale>
#include <QRegularExpression>
#include <QSettings>

#include <algorithm>

namespace groundcount::view {
namespace {

constexpr int kLongestName = 60;
constexpr const char* kEnding = ".fieldbook";
constexpr const char* kKept = "book";

QString settingsIn(const QString& folder)
{
    return folder + QStringLiteral("/books.ini");
}

}  // namespace

BookShelf::BookShelf(Session* session, QObject* parent) : QObject(parent), m_session(session) {}

QString BookShelf::lastOpened(const QString& folder)
{
    const QString path = QSettings(settingsIn(folder), QSettings::IniFormat).value(QLatin1String(kKept)).toString();
    return QFileInfo::exists(path) ? path : QString();
}

void BookShelf::keepIn(const QString& folder)
{
    m_folder = folder;
}

QString BookShelf::openPath() const
{
    return m_session && m_session->isOpen() ? QFileInfo(QString::fromStdString(m_session->store().path())).canonicalFilePath() : QString();
}

void BookShelf::refresh()
{
    const QString open = openPath();
    QFileInfoList files = QDir(m_folder).entryInfoList({'*' + QLatin1String(kEnding)}, QDir::Files, QDir::Time);
    if (!open.isEmpty() && std::none_of(files.begin(), files.end(), [&](const QFileInfo& file) { return file.canonicalFilePath() == open; }))
        files.prepend(QFileInfo(open));
    std::vector<Row> rows;
    for (const QFileInfo& file : files) {
        const bool isOpen = file.canonicalFilePath() == open;
        const QString name = isOpen && !m_session->job().name.empty() ? QString::fromStdString(m_session->job().name) : file.completeBaseName();
        Row row = Row::ofWords(name, tr("%1, %2 MB").arg(file.fileName(), figureText(static_cast<double>(file.size()) / 1e6, 1)),
                               isOpen ? tr("open now") : QLocale(QLocale::English, QLocale::UnitedStates).toString(file.lastModified().date(), "MMM d, yyyy"));
        row.id = isOpen ? QString() : file.canonicalFilePath();
        row.chevron = !isOpen;
        rows.push_back(std::move(row));
    }
    m_books.setRows(std::move(rows));
    emit changed();
}

void BookShelf::pick(const QString& path)
{
    if (path.isEmpty() || QFileInfo(path).canonicalFilePath() == openPath())
        return;
    // Opened once to see that it is one; a file that is none leaves everything as it is.
    const auto book = book::Store::open(path.toStdString(), book::OpenMode::ReadOnly);
    if (!book)
        return setTrouble(QString::fromStdString(book.error().what));
    ask(path);
}

QString BookShelf::newPath(const QString& name)
{
    static const QRegularExpression allowed(QStringLiteral("^[\\p{L}\\p{N}][\\p{L}\\p{N} _-]*$"), QRegularExpression::UseUnicodePropertiesOption);
    if (name.isEmpty() || name.size() > kLongestName) {
        setTrouble(tr("The name of a book has 1 to %1 letters; this one has %2.").arg(kLongestName).arg(name.size()));
        return {};
    }
    if (!allowed.match(name).hasMatch()) {
        setTrouble(tr("The name of a book begins with a letter or a digit and goes on with letters, digits, blanks, - and _; it is \"%1\".").arg(name));
        return {};
    }
    const QString path = m_folder + '/' + name + QLatin1String(kEnding);
    if (QFileInfo::exists(path)) {
        setTrouble(tr("There is a field book %1 already.").arg(name));
        return {};
    }
    return path;
}

void BookShelf::begin(const QString& name)
{
    if (const QString path = newPath(name.trimmed()); !path.isEmpty())
        ask(path);
}

void BookShelf::ask(const QString& path)
{
    setTrouble({});
    QSettings(settingsIn(m_folder), QSettings::IniFormat).setValue(QLatin1String(kKept), path);
    emit wanted(path);
}

void BookShelf::setTrouble(const QString& sentence)
{
    m_trouble = sentence;
    emit changed();
}

}  // namespace groundcount::view
