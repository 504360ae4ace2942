#include "book/canonical.h"
#include "book/kinds.h"
#include "fuzz/hold.h"
#include "fuzz/sample_entries.h"

#include <optional>

using namespace fuzzed;

namespace {

/// The reader of a record: what it takes, it writes back to the same bytes.
void asRecord(const nlohmann::json& json)
{
    const auto record = recordFromJson(json);
    if (!record) {
        HOLD(!record.error().what.empty());
        return;
    }
    HOLD(recordJson(*record) == json);
    std::ignore = verifyRecord(*record);
    std::ignore = checkBody(record->kind, record->body);
}

/// The body that was read, sealed as a record of its kind into a book, folded and read back.
void asBody(const nlohmann::json& json)
{
    if (!json.is_object() || !json.contains("kind") || !json["kind"].is_string() || !json.contains("body"))
        return;
    static const faults::Medium book = smallBook();
    static std::optional<Store> store;
    static int uses = 0;
    if (uses++ % 200 == 0) {
        store.reset();
        faults::Disk::instance().load(book);
        store.emplace(open(OpenMode::ReadWrite).value());
    }
    Entry e = entry(*json["kind"].get_ptr<const std::string*>(), json["body"]);
    const auto sealed = store->seal(e);
    if (!sealed) {
        HOLD(!sealed.error().what.empty());
        return;
    }
    const auto back = store->record(sealed->hash);
    HOLD(back && verifyRecord(*back) && recordJson(*back) == recordJson(*sealed));
    const auto read = recordFromJson(recordJson(*sealed));
    HOLD(read && read->hash == sealed->hash);
    HOLD(store->staleDerived().value_or("x").empty());
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto json = readJson(text);
    if (!json) {
        HOLD(!json.error().what.empty());
        return 0;
    }
    if (const auto once = canonicalText(*json)) {
        const auto again = readJson(*once);
        HOLD(again);
        HOLD(canonicalText(*again) == once);
    }
    asRecord(*json);
    asBody(*json);
    return 0;
}
