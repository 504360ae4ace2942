#pragma once

#include <string>
#include <string_view>

namespace groundcount::book {

/// True when `text` holds only bytes below 0x80: UTF-8 whose byte order is that of its UTF-16 code units.
bool isAscii(std::string_view text);

/// True when `text` is valid UTF-8 (no overlong form, no surrogate, at most U+10FFFF). @source RFC 3629
bool isUtf8(std::string_view text);

/// Appends the UTF-16 code units of a UTF-8 text to `units`.
/// @return false when the text is not UTF-8; `units` then holds what came before. @source RFC 3629
bool utf16(std::string_view text, std::u16string& units);

}  // namespace groundcount::book
