#pragma once

#include "book/checked_record.h"
#include "book/store.h"
#include "method/error.h"

#include <atomic>
#include <functional>
#include <istream>
#include <optional>
#include <ostream>
#include <span>
#include <string>
#include <string_view>
#include <vector>

/// A bundle: records and contents of a book in one file that one phone hands to another. A JSON text sequence (RFC 7464);
/// docs/record-format.md, "The bundle". A bundle is a carrier, not a book: everything in it is verified when it is taken in.
namespace groundcount::book {

inline constexpr int kBundleFormat = 2;  ///< 1 had no book id
/// Longest text of a bundle that is read, bytes: a content of 48 MiB in base64. A longer one is refused and passed over.
inline constexpr std::size_t kLongestBundleText = 64U << 20U;

/// Asked between batches of records and after each content. @param done records and contents handled so far
/// @return false to stop there
using KeepOn = std::function<bool(std::size_t done)>;

struct BundleWritten {
    std::size_t records = 0;
    std::size_t blobs = 0;
};

struct BundleReport : MergeReport {
    std::size_t blobs = 0;  ///< contents that are here now
    bool stopped = false;   ///< keepOn said no; what was taken stays, and taking in again goes on from there
    bool whole = false;     ///< the closing line was there and its numbers fit

    /// What was done with more of it.
    void add(const MergeReport& part)
    {
        taken += part.taken;
        known += part.known;
        refused.insert(refused.end(), part.refused.begin(), part.refused.end());
    }
};

/// Writes every record in order of arrival here, then every content, then the closing line. Drafts are never in it.
/// @error Unavailable when the book or the stream fails; Refused when a stored content no longer gives its hash or keepOn stopped it.
Result<BundleWritten> writeBundle(const Store& store, std::ostream& out, const KeepOn& keepOn);

/// The same into a file, which appears under `path` when it is whole and on disk.
/// @error Refused when `path` exists.
Result<BundleWritten> writeBundleFile(const Store& store, const std::string& path, const KeepOn& keepOn);

/// Takes a bundle into a book: union, as Store::take. A text that is no JSON, has another form, or holds a record or content that
/// does not verify is listed in `refused` with its place in the bundle and its reason; the rest is taken.
/// A bundle that ends early is taken as far as it goes and listed as such.
/// @error Refused when it does not begin as a bundle of format 1 or 2, or is of another book; Unavailable when the disk does not do its part.
Result<BundleReport> takeBundle(Store& into, std::istream& in, const KeepOn& keepOn);

/// The same from a file. @error Refused when there is no such file.
Result<BundleReport> takeBundleFile(Store& into, const std::string& path, const KeepOn& keepOn);

/// The texts of a bundle one by one, for another carrier: a record, a content with its hash. Canonical, without marks.
/// @error Refused when the record's body cannot be written canonically.
Result<std::string> textOfRecord(const Record& record);
Result<std::string> textOfContent(const std::string& hash, std::string_view content);

/// Such texts read and verified, on every core. Touches no book, so that one can be in use meanwhile.
class ReadTexts {
public:
    ReadTexts() = default;
    explicit ReadTexts(std::span<const std::string_view> texts);
    /// Those of `more` behind these.
    void append(ReadTexts more);

private:
    friend Result<BundleReport> takeTexts(Store& into, ReadTexts texts, const std::string& book, const std::atomic<bool>& givenUp);
    struct One {
        Result<nlohmann::json> json = nlohmann::json();
        std::optional<Result<CheckedRecord>> record;  ///< when it has the form of one
    };
    std::vector<One> m_all;
};

/// Takes such texts in, all records in one transaction; each text stands as in takeBundle.
/// @param book id of the book that they must be of
/// @param givenUp when it turns true on the way, no record is taken, and the report says that it was stopped
Result<BundleReport> takeTexts(Store& into, ReadTexts texts, const std::string& book, const std::atomic<bool>& givenUp);

}  // namespace groundcount::book
