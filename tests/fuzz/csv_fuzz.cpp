#include "book/audit.h"
#include "book/csv_import.h"
#include "book/csv_text.h"
#include "book/state_query.h"
#include "fuzz/hold.h"
#include "fuzz/sample_entries.h"

using namespace fuzzed;

namespace {

constexpr const char* kHead =
    "test_no,test_date,material,proctor_reference,wet_density_lb_ft3,moisture_percent,max_dry_density_lb_ft3,optimum_moisture_percent,"
    "min_compaction_percent,max_compaction_percent,moisture_window_low_points,moisture_window_high_points,reported_dry_density_lb_ft3,"
    "reported_compaction_percent\n";

}  // namespace

/// Any text as a list of field tests: refused with a sentence and nothing written, or sealed tests that check finds nothing about.
/// A first byte of 0 brings its own head row, else the columns are given.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    if (size == 0 || size > 4096)
        return 0;
    static const faults::Medium book = smallBook();
    std::string text(reinterpret_cast<const char*>(data), size);
    text = data[0] == 0 ? text.substr(1) : kHead + text;
    const auto rows = readCsv(text);
    HOLD(rows || !rows.error().what.empty());
    for (const ImportMode mode : {ImportMode::AllOrNothing, ImportMode::SkipBroken}) {
        faults::Disk::instance().load(book);
        auto store = open(OpenMode::ReadWrite);
        HOLD(store);
        const auto before = store->lastRow().value();
        ImportSettings settings;
        settings.by = "00000004-0000-4000-8000-000000000000";
        settings.at = "2026-06-09T15:41:07.250Z";
        settings.mode = mode;
        settings.rules = groundcount::method::neutralRules();
        const auto report = importTests(*store, text, settings);
        if (!report) {
            HOLD(!report.error().what.empty());
            HOLD(store->lastRow().value() == before);
            continue;
        }
        HOLD(rows);
        const auto tests = StateQuery(*store).tests({});
        HOLD(tests && tests->size() == report->tests.size() + 1);
        const auto audit = check(*store);
        HOLD(audit && audit->isClean());
    }
    return 0;
}
