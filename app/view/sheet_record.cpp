#include "view/sheet_record.h"

#include "book/kinds.h"
#include "book/store.h"
#include "view/figure_text.h"

#include <QBuffer>
#include <QFile>
#include <QFileInfo>
#include <QImage>
#include <QImageReader>

#include <algorithm>

namespace groundcount::view {
namespace {

// A phone's picture has 3 to 12 MB; above this something else was chosen by mistake.
constexpr qint64 kLargestPhotoBytes = 30LL * 1024 * 1024;
constexpr int kThumbnailPixels = 480;

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
    return SheetRecord::tr("%1 by %2").arg(localText(line.at, line.offsetMinutes, "d MMM h:mm"), line.byName.empty() ? SheetRecord::tr("a person not in this book") : QString::fromStdString(line.byName));
}

}  // namespace

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
    m_summary = rows.empty() ? QString() : tr("%n record(s) sealed", nullptr, static_cast<int>(rows.size()));
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
        auto& thumbnail = m_thumbnails[blob];
        if (thumbnail.isEmpty()) {
            const auto content = m_facts.session->store().blob(blob);
            QImage image;
            if (content)
                image.loadFromData(QByteArray::fromStdString(*content));
            QByteArray bytes;
            QBuffer buffer(&bytes);
            if (!image.isNull() && buffer.open(QIODevice::WriteOnly))
                image.scaled(kThumbnailPixels, kThumbnailPixels, Qt::KeepAspectRatio, Qt::SmoothTransformation).save(&buffer, "PNG");
            thumbnail = bytes.isEmpty() ? QString() : QStringLiteral("data:image/png;base64,") + QString::fromLatin1(bytes.toBase64());
        }
        m_photos.append(thumbnail);
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
    const QString name = QFileInfo(path).fileName();
    if (path.isEmpty())
        return fail(tr("Only a file of this device can be attached."));
    QFile source(path);
    if (!source.open(QIODevice::ReadOnly))
        return fail(tr("%1 cannot be read: %2.").arg(name, source.errorString()));
    if (source.size() > kLargestPhotoBytes)
        return fail(tr("%1 has %2 MB; a photo may have at most %3 MB.").arg(name).arg(source.size() / (1024 * 1024)).arg(kLargestPhotoBytes / (1024 * 1024)));
    const QByteArray content = source.readAll();
    QBuffer buffer;
    buffer.setData(content);
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    const QByteArray format = reader.format();
    if ((format != "jpeg" && format != "png") || reader.read().isNull())
        return fail(tr("%1 is no JPEG or PNG picture that can be shown.").arg(name));
    const auto blob = m_facts.session->store().putBlob(std::string_view(content.constData(), static_cast<std::size_t>(content.size())));
    if (!blob)
        return fail(QString::fromStdString(blob.error().what));
    const auto sealedOne = m_facts.session->seal("photo", m_facts.testId, {{"blob", *blob}, {"media_type", "image/" + format.toStdString()}, {"name", name.toStdString()}});
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
