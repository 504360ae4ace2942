#pragma once

#include "book/bundle.h"

#include <string>

namespace groundcount::gis {

inline constexpr const char* kBundleEnding = ".fieldbundle";

/// Writes a bundle of the book, out of sight, and puts it in place when it is whole; what stood there before stays otherwise.
/// @param path ends in kBundleEnding
/// @error Refused: another ending, as book::writeBundle; Unavailable: disk or book.
Result<book::BundleWritten> handOverBundle(const book::Store& store, const std::string& path, const book::KeepOn& keepOn);

}  // namespace groundcount::gis
