#include "book/bundle.h"

#include "book/bundle_text.h"
#include "book/canonical.h"
#include "book/seal.h"

#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <unistd.h>

namespace groundcount::book {

namespace {

constexpr std::size_t kAtOnce = 500;  // records between two questions to keepOn

Result<void> put(std::ostream& out, const nlohmann::json& json)
{
    const auto text = canonicalText(json);
    if (!text)
        return tl::unexpected(text.error());
    out << kTextBegin << *text << kTextEnd;
    if (!out)
        return unavailable("The bundle could not be written: the disk is full or reported an error.");
    return {};
}

tl::unexpected<Error> stoppedWriting()
{
    return refused("The bundle was stopped before it was whole; nothing was handed over.");
}

Result<void> flushed(const std::string& path)
{
    const int fd = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    const bool done = fd >= 0 && ::fsync(fd) == 0;
    if (fd >= 0)
        ::close(fd);
    return done ? Result<void>{} : unavailable("The bundle " + path + " could not be written to the disk.");
}

}  // namespace

nlohmann::json bundleHead(const std::string& book)
{
    if (book.empty())
        return {{"bundle", "field book"}, {"format", 1}};
    return {{"bundle", "field book"}, {"format", kBundleFormat}, {"book", book}};
}

Result<BundleWritten> writeBundle(const Store& store, std::ostream& out, const KeepOn& keepOn)
{
    BundleWritten written;
    const auto book = store.bookId();
    if (!book)
        return tl::unexpected(book.error());
    if (auto begun = put(out, bundleHead(*book)); !begun)
        return tl::unexpected(begun.error());
    for (const char* const kind : {"retired-key", ""}) {  // retired keys first, so that the reader knows them in time
        for (RecordFilter next{{}, kind, 0, kAtOnce};;) {
            const auto batch = store.storedRecords(next);
            if (!batch)
                return tl::unexpected(batch.error());
            if (batch->empty())
                break;
            for (const StoredRecord& one : *batch) {
                if (*kind == '\0' && one.record.kind == "retired-key")
                    continue;
                if (auto put1 = put(out, {{"record", recordJson(one.record)}}); !put1)
                    return tl::unexpected(put1.error());
                ++written.records;
            }
            next.afterRow = batch->back().row;
            if (!keepOn(written.records))
                return stoppedWriting();
        }
    }
    const auto hashes = store.blobHashes();
    if (!hashes)
        return tl::unexpected(hashes.error());
    for (const std::string& hash : *hashes) {
        const auto content = store.blob(hash);
        if (!content)
            return tl::unexpected(content.error());
        if (auto put1 = put(out, {{"blob", hash}, {"content", base64Of(*content)}}); !put1)
            return tl::unexpected(put1.error());
        ++written.blobs;
        if (!keepOn(written.records + written.blobs))
            return stoppedWriting();
    }
    if (auto tail = put(out, {{"end", {{"records", written.records}, {"blobs", written.blobs}}}}); !tail)
        return tl::unexpected(tail.error());
    return written;
}

Result<BundleWritten> writeBundleFile(const Store& store, const std::string& path, const KeepOn& keepOn)
{
    std::error_code code;
    if (std::filesystem::exists(path, code))
        return refused("A bundle needs a free name; " + path + " exists.");
    const std::string part = path + ".part";
    auto written = [&]() -> Result<BundleWritten> {
        std::ofstream out(part, std::ios::binary | std::ios::trunc);
        if (!out)
            return unavailable("The bundle " + path + " could not be made.");
        auto all = writeBundle(store, out, keepOn);
        out.close();
        if (all && !out)
            return unavailable("The bundle " + path + " could not be written: the disk is full or reported an error.");
        return all;
    }();
    if (written)
        if (auto safe = flushed(part); !safe)
            written = tl::unexpected(safe.error());
    if (written) {
        std::filesystem::rename(part, path, code);
        if (code)
            written = unavailable("The bundle could not be named " + path + ": " + code.message() + ".");
        else if (auto safe = flushed(std::filesystem::path(path).parent_path() / "."); !safe)
            written = tl::unexpected(safe.error());
    }
    if (!written)
        std::filesystem::remove(part, code);
    return written;
}

Result<std::string> textOfRecord(const Record& record)
{
    return canonicalText({{"record", recordJson(record)}});
}

Result<std::string> textOfContent(const std::string& hash, std::string_view content)
{
    return canonicalText({{"blob", hash}, {"content", base64Of(content)}});
}

}  // namespace groundcount::book
