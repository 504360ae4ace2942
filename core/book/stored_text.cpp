#include "book/stored_text.h"

#include "book/bundle.h"
#include "book/hash.h"
#include "book/seal.h"
#include "book/store_inner.h"

namespace groundcount::book {

namespace {

/// The text of a record out of the members that are hashed: hash and signature have their places before kind and subject. No text among the members
/// behind the body holds such a name as it stands here, since quotes in texts are escaped.
std::string withSeal(std::string sealed, const Record& record)
{
    sealed.insert(sealed.rfind(",\"subject\":"), ",\"signature\":\"" + record.signature + "\"");
    sealed.insert(sealed.rfind(",\"kind\":"), ",\"hash\":\"" + record.hash + "\"");
    return "{\"record\":" + std::move(sealed) + "}";
}

bool isHex(const std::string& text)
{
    return text.find_first_not_of("0123456789abcdef") == std::string::npos;
}

Result<std::string> textOf(const Statement& row)
{
    const Record envelope = envelopeOf(row, 1);
    auto sealed = canonicalRecord(envelope, row.text(1 + kBodyColumn));
    if (sealed && blake2b256Hex(*sealed) == envelope.hash && isHex(envelope.signature))
        return withSeal(std::move(*sealed), envelope);
    const auto record = recordOf(row, 1);
    return record ? textOfRecord(*record) : tl::unexpected(record.error());
}

}  // namespace

Result<std::vector<StoredText>> storedTexts(const Store& store, std::int64_t afterRow, std::size_t most)
{
    static const std::string kSelect = std::string("SELECT row, ") + kRecordColumns + " FROM record WHERE row > ? ORDER BY row LIMIT ?";
    auto query = store.database().use(kSelect);
    if (!query)
        return tl::unexpected(query.error());
    query->bind(1, afterRow).bind(2, static_cast<std::int64_t>(most));
    std::vector<StoredText> texts;
    for (;;) {
        const auto row = query->step();
        if (!row)
            return tl::unexpected(row.error());
        if (!*row)
            return texts;
        auto text = textOf(*query);
        if (!text)
            return tl::unexpected(text.error());
        texts.push_back({query->whole(0), std::move(*text)});
    }
}

}  // namespace groundcount::book
