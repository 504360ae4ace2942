#include "book/bundle.h"

#include "book/bundle_text.h"
#include "book/canonical.h"
#include "book/hash.h"
#include "book/parallel.h"
#include "book/seal.h"

#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <unistd.h>

namespace groundcount::book {

namespace {

constexpr std::size_t kAtOnce = 500;  // a second or so of verifying on a phone between two questions to keepOn

Result<void> put(std::ostream& out, const nlohmann::json& json)
{
    const auto text = canonicalText(json);
    if (!text)
        return tl::unexpected(text.error());
    out << kTextBegin << *text << kTextEnd;
    if (!out)
        return unavailable("The bundle could not be written: the disk is full or reported an error.");
    return {};
}

tl::unexpected<Error> stoppedWriting()
{
    return refused("The bundle was stopped before it was whole; nothing was handed over.");
}

Result<void> flushed(const std::string& path)
{
    const int fd = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    const bool done = fd >= 0 && ::fsync(fd) == 0;
    if (fd >= 0)
        ::close(fd);
    return done ? Result<void>{} : unavailable("The bundle " + path + " could not be written to the disk.");
}

nlohmann::json head(const std::string& book)
{
    if (book.empty())
        return {{"bundle", "field book"}, {"format", 1}};
    return {{"bundle", "field book"}, {"format", kBundleFormat}, {"book", book}};
}

/// The id of the book that a bundle is of, if its first text is one and it is of the book that takes it.
Result<std::string> checkHead(const nlohmann::json& json, const Store& into)
{
    const auto id = json.is_object() ? json.find("book") : json.end();
    const std::string book = json.is_object() && id != json.end() && id->is_string() ? *id->get_ptr<const std::string*>() : std::string();
    if (json != head(book) || (!book.empty() && !isSubject(book)))
        return refused("This file does not begin as a bundle of format 1 or 2: " + json.dump(-1, ' ', true, nlohmann::json::error_handler_t::replace).substr(0, 120));
    const auto own = into.bookId();
    const auto last = into.lastRow();
    if (!own || !last)
        return tl::unexpected(own ? last.error() : own.error());
    if (*last > 0 && *own != book)
        return refused("Only copies of one field book can be merged; the bundle is of the book with the id " + (book.empty() ? "none (format 1)" : book) +
                       ", this one has " + (own->empty() ? "none (format 1)" : *own) + ". Each job is one book.");
    return book;
}

bool isRecord(const nlohmann::json& json)
{
    return json.is_object() && json.size() == 1 && json.contains("record");
}

bool isClosing(const nlohmann::json& json)
{
    return json.is_object() && json.size() == 1 && json.contains("end");
}

/// What was read of a bundle and not yet taken.
class Taker {
public:
    explicit Taker(Store& into) : m_into(into) {}

    void only(const std::string& book) { m_book = book; }

    Result<void> text(const nlohmann::json& json, std::size_t place)
    {
        if (m_ended)
            return no(place, "it stands behind the closing line");
        if (isRecord(json))
            return record(recordFromJson(json["record"]), place);
        if (json.is_object() && json.size() == 2 && json.contains("blob") && json.contains("content"))
            return blob(json, place);
        if (isClosing(json)) {
            m_ended = true;
            report.whole = json["end"] == nlohmann::json{{"records", m_records}, {"blobs", m_blobs}};
            return {};
        }
        return no(place, "it is neither a record, a content nor the closing line");
    }

    Result<void> no(std::size_t place, const std::string& why)
    {
        report.refused.push_back("Text " + std::to_string(place) + " of the bundle was not taken: " + why + ".");
        return {};
    }

    Result<void> settle()
    {
        if (m_batch.empty())
            return {};
        auto part = m_into.take(m_batch);
        if (!part)
            return tl::unexpected(part.error());
        m_batch.clear();
        report.taken += part->taken;
        report.known += part->known;
        report.refused.insert(report.refused.end(), part->refused.begin(), part->refused.end());
        return {};
    }

    bool isTimeToAsk() const { return m_asks; }
    void asked() { m_asks = false; }
    std::size_t done() const { return m_records + m_blobs; }
    bool hasEnded() const { return m_ended; }

    BundleReport report;

    Result<void> record(Result<Record> read, std::size_t place)
    {
        ++m_records;
        if (!read)
            return no(place, read.error().what);
        if (read->book != m_book)
            return no(place, "it is of another field book (" + nameOf(*read) + ")");
        m_batch.push_back(std::move(*read));
        if (m_batch.size() < kAtOnce)
            return {};
        m_asks = true;
        return settle();
    }

private:
    Result<void> blob(const nlohmann::json& json, std::size_t place)
    {
        ++m_blobs;
        const auto content = json["content"].is_string() ? bytesOfBase64(*json["content"].get_ptr<const std::string*>()) : std::nullopt;
        if (!content || !json["blob"].is_string())
            return no(place, "a content must be base64 text with its hash");
        if (blake2b256Hex(*content) != *json["blob"].get_ptr<const std::string*>())
            return no(place, "the content does not give its hash");
        if (auto kept = m_into.putBlob(*content); !kept)
            return tl::unexpected(kept.error());
        ++report.blobs;
        m_asks = true;
        return {};
    }

    Store& m_into;
    std::string m_book;
    std::vector<Record> m_batch;
    std::size_t m_records = 0;
    std::size_t m_blobs = 0;
    bool m_asks = false;
    bool m_ended = false;
};

}  // namespace

Result<BundleWritten> writeBundle(const Store& store, std::ostream& out, const KeepOn& keepOn)
{
    BundleWritten written;
    const auto book = store.bookId();
    if (!book)
        return tl::unexpected(book.error());
    if (auto begun = put(out, head(*book)); !begun)
        return tl::unexpected(begun.error());
    for (const char* const kind : {"retired-key", ""}) {  // retired keys first, so that the reader knows them in time
        for (RecordFilter next{{}, kind, 0, kAtOnce};;) {
            const auto batch = store.storedRecords(next);
            if (!batch)
                return tl::unexpected(batch.error());
            if (batch->empty())
                break;
            for (const StoredRecord& one : *batch) {
                if (*kind == '\0' && one.record.kind == "retired-key")
                    continue;
                if (auto put1 = put(out, {{"record", recordJson(one.record)}}); !put1)
                    return tl::unexpected(put1.error());
                ++written.records;
            }
            next.afterRow = batch->back().row;
            if (!keepOn(written.records))
                return stoppedWriting();
        }
    }
    const auto hashes = store.blobHashes();
    if (!hashes)
        return tl::unexpected(hashes.error());
    for (const std::string& hash : *hashes) {
        const auto content = store.blob(hash);
        if (!content)
            return tl::unexpected(content.error());
        if (auto put1 = put(out, {{"blob", hash}, {"content", base64Of(*content)}}); !put1)
            return tl::unexpected(put1.error());
        ++written.blobs;
        if (!keepOn(written.records + written.blobs))
            return stoppedWriting();
    }
    if (auto tail = put(out, {{"end", {{"records", written.records}, {"blobs", written.blobs}}}}); !tail)
        return tl::unexpected(tail.error());
    return written;
}

Result<BundleWritten> writeBundleFile(const Store& store, const std::string& path, const KeepOn& keepOn)
{
    std::error_code code;
    if (std::filesystem::exists(path, code))
        return refused("A bundle needs a free name; " + path + " exists.");
    const std::string part = path + ".part";
    auto written = [&]() -> Result<BundleWritten> {
        std::ofstream out(part, std::ios::binary | std::ios::trunc);
        if (!out)
            return unavailable("The bundle " + path + " could not be made.");
        auto all = writeBundle(store, out, keepOn);
        out.close();
        if (all && !out)
            return unavailable("The bundle " + path + " could not be written: the disk is full or reported an error.");
        return all;
    }();
    if (written)
        if (auto safe = flushed(part); !safe)
            written = tl::unexpected(safe.error());
    if (written) {
        std::filesystem::rename(part, path, code);
        if (code)
            written = unavailable("The bundle could not be named " + path + ": " + code.message() + ".");
        else if (auto safe = flushed(std::filesystem::path(path).parent_path() / "."); !safe)
            written = tl::unexpected(safe.error());
    }
    if (!written)
        std::filesystem::remove(part, code);
    return written;
}

Result<BundleReport> takeBundle(Store& into, std::istream& in, const KeepOn& keepOn)
{
    BundleTexts texts(in);
    Taker taker(into);
    std::string text;
    for (std::size_t place = 1;; ++place) {
        const BundleTexts::Got got = texts.next(text);
        if (got == BundleTexts::Got::End)
            break;
        const auto json = got == BundleTexts::Got::Text ? readJson(text) : Result<nlohmann::json>(refused("it is longer than " + std::to_string(kLongestBundleText) + " bytes"));
        if (place == 1) {
            if (!json)
                return refused("This file does not begin as a bundle of format 1 or 2: " + json.error().what.substr(0, 120));
            const auto book = checkHead(*json, into);
            if (!book)
                return tl::unexpected(book.error());
            taker.only(*book);
            continue;
        }
        if (auto taken = json ? taker.text(*json, place) : taker.no(place, json.error().what); !taken)
            return tl::unexpected(taken.error());
        if (!taker.isTimeToAsk())
            continue;
        taker.asked();
        if (!keepOn(taker.done())) {
            taker.report.stopped = true;
            break;
        }
    }
    if (texts.texts() == 0)
        return refused("This file does not begin as a bundle of format 1 or 2; it is empty or something else.");
    if (auto settled = taker.settle(); !settled)
        return tl::unexpected(settled.error());
    if (!taker.report.stopped && !taker.report.whole)
        taker.report.refused.push_back(taker.hasEnded() ? "The bundle does not hold the numbers of records and contents that its closing line states."
                                                        : "The bundle ends before its closing line; ask for it again.");
    return taker.report;
}

Result<BundleReport> takeBundleFile(Store& into, const std::string& path, const KeepOn& keepOn)
{
    std::ifstream in(path, std::ios::binary);
    if (!in)
        return refused("The bundle " + path + " does not exist or cannot be read.");
    return takeBundle(into, in, keepOn);
}

Result<std::string> textOfRecord(const Record& record)
{
    return canonicalText({{"record", recordJson(record)}});
}

Result<std::string> textOfContent(const std::string& hash, std::string_view content)
{
    return canonicalText({{"blob", hash}, {"content", base64Of(content)}});
}

Result<BundleReport> takeTexts(Store& into, std::span<const std::string> texts, const std::string& book)
{
    struct Read {
        Result<nlohmann::json> json = nlohmann::json();
        std::optional<Result<Record>> record;
    };
    std::vector<Read> all(texts.size());
    inRanges(texts.size(), 32, [&](std::size_t from, std::size_t to) {
        for (std::size_t i = from; i < to; ++i) {
            all[i].json = readJson(texts[i]);
            if (all[i].json && isRecord(*all[i].json))
                all[i].record = recordFromJson((*all[i].json)["record"]);
        }
    });
    Taker taker(into);
    taker.only(book);
    for (std::size_t i = 0; i < texts.size(); ++i) {
        Read& read = all[i];
        const auto taken = read.record              ? taker.record(std::move(*read.record), i + 1)
                           : !read.json             ? taker.no(i + 1, read.json.error().what)
                           : isClosing(*read.json) ? taker.no(i + 1, "a closing line ends a file, and nothing else")  // it would hide what stands behind it
                                                    : taker.text(*read.json, i + 1);
        if (!taken)
            return tl::unexpected(taken.error());
    }
    if (auto settled = taker.settle(); !settled)
        return tl::unexpected(settled.error());
    return taker.report;
}

}  // namespace groundcount::book
