#pragma once

#include "book/store.h"

#include <cstdint>
#include <string>
#include <vector>

/// Records of a book as the texts that carriers take, without reading what their bodies say.
namespace groundcount::book {

struct StoredText {
    std::int64_t row = 0;  ///< place in this book's order of arrival
    std::string text;      ///< textOfRecord
};

/// The texts of at most `most` records behind a row, in the order of arrival. A record whose stored parts give its hash is taken as it stands; any
/// other is read and written again, as textOfRecord does.
/// @error Refused for a body that is not JSON or cannot be written canonically; Unavailable when the disk does not do its part.
Result<std::vector<StoredText>> storedTexts(const Store& store, std::int64_t afterRow, std::size_t most);

}  // namespace groundcount::book
