#pragma once

#include "book/audit.h"
#include "core/book/sample_book.h"
#include "faults/crash_vfs.h"

/// What a book says, as one text; and opening on the disk in memory.
namespace faults {

using groundcount::Fault;
using groundcount::Result;
using namespace groundcount::book;

inline constexpr const char* kBook = "power.fieldbook";

inline Result<Store> openBook(OpenMode mode, unsigned char fill = 7)
{
    std::ignore = Disk::instance();
    return Store::openOn(Disk::kDisk, kBook, mode, sample::key(fill));
}

/// Every record with seal and content, every blob, the draft and the derived tables.
inline Result<std::string> picture(const Store& store)
{
    std::string all;
    const auto records = store.records({});
    if (!records)
        return tl::unexpected(records.error());
    for (const Record& r : *records)
        all += r.device.substr(0, 8) + " " + std::to_string(r.seq) + " " + r.prev + " " + r.hash + " " + r.signature + " " + r.body.dump() + "\n";
    const auto blobs = store.blobHashes();
    if (!blobs)
        return tl::unexpected(blobs.error());
    for (const std::string& hash : *blobs) {
        const auto content = store.blob(hash);
        if (!content)
            return tl::unexpected(content.error());
        all += "blob " + hash + "\n";
    }
    const auto draft = store.draft(sample::id(100), "place");
    const auto derived = store.derivedText();
    if (!draft || !derived)
        return tl::unexpected(draft ? derived.error() : draft.error());
    return all + "draft " + *draft + "\n" + *derived;
}

}  // namespace faults
