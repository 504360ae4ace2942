#include "view/ui_start.h"

#include "view/book_shelf.h"
#include "view/desk.h"
#include "device/end_signal.h"
#include "view/fonts.h"
#include "view/session.h"

#include <QCommandLineParser>
#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>
#include <QQmlApplicationEngine>
#include <QQmlComponent>
#include <QRegularExpression>
#include <QStandardPaths>

#include <future>
#include <utility>

namespace groundcount::ui {

namespace {

constexpr int kLeastWidth = 360;
constexpr int kLeastHeight = 640;

Result<QSize> readSize(const QString& text)
{
    static const QRegularExpression pattern(QStringLiteral("^(\\d{1,5})x(\\d{1,5})$"));
    const QRegularExpressionMatch match = pattern.match(text);
    const QSize size(match.captured(1).toInt(), match.captured(2).toInt());
    if (!match.hasMatch() || size.width() < kLeastWidth || size.height() < kLeastHeight) {
        return refused("--size must be WIDTHxHEIGHT, at least 360x640; it is " + text.toStdString() + ".");
    }
    return size;
}

Result<QString> readWord(const char* option, const QString& text, const QStringList& allowed)
{
    if (!allowed.contains(text)) {
        return refused(std::string("--") + option + " must be one of " + allowed.join(QStringLiteral(", ")).toStdString() + "; it is "
                       + text.toStdString() + ".");
    }
    return text;
}

Result<QString> readFile(const char* option, const QString& path)
{
    if (!path.isEmpty() && !QFileInfo(path).isReadable()) {
        return refused(std::string("--") + option + " must name a file that can be read; " + path.toStdString() + " cannot.");
    }
    return path;
}

QString& wantedBook()
{
    static QString path;
    return path;
}

/// The book of the command line, else the one opened last, else the first one of the user's own folder; the device's key never
/// lies in the book's folder.
Result<void> openBook(view::Session& session, const StartOptions& options)
{
    const QString own = QStandardPaths::writableLocation(QStandardPaths::AppDataLocation);
    if (!QDir().mkpath(own)) {
        return unavailable("The folder " + own.toStdString() + " could not be made.");
    }
    const QString key = own + QStringLiteral("/device.key");
    const QString last = view::BookShelf::lastOpened(own);
    auto opened = session.open(!options.book.isEmpty() ? options.book : !last.isEmpty() ? last : own + QStringLiteral("/job.fieldbook"), key);
    if (!opened && options.book.isEmpty() && !last.isEmpty()) {
        // A book elsewhere that cannot be opened any more does not keep the others shut; its own sentence is shown.
        const std::string why = opened.error().what;
        opened = session.open(own + QStringLiteral("/job.fieldbook"), key);
        session.setTrouble(QString::fromStdString(why));
    }
    return opened;
}

} // namespace

Result<StartOptions> readArguments(const QStringList& arguments)
{
    QCommandLineParser parser;
    const QCommandLineOption book(QStringLiteral("book"), QStringLiteral("Field book to open."), QStringLiteral("FILE"));
    const QCommandLineOption replay(QStringLiteral("replay"), QStringLiteral("NMEA 0183 log in place of a receiver."),
                                    QStringLiteral("FILE"));
    const QCommandLineOption size(QStringLiteral("size"), QStringLiteral("Window, logical pixels."), QStringLiteral("WxH"),
                                  QStringLiteral("412x915"));
    const QCommandLineOption theme(QStringLiteral("theme"), QStringLiteral("day, sun or dusk, for this run."), QStringLiteral("NAME"));
    const QCommandLineOption text(QStringLiteral("text"), QStringLiteral("Size of the text, 100, 125 or 150 percent, for this run."),
                                  QStringLiteral("PERCENT"));
    const QCommandLineOption language(QStringLiteral("language"), QStringLiteral("en or es, for this run."), QStringLiteral("CODE"));
    const QCommandLineOption place(QStringLiteral("place"), QStringLiteral("day, map, lots or kit."), QStringLiteral("NAME"),
                                   QStringLiteral("day"));
    const QCommandLineOption open(QStringLiteral("open"), QStringLiteral("What lies open: new, screen, coverage, hand-over, server, publish, test:NUMBER, record:NUMBER, paper:day, paper:NUMBER, paper:lot:NAME, paper:review:NAME, site-file:PATH, lot:NAME (with /review, /figures, /draw, /profile, /tests) or kit:SHEET."),
                                  QStringLiteral("WHAT"));
    const QCommandLineOption screenshot(QStringLiteral("screenshot"), QStringLiteral("Write the window to a PNG, then end."),
                                        QStringLiteral("FILE"));
    const QCommandLineOption at(QStringLiteral("at"), QStringLiteral("Fixed time of the clock, ISO 8601."), QStringLiteral("TIME"));
    parser.addPositionalArgument(QStringLiteral("FILE"), QStringLiteral("Field book to open, as a file manager names it."), QStringLiteral("[FILE]"));
    parser.addOptions({book, replay, size, theme, text, language, place, open, screenshot, at});
    parser.addHelpOption();
    if (!parser.parse(arguments)) {
        return refused(parser.errorText().toStdString() + ".");
    }
    if (parser.isSet(QStringLiteral("help"))) {
        return refused(parser.helpText().toStdString());
    }
    const QStringList alone = parser.positionalArguments();
    if (alone.size() + (parser.isSet(book) ? 1 : 0) > 1) {
        return refused("One field book can be opened; " + alone.constLast().toStdString() + " is one too many.");
    }

    StartOptions options;
    const auto window = readSize(parser.value(size));
    // An option that is not given leaves what the device keeps.
    const auto asked = [&](const QCommandLineOption& option, const char* name, const QStringList& allowed) {
        return parser.isSet(option) ? readWord(name, parser.value(option), allowed) : Result<QString>(QString());
    };
    const auto themeName = asked(theme, "theme", {QStringLiteral("day"), QStringLiteral("sun"), QStringLiteral("dusk")});
    const auto textPercent = asked(text, "text", {QStringLiteral("100"), QStringLiteral("125"), QStringLiteral("150")});
    const auto languageCode = asked(language, "language", {QStringLiteral("en"), QStringLiteral("es")});
    const auto placeName = readWord("place", parser.value(place),
                                    {QStringLiteral("day"), QStringLiteral("map"), QStringLiteral("lots"), QStringLiteral("kit")});
    // A book that does not exist yet is a new book; only a replay must be there to be read.
    const auto replayPath = readFile("replay", parser.value(replay));
    if (!window) {
        return tl::unexpected(window.error());
    }
    for (const Result<QString>& each : {themeName, textPercent, languageCode, placeName, replayPath}) {
        if (!each) {
            return tl::unexpected(each.error());
        }
    }
    options.book = alone.isEmpty() ? parser.value(book) : alone.constFirst();
    options.replay = *replayPath;
    options.size = *window;
    options.theme = *themeName;
    options.text = *textPercent;
    options.language = *languageCode;
    options.place = *placeName;
    options.open = parser.value(open);
    options.screenshot = parser.value(screenshot);
    if (parser.isSet(at)) {
        const QDateTime time = QDateTime::fromString(parser.value(at), Qt::ISODate);
        if (!time.isValid()) {
            return refused("--at must be an ISO 8601 time such as 2026-06-09T10:12:00; it is " + parser.value(at).toStdString() + ".");
        }
        options.at = time;
    }
    return options;
}

Result<void> start(QQmlApplicationEngine& engine, const StartOptions& options)
{
    // The types of the window and of its first page are loaded on the engine's own thread and the book is opened on another one, while this one reads
    // the fonts; nothing asks the session, and nothing writes, before all are done.
    engine.addImportPath(QStringLiteral("qrc:/qt/qml"));
    const QUrl windowUrl(QStringLiteral("qrc:/qt/qml/Groundcount/Main.qml"));
    const QQmlComponent begun(&engine, windowUrl, QQmlComponent::Asynchronous);
    auto* session = new view::Session(&engine);
    view::Session::setInstance(session);
    if (options.at) {
        session->setClock(*options.at);
    }
    auto opening = std::async(std::launch::async, [session, &options] { return openBook(*session, options); });
    const auto fonts = view::loadFonts();
    if (fonts) {
        view::warmFonts();
    }
    const QQmlComponent windowType(&engine, windowUrl);  // waits for what was begun
    if (options.place == QStringLiteral("day"))
        const QQmlComponent pageType(&engine, QUrl(QStringLiteral("qrc:/qt/qml/Groundcount/pages/DayPage.qml")));
    const auto opened = opening.get();
    if (!fonts) {
        return tl::unexpected(fonts.error());
    }
    if (!opened) {
        return opened;
    }
    if (!options.replay.isEmpty()) {
        if (const auto replayed = session->replay(options.replay); !replayed) {
            return replayed;
        }
    }
    if (windowType.isError()) {
        return unavailable("The main window could not be loaded: " + windowType.errorString().toStdString());
    }
    // Language, size of text and theme are known before the window is made, so that nothing is laid out twice.
    auto* desk = engine.singletonInstance<view::Desk*>(qmlTypeId("Groundcount", 1, 0, "Desk"));
    desk->screen()->keepIn(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation) + QStringLiteral("/screen.ini"));
    desk->shelf()->keepIn(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation));
    QObject::connect(desk->shelf(), &view::BookShelf::wanted, &engine, [](const QString& path) {
        wantedBook() = path;
        QCoreApplication::quit();
    });
    auto* end = new device::EndSignal(desk);
    QObject::connect(desk->sheet()->countStep(), &view::CountStep::minimumOver, end, [desk, end] {
        if (desk->screen()->signalsEnd())
            end->give(view::CountStep::tr("The minimum is over"));
    });
    desk->screen()->showTheme(options.theme);
    desk->screen()->showText(options.text);
    if (!options.language.isEmpty()) {
        desk->screen()->showLanguage(options.language);
    }
    engine.setInitialProperties({{QStringLiteral("width"), options.size.width()},
                                 {QStringLiteral("height"), options.size.height()},
                                 {QStringLiteral("place"), options.place}});
    engine.load(windowUrl);
    if (engine.rootObjects().isEmpty()) {
        return unavailable("The main window could not be loaded.");
    }
    QObject::connect(engine.rootObjects().constFirst(), SIGNAL(frameSwapped()), session, SLOT(findSystem()), Qt::QueuedConnection);
    return options.open.isEmpty() ? Result<void>() : desk->openNamed(options.open);
}

QString takeWantedBook()
{
    return std::exchange(wantedBook(), QString());
}

} // namespace groundcount::ui
