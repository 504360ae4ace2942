#include "book/number_order.h"

namespace groundcount::book {
namespace {

bool digit(char c)
{
    return c >= '0' && c <= '9';
}

// Cuts the run of digits from the front, without its leading zeros.
std::string_view takeRun(std::string_view& text)
{
    std::size_t end = 0;
    while (end < text.size() && digit(text[end]))
        ++end;
    std::string_view run = text.substr(0, end);
    text.remove_prefix(end);
    while (run.size() > 1 && run.front() == '0')
        run.remove_prefix(1);
    return run;
}

}  // namespace

bool numberBefore(std::string_view a, std::string_view b)
{
    std::string_view left = a;
    std::string_view right = b;
    while (!left.empty() && !right.empty()) {
        if (digit(left.front()) && digit(right.front())) {
            const std::string_view one = takeRun(left);
            const std::string_view two = takeRun(right);
            if (one.size() != two.size())
                return one.size() < two.size();
            if (one != two)
                return one < two;
        } else {
            if (left.front() != right.front())
                return static_cast<unsigned char>(left.front()) < static_cast<unsigned char>(right.front());
            left.remove_prefix(1);
            right.remove_prefix(1);
        }
    }
    if (left.empty() != right.empty())
        return left.empty();
    return a < b;
}

}  // namespace groundcount::book
