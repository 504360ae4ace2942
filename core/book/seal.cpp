#include "book/seal.h"

#include "book/canonical.h"
#include "book/checked_record.h"
#include "book/hash.h"

#include <algorithm>

namespace groundcount::book {

namespace {

bool isLowerHex(std::string_view text)
{
    return std::all_of(text.begin(), text.end(),
                       [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); });
}

bool isDigits(std::string_view text)
{
    return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

int number(std::string_view digits)
{
    int value = 0;
    for (const char c : digits)
        value = value * 10 + (c - '0');
    return value;
}

bool isKind(std::string_view kind)
{
    return !kind.empty() && kind.size() <= 40 && kind.front() >= 'a' && kind.front() <= 'z' &&
           std::all_of(kind.begin(), kind.end(), [](char c) {
               return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-';
           });
}

tl::unexpected<Error> wrong(const char* part, const std::string& value, const char* allowed)
{
    return refused(std::string("A record's ") + part + " must be " + allowed + "; it is \"" + value.substr(0, 80) + "\".");
}

Result<void> checkLink(std::int64_t seq, const std::string& prev)
{
    if (seq < 1 || seq > kLargestWhole)
        return refused("A record's running number must be 1 or more; it is " + std::to_string(seq) + ".");
    if (seq == 1 ? !prev.empty() : !isHash(prev))
        return wrong("link to the previous record", prev, "empty for number 1 and a hash of 64 digits after it");
    return {};
}

Result<void> checkBookId(const std::string& book)
{
    if (!book.empty() && !isSubject(book))
        return wrong("book", book, "a UUID in lower case, or empty in a book of format 1");
    return {};
}

}  // namespace

bool isHash(std::string_view text)
{
    return text.size() == 64 && isLowerHex(text);
}

bool isSubject(std::string_view text)
{
    if (text.size() != 36)
        return false;
    for (std::size_t i = 0; i < text.size(); ++i) {
        const bool dash = i == 8 || i == 13 || i == 18 || i == 23;
        if (dash ? text[i] != '-' : !isLowerHex(text.substr(i, 1)))
            return false;
    }
    return true;
}

bool isDate(std::string_view text)
{
    if (text.size() != 10 || text[4] != '-' || text[7] != '-' || !isDigits(text.substr(0, 4)) ||
        !isDigits(text.substr(5, 2)) || !isDigits(text.substr(8, 2)))
        return false;
    const int year = number(text.substr(0, 4));
    const int month = number(text.substr(5, 2));
    const int day = number(text.substr(8, 2));
    const bool leap = (year % 4 == 0 && year % 100 != 0) || year % 400 == 0;
    constexpr std::array<int, 12> kDays{31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};
    if (month < 1 || month > 12 || day < 1)
        return false;
    return day <= (month == 2 && leap ? 29 : kDays[static_cast<std::size_t>(month - 1)]);
}

bool isUtcTime(std::string_view text)
{
    return text.size() == 24 && isDate(text.substr(0, 10)) && text[10] == 'T' && text[13] == ':' && text[16] == ':' &&
           text[19] == '.' && text[23] == 'Z' && isDigits(text.substr(11, 2)) && isDigits(text.substr(14, 2)) &&
           isDigits(text.substr(17, 2)) && isDigits(text.substr(20, 3)) && number(text.substr(11, 2)) < 24 &&
           number(text.substr(14, 2)) < 60 && number(text.substr(17, 2)) < 60;
}

Result<void> checkEnvelope(const Entry& entry)
{
    if (!isKind(entry.kind))
        return wrong("kind", entry.kind, "1 to 40 lower-case letters, digits and hyphens");
    if (!isSubject(entry.subject))
        return wrong("subject", entry.subject, "a UUID in lower case");
    if (!entry.amends.empty() && !isHash(entry.amends))
        return wrong("amended record", entry.amends, "empty or a hash of 64 hexadecimal digits");
    const bool needsReason = !entry.amends.empty() || entry.kind == "void";
    const bool blank = std::all_of(entry.reason.begin(), entry.reason.end(), [](char c) { return c == ' '; });
    if (needsReason && blank)
        return refused("A change needs a reason; the reason of this " + entry.kind + " is empty.");
    if (!needsReason && !entry.reason.empty())
        return wrong("reason", entry.reason, "empty unless it amends or voids");
    if (!isSubject(entry.by))
        return wrong("person", entry.by, "a UUID in lower case");
    if (!isUtcTime(entry.at))
        return wrong("time", entry.at, "UTC as YYYY-MM-DDTHH:MM:SS.mmmZ");
    if (entry.offsetMinutes < -840 || entry.offsetMinutes > 840)
        return refused("Local time must be -840 to 840 minutes from UTC; it is " + std::to_string(entry.offsetMinutes) + ".");
    if (!entry.body.is_object())
        return refused("A record's body must be an object; that of this " + entry.kind + " is not.");
    return {};
}

Result<std::string> canonicalRecord(const Record& r)
{
    const auto body = canonicalText(r.body);
    return body ? canonicalRecord(r, *body) : body;
}

Result<std::string> canonicalRecord(const Record& r, const std::string& body)
{
    std::string out;
    out.reserve(body.size() + 600);
    Result<void> sound;
    const auto text = [&](const char* name, const std::string& value) {
        out += name;
        if (sound)
            sound = appendCanonical(value, out);
    };
    text("{\"amends\":", r.amends);
    text(",\"at\":", r.at);
    out += ",\"body\":" + body;
    if (!r.book.empty())
        text(",\"book\":", r.book);
    text(",\"by\":", r.by);
    text(",\"device\":", r.device);
    text(",\"kind\":", r.kind);
    out += ",\"offset_minutes\":" + std::to_string(r.offsetMinutes);
    text(",\"prev\":", r.prev);
    text(",\"reason\":", r.reason);
    out += ",\"seq\":" + std::to_string(r.seq);
    text(",\"subject\":", r.subject);
    out += '}';
    return sound ? Result<std::string>(std::move(out)) : tl::unexpected(sound.error());
}

Result<Record> sealEntry(const Entry& entry, const DeviceKey& key, std::int64_t seq, const std::string& prev, const std::string& book)
{
    if (auto form = checkEnvelope(entry); !form)
        return tl::unexpected(form.error());
    if (auto link = checkLink(seq, prev); !link)
        return tl::unexpected(link.error());
    if (auto id = checkBookId(book); !id)
        return tl::unexpected(id.error());
    Record record;
    static_cast<Entry&>(record) = entry;
    record.book = book;
    record.device = key.device();
    record.seq = seq;
    record.prev = prev;
    const auto text = canonicalRecord(record);
    if (!text)
        return tl::unexpected(text.error());
    record.hash = blake2b256Hex(*text);
    auto signature = key.sign(record.hash);
    if (!signature)
        return tl::unexpected(signature.error());
    record.signature = std::move(*signature);
    return record;
}

std::string bookIdOf(const Entry& entry, const std::string& device)
{
    std::string id = blake2b256Hex(device + " " + entry.subject + " " + entry.at).substr(0, 32);
    id[12] = '8';  // version
    const int digit = id[16] <= '9' ? id[16] - '0' : id[16] - 'a' + 10;
    id[16] = "89ab"[digit & 3];  // variant
    for (const std::size_t dash : {8U, 13U, 18U, 23U})
        id.insert(dash, "-");
    return id;
}

Result<void> verifyRecord(const Record& record)
{
    return verifiedBody(record).map([](const std::string&) {});
}

Result<std::string> verifiedBody(const Record& record)
{
    const auto no = [&](const std::string& why) { return refused(why + " Record: " + nameOf(record) + "."); };
    if (auto id = checkBookId(record.book); !id)
        return no(id.error().what);
    if (auto form = checkEnvelope(record); !form)
        return no(form.error().what);
    if (auto link = checkLink(record.seq, record.prev); !link)
        return no(link.error().what);
    auto body = canonicalText(record.body);
    const auto text = body ? canonicalRecord(record, *body) : body;
    if (!text)
        return no(text.error().what);
    if (blake2b256Hex(*text) != record.hash)
        return refused("The content no longer gives its hash: " + nameOf(record) + ".");
    if (!signatureHolds(record.device, record.hash, record.signature))
        return refused("The signature is not that device's: " + nameOf(record) + ".");
    return body;
}

}  // namespace groundcount::book
