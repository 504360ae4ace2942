#include "book/audit.h"
#include "book/state_query.h"
#include "fuzz/hold.h"
#include "fuzz/sample_entries.h"

#include <algorithm>

using namespace fuzzed;

namespace {

/// First byte 0: the rest is the file. 1: the rest is a log beside a sound book. Else: patches of a sound book, five bytes
/// each (three of place, one of length, one of value).
faults::Medium hostile(const std::uint8_t* data, std::size_t size)
{
    static const faults::Medium book = smallBook();
    faults::Medium made = book;
    std::string& file = made.contents[made.names.at(kBook)];
    const std::string rest(reinterpret_cast<const char*>(data) + 1, size - 1);
    if (data[0] == 0) {
        file = rest;
    } else if (data[0] == 1) {
        made.names[std::string(kBook) + "-wal"] = 1000;
        made.contents[1000] = rest;
    } else {
        for (std::size_t i = 0; i + 5 <= rest.size(); i += 5) {
            const auto byte = [&](std::size_t n) { return static_cast<std::size_t>(static_cast<unsigned char>(rest[i + n])); };
            const std::size_t place = (byte(0) << 16U | byte(1) << 8U | byte(2)) % file.size();
            const std::size_t length = std::min(byte(3) % 16 + 1, file.size() - place);
            std::fill_n(file.begin() + static_cast<std::ptrdiff_t>(place), length, rest[i + 4]);
        }
    }
    return made;
}

void readAll(const Store& store)
{
    std::ignore = check(store);
    std::ignore = store.derivedText();
    std::ignore = store.records({});
    const StateQuery query(store);
    std::ignore = query.job();
    std::ignore = query.tests({});
    std::ignore = query.gauges();
    std::ignore = query.lots();
    std::ignore = query.conflicts();
    std::ignore = query.nextTestNumber();
    std::ignore = store.blobHashes();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    if (size == 0)
        return 0;
    const faults::Medium medium = hostile(data, size);
    for (const OpenMode mode : {OpenMode::ReadOnly, OpenMode::ReadWrite}) {
        faults::Disk::instance().load(medium);
        auto store = open(mode);
        if (!store) {
            HOLD(!store.error().what.empty());
            continue;
        }
        HOLD(mode == OpenMode::ReadWrite || store->isReadOnly());
        readAll(*store);
        const auto sealed = store->seal(entry("note", {{"text", "b"}}));
        if (sealed) {
            HOLD(verifyRecord(*sealed));
            const auto back = store->record(sealed->hash);
            HOLD(back && back->hash == sealed->hash);
        }
    }
    return 0;
}
