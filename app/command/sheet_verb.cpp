#include "book/state_query.h"
#include "command/open_book.h"
#include "command/verb.h"
#include "method/core_version.h"
#include "paper/pages.h"
#include "paper/paper_ink.h"
#include "paper/sheets.h"

#include <QFileInfo>
#include <QGuiApplication>
#include <QTranslator>

#include <algorithm>
#include <memory>

namespace groundcount::command {
namespace {

struct SheetOptions {
    std::string book, kind, what, to, format = "letter", language = "en";
};

template <class Row>
Result<std::string> idOf(const Result<std::vector<Row>>& rows, const std::string& what, const std::string& name, const std::string Row::*key)
{
    if (!rows)
        return tl::unexpected(rows.error());
    const auto at = std::find_if(rows->begin(), rows->end(), [&](const Row& row) { return row.*key == name; });
    if (at == rows->end())
        return refused("The book has no " + what + " \"" + name + "\".");
    return at->id;
}

Result<paper::Document> documentOf(const paper::Source& source, const SheetOptions& options)
{
    const book::StateQuery query(source.store);
    if (options.kind == "day") {
        const QDate day = QDate::fromString(QString::fromStdString(options.what), Qt::ISODate);
        if (!day.isValid())
            return refused("A day is written as 2026-06-09; it is \"" + options.what + "\".");
        return paper::daySheet(source, day, {});
    }
    const bool isGauge = options.kind == "counts" || options.kind == "custody";
    const auto id = options.kind == "test"  ? idOf<book::TestRow>(query.tests({}), "test", options.what, &book::TestRow::number)
                    : options.kind == "lot" || options.kind == "review" ? idOf<book::LotRow>(query.lots(), "lot", options.what, &book::LotRow::name)
                    : isGauge               ? idOf<book::GaugeRow>(query.gauges(), "gauge", options.what, &book::GaugeRow::name)
                                            : idOf<book::ProctorRow>(query.proctors(), "reference test", options.what, &book::ProctorRow::name);
    if (!id)
        return tl::unexpected(id.error());
    return options.kind == "test"      ? paper::testSheet(source, *id)
           : options.kind == "lot"     ? paper::lotSheet(source, *id)
           : options.kind == "review"  ? paper::reviewSheet(source, *id)
           : options.kind == "counts"  ? paper::standardCountLog(source, *id)
           : options.kind == "custody" ? paper::custodyLog(source, *id)
                                       : paper::proctorSheet(source, *id);
}

/// The record whose hash begins with the code of a printed sheet, and what it is.
Result<std::string> recordOfCode(const book::Store& store, std::string code)
{
    std::erase(code, ' ');
    if (code.size() < 8 || code.find_first_not_of("0123456789abcdef") != std::string::npos)
        return refused("A code is at least 8 of the digits 0 to 9 and a to f; it is \"" + code + "\".");
    const auto records = store.records({});
    if (!records)
        return tl::unexpected(records.error());
    std::string found;
    for (const auto& record : *records)
        if (record.hash.starts_with(code))
            found += (found.empty() ? "" : "\n") + record.hash + "\n" + record.kind + ", sealed " + record.at + ", subject " + record.subject;
    return found.empty() ? Result<std::string>(refused("No record of this book begins with " + code + ": the sheet is not of this book, or the book lacks it.")) : found;
}

Result<std::string> written(const SheetOptions& options)
{
    const auto store = openToRead(options.book);
    if (!store)
        return tl::unexpected(store.error());
    if (options.kind == "code")
        return recordOfCode(*store, options.what);
    if (options.to.empty())
        return refused("--to must name the PDF to write.");
    // Pages are drawn without a window or a display.
    qputenv("QT_QPA_PLATFORM", "offscreen");
    int count = 1;
    char name[] = "groundbook";
    char* arguments[] = {name, nullptr};
    QGuiApplication application(count, arguments);
    QTranslator translator;
    if (translator.load(QStringLiteral(":/i18n/groundcount_%1.qm").arg(QString::fromStdString(options.language))))
        QGuiApplication::installTranslator(&translator);
    if (!paper::loadPaperFonts())
        return unavailable("The fonts could not be read from the program.");
    const QString made = QStringLiteral("groundbook %1, %2").arg(QLatin1String(kCoreVersion), QString::fromStdString(now().at));
    const paper::Source source{*store, QFileInfo(QString::fromStdString(options.book)).fileName(), made};
    const auto document = documentOf(source, options);
    if (!document)
        return tl::unexpected(document.error());
    if (const auto done = paper::writePdf(*document, options.format == "a4" ? paper::Format::A4 : paper::Format::Letter, QString::fromStdString(options.to)); !done)
        return tl::unexpected(done.error());
    return "Wrote " + options.to + ".";
}

}  // namespace

void addSheet(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("sheet", "Write a sheet to be signed as a PDF, or look up the code of a printed one");
    auto options = std::make_shared<SheetOptions>();
    verb->add_option("BOOK", options->book, "Field book")->required();
    verb->add_option("KIND", options->kind, "test, day, lot, review, counts, custody, reference or code")->required()->check(CLI::IsMember({"test", "day", "lot", "review", "counts", "custody", "reference", "code"}));
    verb->add_option("WHAT", options->what, "Number of the test, day as 2026-06-09, name of the lot, gauge or reference test, or the code")->required();
    verb->add_option("--to", options->to, "PDF to write")->type_name("FILE");
    verb->add_option("--paper", options->format, "letter or a4")->check(CLI::IsMember({"letter", "a4"}));
    verb->add_option("--language", options->language, "en or es")->check(CLI::IsMember({"en", "es"}));
    verb->footer("Each sheet carries the hash of its newest record as text and as a QR code; \"groundbook sheet BOOK code CODE\" tells\n"
                 "whether the book holds that record.");
    verb->callback([options, &status] {
        const auto out = written(*options);
        status = out ? kDone : refuse(out.error());
        if (out)
            print(*out);
    });
}

}  // namespace groundcount::command
