#include "share/pull_place.h"

#include "book/carrier_mark.h"

#include <algorithm>
#include <limits>
#include <string>
#include <utility>

namespace groundcount::share {

std::span<const Range> ranges()
{
    constexpr std::int64_t kUsual = std::int64_t{1} << 62;
    static constexpr Range kRanges[] = {{std::numeric_limits<std::int64_t>::min(), kUsual, "pulled", "seen"},
                                        {kUsual + 1, std::numeric_limits<std::int64_t>::max(), "pulled beyond", "seen beyond"}};
    return kRanges;
}

Result<Place> placeIn(const book::Store& store, const Job& job, const Range& range)
{
    const auto mark = book::carrierMark(store, job.begun, range.pulled);
    const auto pulled = numberMark(store, job, range.pulled), seen = numberMark(store, job, range.seen);
    for (const auto* number : {&pulled, &seen})
        if (!mark || !*number)
            return tl::unexpected(mark ? number->error() : mark.error());
    // a book of an earlier version has one mark for all numbers
    return mark->empty() ? Place{} : Place{std::min(*pulled, range.last), *seen};
}

Result<void> note(book::Store& store, const Job& job, const Range& range, const Place& place)
{
    const std::pair<std::string, std::string> marks[] = {{range.pulled, place.pulled ? std::to_string(*place.pulled) : ""},
                                                         {range.seen, place.pulled ? std::to_string(place.seen) : ""}};
    return book::setCarrierMarks(store, job.begun, marks);
}

Result<bool> hasMissed(const book::Store& store, Job& job, const Range& range)
{
    const auto place = placeIn(store, job, range);
    if (!place)
        return tl::unexpected(place.error());
    if (!place->pulled)
        return false;
    auto there = job.server.run("SELECT count(*) FROM groundcount.sealed WHERE project_id = $1 AND seq >= $2 AND seq <= $3",
                                {uuidOf(job.id), wholeOf(range.first), wholeOf(*place->pulled)});
    return there.map([&](const Answer& answer) { return answer.whole(0, 0) != place->seen; });
}

}  // namespace groundcount::share
