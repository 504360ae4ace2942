#include "method/accept/retest.h"

#include <algorithm>

namespace groundcount::method {
namespace {

constexpr int kMostRetests = 26 + 26 * 26 + 26 * 26 * 26;  // ZZZ

}  // namespace

Result<std::string> retestNumber(std::string_view parent, int retestNo)
{
    if (parent.empty() || parent.back() < '0' || parent.back() > '9')
        return refused("The number of the failing test must end in a digit; it is \"" + std::string(parent) + "\".");
    if (retestNo < 1 || retestNo > kMostRetests)
        return refused("The count of retests must be 1 to " + std::to_string(kMostRetests) + "; it is " + std::to_string(retestNo) + ".");
    std::string letters;
    // Letters count from 1, not 0: Z is 26 and AA 27.
    for (int rest = retestNo; rest > 0; rest = (rest - 1) / 26)
        letters += static_cast<char>('A' + (rest - 1) % 26);
    std::reverse(letters.begin(), letters.end());
    return std::string(parent) + letters;
}

}  // namespace groundcount::method
