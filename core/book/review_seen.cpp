#include "book/review_seen.h"

#include "book/canonical.h"
#include "book/kinds.h"
#include "book/row_reader.h"
#include "book/state_query.h"

#include <algorithm>
#include <unordered_map>

namespace groundcount::book {

namespace {

struct Sealed {
    ReviewChange change;
    std::string by, device, body;
    std::int64_t seq = 0;
};

bool hasSeen(const ReviewLine& review, const Sealed& record)
{
    if (review.seen.empty())  // an older review says only when it was sealed
        return record.change.at <= review.at;
    const auto last = review.seen.find(record.device);
    return last != review.seen.end() && record.seq <= last->second;
}

/// Sealed records beyond what `floor` says of each device: the only ones that any review can have missed.
Result<std::vector<Sealed>> beyond(const Store& store, const std::map<std::string, std::int64_t>& floor)
{
    const auto devices = readAll<std::string>(store.database(), "SELECT DISTINCT device FROM record", {}, [](RowReader row, std::string& d) { row >> d; });
    if (!devices)
        return tl::unexpected(devices.error());
    std::vector<Sealed> all;
    for (const std::string& device : *devices) {
        const auto last = floor.find(device);
        auto some = readAll<Sealed>(store.database(),
            "SELECT subject, kind, at, offset_minutes, hash, amends, reason, by_person, seq, CASE WHEN kind = 'draw' THEN body ELSE '' END FROM record"
            " WHERE device = ?1 AND seq > CAST(?2 AS INTEGER) AND kind <> 'review' ORDER BY seq",
            {device, std::to_string(last == floor.end() ? 0 : last->second)}, [&](RowReader row, Sealed& s) {
                row >> s.change.subject >> s.change.kind >> s.change.at >> s.change.offsetMinutes >> s.change.hash >> s.change.amends >> s.change.reason >> s.by >> s.seq >> s.body;
                s.device = device;
            });
        if (!some)
            return tl::unexpected(some.error());
        all.insert(all.end(), std::make_move_iterator(some->begin()), std::make_move_iterator(some->end()));
    }
    std::sort(all.begin(), all.end(), [](const Sealed& a, const Sealed& b) { return std::tie(a.change.at, a.device, a.seq) < std::tie(b.change.at, b.device, b.seq); });
    return all;
}

/// What the reviews of the lots have in common: below this nothing can be new.
std::map<std::string, std::int64_t> commonlySeen(const std::vector<ReviewedLot>& lots)
{
    std::optional<std::map<std::string, std::int64_t>> common;
    const auto take = [&](const std::optional<ReviewLine>& review) {
        if (!review)
            return;
        if (!common) {
            common = review->seen;
            return;
        }
        for (auto it = common->begin(); it != common->end();) {
            const auto other = review->seen.find(it->first);
            it->second = other == review->seen.end() ? 0 : std::min(it->second, other->second);
            it = it->second == 0 ? common->erase(it) : std::next(it);
        }
    };
    for (const auto& lot : lots) {
        take(lot.review);
        for (const auto& lift : lot.lifts)
            take(lift.review);
    }
    return common.value_or(std::map<std::string, std::int64_t>());
}

/// The part of a lot that a record speaks of; the lift is "" for the lot itself.
struct Part {
    std::size_t lot = 0;
    std::string lift, test;
};

std::unordered_multimap<std::string, Part> partsOf(const ReviewRows& rows, const std::vector<ReviewedLot>& lots)
{
    std::unordered_multimap<std::string, Part> parts;
    std::unordered_map<std::string_view, std::size_t> atLot;
    for (std::size_t i = 0; i < lots.size(); ++i) {
        atLot.emplace(lots[i].lot->id, i);
        for (const std::string& subject : {lots[i].lot->id, lots[i].lot->material, lots[i].lot->proctor})
            if (!subject.empty())
                parts.emplace(subject, Part{i, {}, {}});
        for (const auto& lift : lots[i].lifts)
            parts.emplace(lift.lift->id, Part{i, lift.lift->id, {}});
    }
    for (const TestRow& t : rows.tests)
        if (const auto lot = atLot.find(t.lot); lot != atLot.end())
            parts.emplace(t.id, Part{lot->second, t.lift, t.number});
    return parts;
}

const ReviewLine* speaksFor(const ReviewedLot& lot, const std::string& liftId)
{
    const ReviewLine* speaking = lot.review ? &*lot.review : nullptr;
    for (const auto& lift : lot.lifts)
        if (lift.lift->id == liftId && lift.review && (!speaking || lift.review->at >= speaking->at))
            speaking = &*lift.review;
    return speaking;
}

/// Whether a record about the lot itself is new to the lot's own review or to one of its lifts'.
bool isNewToSome(const ReviewedLot& lot, const Sealed& record)
{
    if (lot.review)
        return !hasSeen(*lot.review, record);
    return std::any_of(lot.lifts.begin(), lot.lifts.end(), [&](const auto& lift) { return lift.review && !hasSeen(*lift.review, record); });
}

}  // namespace

Result<std::vector<ReviewLine>> reviews(const Store& store)
{
    struct Row {
        ReviewLine line;
        std::string body;
    };
    auto rows = readAll<Row>(store.database(),
        "SELECT r.hash, r.subject, r.by_person, r.at, r.offset_minutes, r.body FROM record r WHERE r.kind = 'review'"
        " AND NOT EXISTS (SELECT 1 FROM record a WHERE a.subject = r.subject AND a.kind = 'review' AND a.amends = r.hash)"
        " ORDER BY r.at, r.device, r.seq", {}, [](RowReader row, Row& r) { row >> r.line.hash >> r.line.subject >> r.line.by >> r.line.at >> r.line.offsetMinutes >> r.body; });
    const auto people = StateQuery(store).people();
    if (!rows || !people)
        return tl::unexpected(rows ? people.error() : rows.error());
    std::vector<ReviewLine> lines;
    for (Row& row : *rows) {
        const auto body = readJson(row.body);
        if (!body || !checkBody("review", *body))
            continue;  // a damaged body; `check` names it
        const std::string said = textAt(*body, "word");
        row.line.word = said == "accepted" ? ReviewWord::Accepted : said == "returned" ? ReviewWord::Returned : ReviewWord::AcceptedWithException;
        row.line.note = textAt(*body, "note");
        if (body->contains("seen"))
            for (const Body& one : body->at("seen"))
                row.line.seen[textAt(one, "device")] = one.at("last").get<std::int64_t>();
        for (const PersonRow& person : *people)
            if (person.id == row.line.by)
                row.line.byName = person.name;
        lines.push_back(std::move(row.line));
    }
    return lines;
}

Result<Body> reviewBody(const Store& store, ReviewWord said, const std::string& note)
{
    struct Last {
        std::string device;
        std::int64_t last = 0;
    };
    const auto lasts = readAll<Last>(store.database(), "SELECT device, max(seq) FROM record GROUP BY device ORDER BY device", {},
                                     [](RowReader row, Last& l) { row >> l.device >> l.last; });
    if (!lasts)
        return tl::unexpected(lasts.error());
    Body body{{"word", word(said)}, {"seen", Body::array()}};
    for (const Last& l : *lasts)
        body["seen"].push_back({{"device", l.device}, {"last", l.last}});
    if (!note.empty())
        body["note"] = note;
    return body;
}

void assignReviews(std::span<const ReviewLine> all, const ReviewRows& rows, std::vector<ReviewedLot>& lots)
{
    std::unordered_map<std::string_view, const ReviewLine*> latest;
    for (const ReviewLine& line : all)
        latest[line.subject] = &line;
    std::unordered_map<std::string_view, std::size_t> atLot;
    for (std::size_t i = 0; i < lots.size(); ++i) {
        atLot.emplace(lots[i].lot->id, i);
        if (const auto found = latest.find(lots[i].lot->id); found != latest.end())
            lots[i].review = *found->second;
        for (auto& lift : lots[i].lifts)
            if (const auto found = latest.find(lift.lift->id); found != latest.end())
                lift.review = *found->second;
    }
    if (latest.empty())
        return;
    for (const TestRow& t : rows.tests) {
        const auto lot = atLot.find(t.lot);
        if (const auto found = latest.find(t.id); found != latest.end() && lot != atLot.end())
            lots[lot->second].tests.push_back(*found->second);
    }
}

Result<void> findChanges(const Store& store, const ReviewRows& rows, std::vector<ReviewedLot>& lots)
{
    const bool anyReview = std::any_of(lots.begin(), lots.end(), [](const ReviewedLot& lot) {
        return lot.review || std::any_of(lot.lifts.begin(), lot.lifts.end(), [](const auto& lift) { return lift.review.has_value(); });
    });
    if (!anyReview)
        return {};
    const auto records = beyond(store, commonlySeen(lots));
    const auto people = StateQuery(store).people();
    if (!records || !people)
        return tl::unexpected(records ? people.error() : records.error());
    const auto parts = partsOf(rows, lots);
    for (const Sealed& record : *records) {
        std::string subject = record.change.subject;
        if (record.change.kind == "draw")
            if (const auto body = readJson(record.body); body && body->is_object())
                subject = textAt(*body, "lift").empty() ? textAt(*body, "lot") : textAt(*body, "lift");
        const auto [first, last] = parts.equal_range(subject);
        for (auto it = first; it != last; ++it) {
            ReviewedLot& lot = lots[it->second.lot];
            const ReviewLine* review = speaksFor(lot, it->second.lift);
            if (it->second.lift.empty() ? !isNewToSome(lot, record) : !review || hasSeen(*review, record))
                continue;
            ReviewChange change = record.change;
            change.test = it->second.test;
            change.lift = it->second.lift;
            for (const PersonRow& person : *people)
                if (person.id == record.by)
                    change.byName = person.name;
            lot.changes.push_back(std::move(change));
        }
    }
    return {};
}

}  // namespace groundcount::book
