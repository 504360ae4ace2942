#include "book/audit.h"
#include "book/bundle.h"
#include "fuzz/hold.h"
#include "fuzz/sample_entries.h"

#include <sstream>

using namespace fuzzed;

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    static const faults::Medium book = smallBook();
    faults::Disk::instance().load(book);
    auto store = open(OpenMode::ReadWrite);
    HOLD(store);
    // the head is given, so that every input is read beyond it; an input with a first byte of 0 brings its own
    std::string text = size > 0 && data[0] == 0 ? std::string() : "\x1e{\"bundle\":\"field book\",\"format\":1}\n";
    text.append(reinterpret_cast<const char*>(data) + (text.empty() && size > 0 ? 1 : 0), size - (text.empty() && size > 0 ? 1 : 0));
    std::istringstream in(text);
    const auto report = takeBundle(*store, in, [](std::size_t done) { return done < 5000; });
    if (!report)
        HOLD(!report.error().what.empty());
    else
        HOLD(report->whole || report->stopped || !report->refused.empty());
    // whatever came, the book holds sealed records only
    const auto audit = check(*store);
    HOLD(audit);
    for (const AuditLine& line : audit->lines)
        HOLD(line.finding != Finding::Content && line.finding != Finding::Form && line.finding != Finding::Derived && line.finding != Finding::Unreadable);
    return 0;
}
