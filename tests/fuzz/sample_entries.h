#pragma once

#include "book/seal.h"
#include "book/store.h"
#include "faults/crash_vfs.h"

/// A small book on the disk in memory, to start from.
namespace fuzzed {

using namespace groundcount::book;

inline constexpr const char* kBook = "fuzzed.fieldbook";

inline DeviceKey key()
{
    std::array<unsigned char, 32> seed{};
    seed.fill(5);
    return DeviceKey::fromSeed(seed);
}

inline Entry entry(std::string kind, Body body)
{
    Entry e;
    e.kind = std::move(kind);
    e.subject = "00000064-0000-4000-8000-000000000000";
    e.by = "00000004-0000-4000-8000-000000000000";
    e.at = "2026-06-09T15:41:07.250Z";
    e.body = std::move(body);
    if (e.kind == "void")
        e.reason = "wrong lift";
    return e;
}

inline groundcount::Result<Store> open(OpenMode mode)
{
    std::ignore = faults::Disk::instance();
    return Store::openOn(faults::Disk::kDisk, kBook, mode, key());
}

/// A closed book with three records and a content.
inline faults::Medium smallBook()
{
    faults::Disk::instance().clear();
    {
        auto store = open(OpenMode::Create);
        std::ignore = store->seal(entry("note", {{"text", "a"}}));
        std::ignore = store->seal(entry("test-site", {{"number", "1"}, {"gauge", "00000005-0000-4000-8000-000000000000"},
            {"lot", "0000000a-0000-4000-8000-000000000000"}, {"lift", "0000000b-0000-4000-8000-000000000000"}, {"purpose", "directed"},
            {"latitude_deg", "32.9"}, {"longitude_deg", "-96.9"}, {"grid_north_usft", "7012345.25"}, {"grid_east_usft", "2512345.50"}}));
        std::ignore = store->seal(entry("reading", {{"number", 1}, {"mode", "direct"}, {"depth_in", "8"}, {"orientation", "along"},
            {"seconds", 60}, {"wet_density_lb_ft3", "124.6"}, {"water_content_pct", "14.0"}}));
        std::ignore = store->putBlob("photo");
    }
    return faults::Disk::instance().medium();
}

}  // namespace fuzzed
