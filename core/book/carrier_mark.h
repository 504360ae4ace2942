#pragma once

#include "book/store.h"
#include "method/error.h"

#include <span>
#include <string>
#include <utility>

/// How far a carrier (a shared server) has been read and served: local notes of this copy, never merged, never in a
/// hand-over copy. Losing them costs time only.
namespace groundcount::book {

/// @param carrier which one; @param name of the note
/// @return its value, "" when there is none
Result<std::string> carrierMark(const Store& store, const std::string& carrier, const std::string& name);

/// @error Refused for a book that is open for reading only; Unavailable when the disk does not do its part.
Result<void> setCarrierMark(const Store& store, const std::string& carrier, const std::string& name, const std::string& value);

/// Several notes at once: all of them or none. @param marks names and values
Result<void> setCarrierMarks(const Store& store, const std::string& carrier, std::span<const std::pair<std::string, std::string>> marks);

}  // namespace groundcount::book
