#include "book/utf8.h"

#include <algorithm>

namespace groundcount::book {

bool isAscii(std::string_view text)
{
    return std::all_of(text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) < 0x80; });
}

bool isUtf8(std::string_view text)
{
    if (isAscii(text))
        return true;
    std::u16string units;
    return utf16(text, units);
}

bool utf16(std::string_view text, std::u16string& units)
{
    for (std::size_t i = 0; i < text.size();) {
        const auto lead = static_cast<unsigned char>(text[i]);
        std::size_t more = 0;
        char32_t code = lead;
        if (lead >= 0xF0 && lead <= 0xF4) {
            more = 3;
            code = lead & 0x07U;
        } else if (lead >= 0xE0 && lead < 0xF0) {
            more = 2;
            code = lead & 0x0FU;
        } else if (lead >= 0xC2 && lead < 0xE0) {
            more = 1;
            code = lead & 0x1FU;
        } else if (lead >= 0x80) {
            return false;
        }
        if (more > text.size() - i - 1)
            return false;
        for (std::size_t k = 1; k <= more; ++k) {
            const auto next = static_cast<unsigned char>(text[i + k]);
            if ((next & 0xC0U) != 0x80U)
                return false;
            code = (code << 6U) | (next & 0x3FU);
        }
        const bool overlong = (more == 2 && code < 0x800) || (more == 3 && code < 0x10000);
        const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
        if (overlong || surrogate || code > 0x10FFFF)
            return false;
        if (code >= 0x10000) {
            units.push_back(static_cast<char16_t>(0xD800 + ((code - 0x10000) >> 10U)));
            units.push_back(static_cast<char16_t>(0xDC00 + ((code - 0x10000) & 0x3FFU)));
        } else {
            units.push_back(static_cast<char16_t>(code));
        }
        i += more + 1;
    }
    return true;
}

}  // namespace groundcount::book
