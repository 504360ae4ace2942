#include "book/seal.h"

#include "book/canonical.h"

namespace groundcount::book {

nlohmann::json recordJson(const Record& r)
{
    nlohmann::json json = {{"amends", r.amends}, {"at", r.at}, {"body", r.body}, {"by", r.by}, {"device", r.device}, {"hash", r.hash},
                           {"kind", r.kind}, {"offset_minutes", r.offsetMinutes}, {"prev", r.prev}, {"reason", r.reason},
                           {"seq", r.seq}, {"signature", r.signature}, {"subject", r.subject}};
    if (!r.book.empty())
        json["book"] = r.book;
    return json;
}

Result<Record> recordFromJson(const nlohmann::json& json)
{
    if (!json.is_object())
        return refused("A record must be a JSON object; this is not.");
    Record r;
    const auto text = [&](const char* name, std::string& into) {
        const auto it = json.find(name);
        if (it == json.end() || !it->is_string())
            return false;
        into = *it->get_ptr<const std::string*>();
        return true;
    };
    const std::pair<const char*, std::string*> texts[] = {
        {"amends", &r.amends}, {"at", &r.at}, {"by", &r.by}, {"device", &r.device}, {"hash", &r.hash},
        {"kind", &r.kind}, {"prev", &r.prev}, {"reason", &r.reason}, {"signature", &r.signature}, {"subject", &r.subject}};
    for (const auto& [name, into] : texts)
        if (!text(name, *into))
            return refused(std::string("A record's ") + name + " must be a text; it is missing or something else.");
    const auto whole = [&](const char* name, std::int64_t lowest, std::int64_t highest, std::int64_t& into) {
        const auto it = json.find(name);
        if (it == json.end() || !it->is_number_integer())
            return false;
        if (it->is_number_unsigned() && *it->get_ptr<const std::uint64_t*>() > static_cast<std::uint64_t>(highest))
            return false;
        into = it->is_number_unsigned() ? static_cast<std::int64_t>(*it->get_ptr<const std::uint64_t*>())
                                        : *it->get_ptr<const std::int64_t*>();
        return into >= lowest && into <= highest;
    };
    std::int64_t offset = 0;
    if (!whole("seq", 1, kLargestWhole, r.seq))
        return refused("A record's seq must be a whole number from 1; it is missing or something else.");
    if (!whole("offset_minutes", -840, 840, offset))
        return refused("A record's offset_minutes must be a whole number from -840 to 840; it is missing or something else.");
    r.offsetMinutes = static_cast<int>(offset);
    const auto body = json.find("body");
    if (body == json.end() || !body->is_object())
        return refused("A record's body must be an object; it is missing or something else.");
    r.body = *body;
    const bool hasBook = json.contains("book");
    if (hasBook && (!text("book", r.book) || r.book.empty()))
        return refused("A record's book must be a text that is not empty, or missing; it is something else.");
    const std::size_t members = hasBook ? 14 : 13;
    if (json.size() != members)
        return refused("A record has " + std::to_string(members) + " members; this one has " + std::to_string(json.size()) + ".");
    return r;
}

std::string nameOf(const Record& record)
{
    return record.kind.substr(0, 40) + " of " + record.subject.substr(0, 8) + ", device " + record.device.substr(0, 8) + ", number " +
           std::to_string(record.seq) + " (hash " + record.hash.substr(0, 12) + ")";
}

}  // namespace groundcount::book
