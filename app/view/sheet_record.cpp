#include "view/sheet_record.h"

#include "book/kinds.h"
#include "book/store.h"
#include "view/figure_text.h"
#include "view/photo_file.h"

#include <algorithm>

namespace groundcount::view {
namespace {

QString kindWord(const std::string& kind)
{
    static const std::map<std::string, const char*> kWords{
        {"test-site", QT_TRANSLATE_NOOP("groundcount::view::SheetRecord", "Place")},
        {"clearance", QT_TRANSLATE_NOOP("groundcount::view::SheetRecord", "Clearances")},
        {"seating", QT_TRANSLATE_NOOP("groundcount::view::SheetRecord", "Seating")},
        {"reading", QT_TRANSLATE_NOOP("groundcount::view::SheetRecord", "Reading")},
        {"sample", QT_TRANSLATE_NOOP("groundcount::view::SheetRecord", "Sample")},
        {"verdict", QT_TRANSLATE_NOOP("groundcount::view::SheetRecord", "Verdict")},
        {"review", QT_TRANSLATE_NOOP("groundcount::view::SheetRecord", "Review")},
        {"photo", QT_TRANSLATE_NOOP("groundcount::view::SheetRecord", "Photo")},
        {"note", QT_TRANSLATE_NOOP("groundcount::view::SheetRecord", "Note")},
        {"void", QT_TRANSLATE_NOOP("groundcount::view::SheetRecord", "Void")}};
    const auto at = kWords.find(kind);
    return at == kWords.end() ? QString::fromStdString(kind) : SheetRecord::tr(at->second);
}

/// "density_count: 2154 -> 2145" as a person reads it.
QString shownChange(const std::string& change)
{
    QString text = QString::fromStdString(change);
    const auto colon = text.indexOf(':');
    text = text.left(colon).replace('_', ' ') + text.mid(colon);
    return text.remove('"').replace(QStringLiteral("->"), QChar(0x2192));
}

QString whoAndWhen(const book::HistoryLine& line)
{
    return SheetRecord::tr("%1 by %2").arg(localText(line.at, line.offsetMinutes, "MMM d, h:mm"), line.byName.empty() ? SheetRecord::tr("a person not in this book") : QString::fromStdString(line.byName));
}

}  // namespace

SheetRecord::SheetRecord(SheetFacts& facts, QObject* parent) : QObject(parent), m_facts(facts), m_camera([&facts] { return facts.session; })
{
    connect(&m_camera, &PhotoTake::taken, this, &SheetRecord::addPhoto);
}

void SheetRecord::refresh()
{
    m_trouble.clear();
    const auto lines = book::history(m_facts.session->store(), m_facts.testId);
    const std::vector<book::HistoryLine> none;
    showHistory(lines ? *lines : none);
    findConflict(lines ? *lines : none);
    showPhotos(lines ? *lines : none);
    emit changed();
}

void SheetRecord::showHistory(const std::vector<book::HistoryLine>& lines)
{
    std::vector<Row> rows;
    for (const auto& line : lines) {
        const auto record = m_facts.session->store().record(line.hash);
        Row row;
        row.id = QString::fromStdString(line.hash);
        row.title = kindWord(line.kind);
        if (record && line.kind == "verdict")
            row.title += ": " + QString::fromStdString(book::textAt(record->body, "result"));
        if (record && line.kind == "note")
            row.title += ": " + QString::fromStdString(book::textAt(record->body, "text"));
        if (record && line.kind == "reading")
            row.title += ' ' + QString::number(record->body.at("number").get<int>());
        QStringList words{whoAndWhen(line)};
        if (!line.reason.empty())
            words.append(line.amends.empty() ? tr("because: %1").arg(QString::fromStdString(line.reason)) : tr("amended because: %1").arg(QString::fromStdString(line.reason)));
        for (const auto& change : line.changes)
            if (line.kind != "verdict")
                words.append(shownChange(change));
        if (!line.isLive)
            words.append(tr("replaced later"));
        row.second = words.join('\n');
        // The first eight digits find the record in the book and on a printed sheet.
        row.word = row.id.left(8);
        rows.push_back(std::move(row));
    }
    m_summary = rows.empty() ? QString() : rows.size() == 1 ? tr("1 record") : tr("%1 records").arg(rows.size());
    m_history.setRows(std::move(rows));
}

void SheetRecord::findConflict(const std::vector<book::HistoryLine>& lines)
{
    m_rivals.clear();
    m_conflictText.clear();
    std::vector<Row> rows;
    std::map<std::string, std::vector<const book::HistoryLine*>> byParent;
    for (const auto& line : lines)
        if (line.isLive && !line.amends.empty())
            byParent[line.kind + line.amends].push_back(&line);
    for (const auto& [parent, rivals] : byParent) {
        if (rivals.size() < 2)
            continue;
        m_conflictText = tr("%1 was amended twice, apart from each other. The later one is shown. Choose which one speaks; both stay in the book.").arg(kindWord(rivals.front()->kind));
        for (const auto* line : rivals) {
            m_rivals.push_back(line->hash);
            QStringList words{tr("because: %1").arg(QString::fromStdString(line->reason))};
            for (const auto& change : line->changes)
                words.append(shownChange(change));
            Row row = Row::ofWords(tr("Keep the one of %1").arg(whoAndWhen(*line)), words.join('\n'), {});
            row.id = QString::fromStdString(line->hash);
            row.chevron = true;
            rows.push_back(std::move(row));
        }
        break;  // one at a time: settling one shows the next
    }
    m_conflict.setRows(std::move(rows));
}

void SheetRecord::showPhotos(const std::vector<book::HistoryLine>& lines)
{
    m_photos.clear();
    m_photoNames.clear();
    for (const auto& line : lines) {
        if (line.kind != "photo" || !line.isLive)
            continue;
        const auto record = m_facts.session->store().record(line.hash);
        if (!record)
            continue;
        const std::string blob = book::textAt(record->body, "blob");
        auto& small = m_thumbnails[blob];
        if (small.isEmpty())
            if (const auto content = m_facts.session->store().blob(blob))
                small = thumbnail(QByteArray::fromStdString(*content));
        m_photos.append(small);
        m_photoNames.append(QString::fromStdString(book::textAt(record->body, "name")));
    }
}

bool SheetRecord::fail(const QString& sentence)
{
    m_trouble = sentence;
    emit changed();
    return false;
}

bool SheetRecord::addNote(const QString& text)
{
    const QString note = text.trimmed();
    if (note.isEmpty())
        return fail(tr("The note is empty."));
    const auto sealedOne = m_facts.session->seal("note", m_facts.testId, {{"text", note.toStdString()}});
    if (!sealedOne)
        return fail(QString::fromStdString(sealedOne.error().what));
    refresh();
    emit sealed();
    return true;
}

bool SheetRecord::addPhoto(const QUrl& file)
{
    const QString path = file.isLocalFile() ? file.toLocalFile() : file.isRelative() ? file.toString() : QString();
    if (path.isEmpty())
        return fail(tr("Only a file of this device can be attached."));
    const auto photo = readPhoto(path);
    if (!photo)
        return fail(QString::fromStdString(photo.error().what));
    const auto blob = m_facts.session->store().putBlob(std::string_view(photo->content.constData(), static_cast<std::size_t>(photo->content.size())));
    if (!blob)
        return fail(QString::fromStdString(blob.error().what));
    const auto sealedOne = m_facts.session->seal("photo", m_facts.testId, {{"blob", *blob}, {"media_type", photo->mediaType}, {"name", photo->name.toStdString()}});
    if (!sealedOne)
        return fail(QString::fromStdString(sealedOne.error().what));
    refresh();
    emit sealed();
    return true;
}

void SheetRecord::keep(const QString& hash)
{
    const auto kept = m_facts.session->store().record(hash.toStdString());
    if (!kept || std::find(m_rivals.begin(), m_rivals.end(), kept->hash) == m_rivals.end())
        return;
    std::vector<book::Entry> entries;
    for (const auto& rival : m_rivals) {
        book::Entry entry;
        entry.kind = kept->kind;
        entry.subject = kept->subject;
        entry.amends = rival;
        entry.reason = "conflict settled: record " + kept->hash.substr(0, 8) + " is kept";
        entry.body = kept->body;
        entries.push_back(std::move(entry));
    }
    if (const auto done = m_facts.session->sealAll(std::move(entries)); !done) {
        fail(QString::fromStdString(done.error().what));
        return;
    }
    refresh();
    emit sealed();
}

}  // namespace groundcount::view
