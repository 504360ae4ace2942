#include "book/checked_record.h"

#include "book/kinds.h"
#include "book/parallel.h"
#include "book/seal.h"

#include <optional>

namespace groundcount::book {

CheckedRecord::CheckedRecord(Record record) : m_record(std::move(record))
{
    auto text = verifiedBody(m_record);
    if (!text)
        m_fault = text.error().what;
    else if (const auto form = checkBody(m_record.kind, m_record.body); !form)
        m_fault = form.error().what + " Record: " + nameOf(m_record) + ".";
    else
        m_body = std::move(*text);
}

std::vector<CheckedRecord> checked(std::vector<Record> records)
{
    constexpr std::size_t kWorthAThread = 32;  // two milliseconds of signatures; a thread starts in a tenth of one
    std::vector<std::optional<CheckedRecord>> each(records.size());
    inRanges(records.size(), kWorthAThread, [&](std::size_t from, std::size_t to) {
        for (std::size_t i = from; i < to; ++i)
            each[i].emplace(std::move(records[i]));
    });
    std::vector<CheckedRecord> all;
    all.reserve(each.size());
    for (auto& one : each)
        all.push_back(std::move(*one));
    return all;
}

}  // namespace groundcount::book
