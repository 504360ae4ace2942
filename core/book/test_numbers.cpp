#include "book/row_reader.h"
#include "book/state_query.h"

#include <algorithm>
#include <set>

namespace groundcount::book {

namespace {

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

/// "26A" is "26"; a number without trailing letters after digits is left as it is.
std::string withoutLetters(const std::string& number)
{
    std::size_t end = number.size();
    while (end > 0 && number[end - 1] >= 'A' && number[end - 1] <= 'Z')
        --end;
    return end > 0 && isDigit(number[end - 1]) ? number.substr(0, end) : number;
}

}  // namespace

std::string retestNumber(const std::string& parentNumber, int retest)
{
    std::string letters;
    for (int n = retest; n > 0; n = (n - 1) / 26)
        letters.insert(letters.begin(), static_cast<char>('A' + (n - 1) % 26));
    return parentNumber + letters;
}

Result<std::string> StateQuery::nextTestNumber() const
{
    const auto numbers = readAll<std::string>(m_store.database(), "SELECT number FROM test_row", {},
                                              [](RowReader row, std::string& number) { row >> number; });
    if (!numbers)
        return tl::unexpected(numbers.error());
    long long greatest = 0;
    for (const std::string& number : *numbers) {
        const std::string digits = withoutLetters(number);
        if (!digits.empty() && digits.size() < 16 && std::all_of(digits.begin(), digits.end(), isDigit))
            greatest = std::max(greatest, std::stoll(digits));
    }
    return std::to_string(greatest + 1);
}

Result<std::string> StateQuery::nextRetestNumber(const std::string& testId) const
{
    const auto rows = readAll<std::pair<std::string, std::pair<std::string, std::string>>>(
        m_store.database(), "SELECT id, number, retest_of FROM test_row", {},
        [](RowReader row, auto& t) { row >> t.first >> t.second.first >> t.second.second; });
    if (!rows)
        return tl::unexpected(rows.error());
    std::string root = testId;
    std::string number;
    std::set<std::string> passed;  // a hostile book may hold a ring of retests
    const auto find = [&](const std::string& id) {
        return std::find_if(rows->begin(), rows->end(), [&](const auto& t) { return t.first == id; });
    };
    for (auto it = find(root); it != rows->end() && passed.insert(root).second; it = find(root)) {
        number = it->second.first;
        if (it->second.second.empty() || find(it->second.second) == rows->end())
            break;
        root = it->second.second;
    }
    if (number.empty())
        return refused("No test of this book has the subject " + testId.substr(0, 36) + ".");
    std::set<std::string> taken;
    for (const auto& t : *rows)
        taken.insert(t.second.first);
    int retest = 1;
    while (taken.contains(retestNumber(number, retest)))
        ++retest;
    return retestNumber(number, retest);
}

}  // namespace groundcount::book
