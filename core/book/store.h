#pragma once

#include "book/keys.h"
#include "book/record.h"
#include "method/error.h"

#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

/// A field book on disk: an SQLite database of sealed records, drafts and blobs. docs/record-format.md, "The file".
namespace groundcount::book {

class Database;
enum class Access;

enum class OpenMode {
    ReadOnly,
    ReadWrite,
    Create  ///< makes the file; refused when it exists
};

/// Which records `Store::records` gives, in the order in which this book received them. Empty text = any.
struct RecordFilter {
    std::string subject;
    std::string kind;
    std::int64_t afterRow = 0;    ///< only rows above this one
    std::size_t most = 1'000'000;
};

struct StoredRecord {
    std::int64_t row = 0;  ///< place in this book's order of arrival
    Record record;
};

/// What `merge` did with each record that was offered.
struct MergeReport {
    std::size_t taken = 0;
    std::size_t known = 0;  ///< was here already
    std::vector<std::string> refused;  ///< one sentence per refused record
};

/// Not for several threads at once: a worker opens its own Store on the same file and sees each commit at once.
class Store {
public:
    /// Opens a book. On the way every record's hash is checked against its text (the newest kCheckedAtOpen of them);
    /// when one does not hold the book opens read-only and `damage()` names it.
    /// A file with nothing in it, left by a power cut while it was made, is made again when it is opened for writing.
    /// @param key the device's key; without one nothing can be sealed
    /// @error Refused for a file that is no field book, or of a newer format; Unavailable when the disk does not do its part.
    static Result<Store> open(const std::string& path, OpenMode mode, std::optional<DeviceKey> key = std::nullopt);
    /// The same through the registered sqlite3_vfs `vfs`, held by this Store alone: how power cuts and failing disks are tried.
    static Result<Store> openOn(const std::string& vfs, const std::string& path, OpenMode mode, std::optional<DeviceKey> key);
    static constexpr std::int64_t kCheckedAtOpen = 50'000;
    /// Another Store on the same file, for a thread that only reads. What this one checked when it was opened is not checked again: only what
    /// came since is; `damage()` is the one known here, else of those.
    /// @error as `open`; Refused for a store that holds its file alone
    Result<Store> readBeside() const;

    Store(Store&&) noexcept;
    Store& operator=(Store&&) noexcept;
    Store(const Store&) = delete;
    Store& operator=(const Store&) = delete;
    ~Store();  ///< leaves no write-ahead log behind when it is the last to close

    /// "" or a sentence that names the first broken record.
    const std::string& damage() const;
    bool isReadOnly() const;
    /// Whether the derived tables are of this version of the fold. A book opened for writing always has them; one that is
    /// only read may come from another version, and its lists then cannot all be read before a rebuild.
    bool hasCurrentFold() const;
    const std::string& path() const;
    /// The book's id, which every record in it names; "" while it is empty, and in a book of format 1.
    Result<std::string> bookId() const;

    /// Seals one entry: checks form and body, chains, signs, inserts, reads back, verifies, updates the derived tables and
    /// commits. When it returns a record, the record is on disk.
    /// @error Refused with the reason, nothing written; Unavailable when the disk did not do its part, nothing written.
    Result<Record> seal(const Entry& entry);
    /// The same for several entries in one transaction: all or none.
    Result<std::vector<Record>> sealAll(std::span<const Entry> entries);
    /// Seals `first`, asks `following` for entries that need the hashes of what was sealed, and seals them too: one
    /// transaction, all or none. @return all records, those of `first` in front
    using Following = std::function<Result<std::vector<Entry>>(const std::vector<Record>& sealed)>;
    Result<std::vector<Record>> sealThen(std::span<const Entry> first, const Following& following);

    /// @error Refused when no record has this hash.
    Result<Record> record(const std::string& hash) const;
    Result<std::vector<Record>> records(const RecordFilter& filter) const;
    Result<std::vector<StoredRecord>> storedRecords(const RecordFilter& filter) const;
    /// Number of the last row, 0 in an empty book.
    Result<std::int64_t> lastRow() const;

    /// Takes in records of a copy of this book after checking hash, signature, book and body; an empty book becomes such a
    /// copy. A refused one is listed, the rest is taken; what is here already is left alone, so that the call can be
    /// repeated. Retired keys are heard first. One transaction.
    Result<MergeReport> take(std::span<const Record> records);
    /// `take` of everything that another copy holds, and the blobs that are missing here.
    /// @error Refused for a book with another id: that is another job.
    Result<MergeReport> mergeFrom(const Store& other);

    /// Typing that is not sealed yet. Local: never merged, never in a hand-over copy.
    Result<void> saveDraft(const std::string& subject, const std::string& step, const std::string& text);
    Result<std::string> draft(const std::string& subject, const std::string& step) const;  ///< "" when there is none
    Result<void> dropDraft(const std::string& subject, const std::string& step);

    /// Content of photos and notes, stored once under its BLAKE2b-256. @return the hash
    Result<std::string> putBlob(std::string_view content);
    /// @error Refused when there is no such content; Unavailable when it no longer gives its hash.
    Result<std::string> blob(const std::string& hash) const;
    Result<std::vector<std::string>> blobHashes() const;

    /// Writes a copy for others by the database itself, without drafts; the copy appears under `path` when it is whole.
    /// @error Refused when `path` exists; Unavailable when the disk does not do its part.
    Result<void> handOver(const std::string& path) const;

    /// Changes when another process or Store committed to the book.
    Result<std::int64_t> dataVersion() const;
    /// Drops the derived tables and makes them again from the records.
    Result<void> rebuild();
    /// Every row of every derived table as text, ordered by its content: equal books give equal text.
    Result<std::string> derivedText() const;

    /// A subject whose derived rows are not what its records give, or "". Folds everything again in memory.
    Result<std::string> staleDerived() const;

    /// Lets the file grow to `pages` pages of 4096 bytes, never below its size: a quota, and how a full disk is tried.
    Result<void> limitPages(std::int64_t pages);

    /// The database below, for the readers of core/book.
    Database& database() const;

private:
    friend class Taking;
    struct Inner;
    explicit Store(std::unique_ptr<Inner> inner);
    using Connect = std::function<Result<Database>(Access)>;
    static Result<Store> openBy(const Connect& connect, const std::string& path, OpenMode mode, std::optional<DeviceKey> key);
    std::unique_ptr<Inner> m_inner;
};

}  // namespace groundcount::book
