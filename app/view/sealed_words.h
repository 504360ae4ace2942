#pragma once

#include <QString>

#include <string>

namespace groundcount::view {

/// A word as it stands in a record or a rule set ("signed out", "trench", "counts") in the language of the pages; what has no
/// translation stays as it is. Records themselves keep the English word.
QString sealedWord(const std::string& word);
/// The same at the beginning of a line.
QString sealedTitle(const std::string& word);

}  // namespace groundcount::view
