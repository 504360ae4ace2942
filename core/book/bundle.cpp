#include "book/bundle.h"

#include "book/bundle_text.h"
#include "book/canonical.h"
#include "book/hash.h"
#include "book/parallel.h"
#include "book/seal.h"

#include <algorithm>
#include <atomic>
#include <fstream>
#include <iterator>
#include <utility>

namespace groundcount::book {

namespace {

constexpr std::size_t kAtOnce = 500;  // a second or so of verifying on a phone between two questions to keepOn

const std::atomic<bool> kNever = false;

/// The id of the book that a bundle is of, if its first text is one and it is of the book that takes it.
Result<std::string> checkHead(const nlohmann::json& json, const Store& into)
{
    const auto id = json.is_object() ? json.find("book") : json.end();
    const std::string book = json.is_object() && id != json.end() && id->is_string() ? *id->get_ptr<const std::string*>() : std::string();
    if (json != bundleHead(book) || (!book.empty() && !isSubject(book)))
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
    /// @param atOnce records in one transaction
    explicit Taker(Store& into, std::size_t atOnce, const std::atomic<bool>& givenUp = kNever) : m_into(into), m_atOnce(atOnce), m_givenUp(givenUp) {}

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
        for (CheckedRecord& one : checked(std::exchange(m_unchecked, {})))
            m_batch.push_back(std::move(one));
        if (m_batch.empty())
            return {};
        const auto part = takeChecked(m_into, std::exchange(m_batch, {}), m_givenUp);
        if (!part)
            return tl::unexpected(part.error());
        report.stopped = !*part;
        if (*part)
            report.add(**part);
        return {};
    }

    bool isTimeToAsk() const { return m_asks; }
    void asked() { m_asks = false; }
    std::size_t done() const { return m_records + m_blobs; }
    bool hasEnded() const { return m_ended; }

    BundleReport report;

    /// @param read a record that was read, and perhaps verified
    template <class Read>
    Result<void> record(Result<Read> read, std::size_t place)
    {
        ++m_records;
        if (!read)
            return no(place, read.error().what);
        if (const Record& one = recordOf(*read); one.book != m_book)
            return no(place, "it is of another field book (" + nameOf(one) + ")");
        listOf(*read).push_back(std::move(*read));
        if (m_unchecked.size() + m_batch.size() < m_atOnce)
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

    static const Record& recordOf(const Record& read) { return read; }
    static const Record& recordOf(const CheckedRecord& read) { return read.record(); }
    std::vector<Record>& listOf(const Record&) { return m_unchecked; }
    std::vector<CheckedRecord>& listOf(const CheckedRecord&) { return m_batch; }

    Store& m_into;
    const std::size_t m_atOnce;
    const std::atomic<bool>& m_givenUp;
    std::string m_book;
    std::vector<Record> m_unchecked;
    std::vector<CheckedRecord> m_batch;
    std::size_t m_records = 0;
    std::size_t m_blobs = 0;
    bool m_asks = false;
    bool m_ended = false;
};

}  // namespace

Result<BundleReport> takeBundle(Store& into, std::istream& in, const KeepOn& keepOn)
{
    BundleTexts texts(in);
    Taker taker(into, kAtOnce);
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

namespace {

/// The body goes over as it is: a copy of it costs as much as reading it.
Result<CheckedRecord> checkedFromJson(nlohmann::json json)
{
    nlohmann::json& one = json["record"];
    const auto place = one.is_object() ? one.find("body") : one.end();
    Body body = place != one.end() && place->is_object() ? std::exchange(*place, Body::object()) : Body();
    return recordFromJson(one).map([&](Record&& read) {
        read.body = std::move(body);
        return CheckedRecord(std::move(read));
    });
}

}  // namespace

ReadTexts::ReadTexts(std::span<const std::string_view> texts) : m_all(texts.size())
{
    inRanges(texts.size(), 32, [&](std::size_t from, std::size_t to) {
        for (std::size_t i = from; i < to; ++i) {
            m_all[i].json = readJson(texts[i]);
            if (m_all[i].json && isRecord(*m_all[i].json))
                m_all[i].record = checkedFromJson(*std::exchange(m_all[i].json, nlohmann::json()));
        }
    });
}

void ReadTexts::append(ReadTexts more)
{
    std::move(more.m_all.begin(), more.m_all.end(), std::back_inserter(m_all));
}

Result<BundleReport> takeTexts(Store& into, ReadTexts texts, const std::string& book, const std::atomic<bool>& givenUp) // NOLINT(performance-unnecessary-value-param): moved out of
{
    Taker taker(into, texts.m_all.size(), givenUp);
    taker.only(book);
    for (std::size_t place = 1; auto& [json, record] : texts.m_all) {
        const auto taken = record              ? taker.record(std::move(*record), place)
                           : !json             ? taker.no(place, json.error().what)
                           : isClosing(*json) ? taker.no(place, "a closing line ends a file, and nothing else")  // it would hide what stands behind it
                                               : taker.text(*json, place);
        if (!taken)
            return tl::unexpected(taken.error());
        ++place;
    }
    if (auto settled = taker.settle(); !settled)
        return tl::unexpected(settled.error());
    return taker.report;
}

}  // namespace groundcount::book
