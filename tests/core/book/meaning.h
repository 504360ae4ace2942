#pragma once

#include "book/store.h"

#include <algorithm>
#include <string>
#include <vector>

namespace sample {

/// Seals of a book in one order, its contents, and all that is derived from them: books that mean the same give equal text.
inline std::string meaning(const groundcount::book::Store& store)
{
    std::vector<std::string> lines;
    const auto records = store.records({}).value();
    for (const auto& record : records)
        lines.push_back(record.hash + " " + record.signature);
    const auto blobs = store.blobHashes().value();
    for (const std::string& hash : blobs)
        lines.push_back("blob " + hash);
    std::sort(lines.begin(), lines.end());
    std::string all;
    for (const std::string& line : lines)
        all += line + "\n";
    return all + store.derivedText().value();
}

}  // namespace sample
