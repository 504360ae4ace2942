// The field book against its floor, in one run: seal against a bare SQLite insert, verify against libsodium, growth by tests.
//   book_bench [FOLDER [TESTS...]]     FOLDER: where the books are made (default .), TESTS: sizes (default 10000 100000)
//   book_bench read FILE               opens a book that is there and reads the columns; books stay with BOOK_BENCH_KEEP=1
#include "book/seal.h"
#include "book/audit.h"
#include "book/parallel.h"
#include "book/state_query.h"
#include "book/store.h"
#include "book/test_columns.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sodium.h>
#include <sqlite3.h>
#include <string>
#include <thread>
#include <time.h>

using namespace groundcount::book;

namespace {

double now()
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

/// Processor time of all threads: what a busy machine does not falsify.
double spent()
{
    timespec t{};
    clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
    return static_cast<double>(t.tv_sec) + static_cast<double>(t.tv_nsec) * 1e-9;
}

template <class Value>
auto must(Value&& result)
{
    if (!result) {
        std::fprintf(stderr, "%s\n", result.error().what.c_str());
        std::exit(1);
    }
    if constexpr (requires { *result; })
        return std::move(*result);
}

std::string id(int group, int number)
{
    char text[40];
    std::snprintf(text, sizeof text, "%08x-%04x-4000-8000-000000000000", static_cast<unsigned>(number), static_cast<unsigned>(group));
    return text;
}

DeviceKey key()
{
    std::array<unsigned char, 32> seed{};
    seed.fill(7);
    return DeviceKey::fromSeed(seed);
}

Entry entry(const char* kind, const std::string& subject, Body body)
{
    Entry e;
    e.kind = kind;
    e.subject = subject;
    e.by = id(4, 1);
    e.at = "2026-06-09T15:41:07.250Z";
    e.offsetMinutes = -300;
    e.body = std::move(body);
    return e;
}

/// Three records make a test here: place, reading, verdict.
void addTest(std::vector<Entry>& into, int n)
{
    const std::string subject = id(1, n);
    into.push_back(entry("test-site", subject, {{"number", std::to_string(n)}, {"gauge", id(5, 1)}, {"lot", id(6, 1)}, {"lift", id(7, 1)},
        {"purpose", "random"}, {"latitude_deg", "32.9012345"}, {"longitude_deg", "-96.9012345"}, {"grid_north_usft", std::to_string(7012345 + n % 999) + ".25"},
        {"grid_east_usft", std::to_string(2512345 + n % 777) + ".50"}, {"station", "1050.5"}, {"offset_ft", "-12.0"}, {"fixes", 20}}));
    into.push_back(entry("reading", subject, {{"number", 1}, {"mode", "direct"}, {"depth_in", "8"}, {"orientation", "along"}, {"seconds", 60},
        {"wet_density_lb_ft3", "124." + std::to_string(n % 10)}, {"water_content_pct", "14.0"}}));
    into.push_back(entry("verdict", subject, {{"result", n % 9 ? "pass" : "fail"}, {"reasons", Body::array()},
        {"figures", {{"percent_compaction", "97.2"}, {"dry_density_lb_ft3", "109.3"}, {"wet_density_lb_ft3", "124.6"}, {"water_content_pct", "14.0"}}},
        {"rule_set", std::string(64, 'a')}, {"core", "0.1.0"}, {"from", Body::array({std::string(64, 'b')})}}));
}

double median(std::vector<double> values)
{
    std::nth_element(values.begin(), values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2), values.end());
    return values[values.size() / 2];
}

void sealAgainstBareInsert(const std::string& folder)
{
    const std::string ours = folder + "/seal.fieldbook", bare = folder + "/bare.db";
    Store store = must(Store::open(ours, OpenMode::Create, key()));
    sqlite3* db = nullptr;
    sqlite3_open(bare.c_str(), &db);
    sqlite3_exec(db, "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; CREATE TABLE record(row INTEGER PRIMARY KEY, hash TEXT, kind TEXT,"
                     "subject TEXT, amends TEXT, reason TEXT, by_person TEXT, at TEXT, offset_minutes INTEGER, device TEXT, seq INTEGER,"
                     "prev TEXT, body TEXT, signature TEXT)", nullptr, nullptr, nullptr);
    sqlite3_stmt* insert = nullptr;
    sqlite3_prepare_v2(db, "INSERT INTO record VALUES(NULL,?,?,?,?,?,?,?,?,?,?,?,?,?)", -1, &insert, nullptr);
    std::vector<double> seals, inserts, signatures;
    for (int n = 0; n < 700; ++n) {
        std::vector<Entry> entries;
        addTest(entries, n);
        for (const Entry& e : entries) {
            double from = now();
            const Record r = must(store.seal(e));
            seals.push_back(now() - from);
            from = now();
            const auto again = sealEntry(e, key(), r.seq, r.prev, r.book);
            const bool holds = verifyRecord(*again).has_value();
            signatures.push_back(now() - from);
            if (!holds || again->hash != r.hash)
                std::exit(1);
            const std::string body = r.body.dump();
            const std::string* texts[] = {&r.hash, &r.kind, &r.subject, &r.amends, &r.reason, &r.by, &r.at, nullptr, &r.device, nullptr, &r.prev, &body, &r.signature};
            from = now();
            for (int i = 0; i < 13; ++i)
                if (texts[i])
                    sqlite3_bind_text(insert, i + 1, texts[i]->data(), static_cast<int>(texts[i]->size()), SQLITE_STATIC);
                else
                    sqlite3_bind_int64(insert, i + 1, i == 7 ? r.offsetMinutes : r.seq);
            if (sqlite3_step(insert) != SQLITE_DONE)
                std::exit(1);
            sqlite3_reset(insert);
            inserts.push_back(now() - from);
        }
    }
    sqlite3_finalize(insert);
    sqlite3_close(db);
    const double seal = median(seals), sign = median(signatures), floor = median(inserts);
    std::printf("seal, median of %zu: %.0f us; of it hash, signature and reading back %.0f us; bare SQLite insert, same bytes and flush: %.0f us\n",
                seals.size(), seal * 1e6, sign * 1e6, floor * 1e6);
    std::printf("ratio without signature: %.2f; with it: %.2f\n", (seal - sign) / floor, seal / floor);

    const auto records = must(store.records({}));
    std::atomic<std::size_t> sound{0};
    double from = now(), work = spent();
    inRanges(records.size(), 32, [&](std::size_t first, std::size_t end) {
        std::size_t own = 0;
        for (std::size_t i = first; i < end; ++i)
            own += verifyRecord(records[i]).has_value();
        sound += own;
    });
    const double verify = static_cast<double>(records.size()) / (now() - from);
    const double verifyWork = spent() - work;
    std::vector<std::array<unsigned char, 128>> raw(records.size());  // hash, signature, device
    for (std::size_t i = 0; i < records.size(); ++i) {
        sodium_hex2bin(raw[i].data(), 32, records[i].hash.data(), 64, nullptr, nullptr, nullptr);
        sodium_hex2bin(raw[i].data() + 32, 64, records[i].signature.data(), 128, nullptr, nullptr, nullptr);
        sodium_hex2bin(raw[i].data() + 96, 32, records[i].device.data(), 64, nullptr, nullptr, nullptr);
    }
    from = now();
    work = spent();
    std::size_t held = 0;
    for (const auto& r : raw)
        held += crypto_sign_verify_detached(r.data() + 32, r.data(), 32, r.data() + 96) == 0;
    const double floorRate = static_cast<double>(raw.size()) / (now() - from);
    const double floorWork = spent() - work;
    if (sound != records.size() || held != records.size())
        std::exit(1);
    const unsigned cores = std::max(1U, std::thread::hardware_concurrency());
    std::printf("verify on %u cores: %.0f records/s; libsodium alone on one: %.0f signatures/s; ratio to that times the cores %.2f\n",
                cores, verify, floorRate, verify / floorRate / cores);
    std::printf("processor time of a record: verify %.1f us, libsodium alone %.1f us: %.2f of its rate\n", verifyWork * 1e6 / static_cast<double>(records.size()),
                floorWork * 1e6 / static_cast<double>(raw.size()), floorWork / verifyWork);
    from = now();
    Store copy = must(Store::open(folder + "/merged.fieldbook", OpenMode::Create, key()));
    const auto merged = must(copy.mergeFrom(store));
    std::printf("merge into an empty book: %.0f records/s", static_cast<double>(merged.taken) / (now() - from));
    from = now();
    const auto audit = must(check(copy));
    std::printf("; check, verdicts and derived tables included: %.0f records/s\n", static_cast<double>(audit.records) / (now() - from));
}

double residentMegabytes()
{
    std::ifstream statm("/proc/self/statm");
    long total = 0, resident = 0;
    statm >> total >> resident;
    return static_cast<double>(resident) * 4096 / 1e6;
}

void grow(const std::string& folder, int tests)
{
    const std::string path = folder + "/grow" + std::to_string(tests) + ".fieldbook";
    double from = now();
    {
        Store store = must(Store::open(path, OpenMode::Create, key()));
        for (int n = 0; n < tests;) {
            std::vector<Entry> entries;
            for (int i = 0; i < 500 && n < tests; ++i)
                addTest(entries, n++);
            must(store.sealAll(entries));
        }
    }
    const double made = now() - from;
    const double size = static_cast<double>(std::filesystem::file_size(path));
    from = now();
    Store store = must(Store::open(path, OpenMode::ReadWrite, key()));
    const double opened = now() - from;
    const double before = residentMegabytes();
    from = now();
    const auto columns = must(testColumns(store));
    const double listed = now() - from;
    const double held = residentMegabytes() - before;
    from = now();
    must(store.rebuild());
    const double rebuilt = now() - from;
    std::printf("| %d | %d | %.1f | %.2f | %.2f | %.0f | %.1f | %.0f |\n", tests, tests * 3, made, opened, listed, held, rebuilt, size / tests);
    std::fflush(stdout);
    if (columns.size() != static_cast<std::size_t>(tests))
        std::exit(1);
}

void readOnly(const std::string& path)
{
    double from = now();
    const Store store = must(Store::open(path, OpenMode::ReadOnly, std::nullopt));
    const double opened = now() - from, before = residentMegabytes();
    from = now();
    const auto columns = must(testColumns(store));
    std::printf("%zu tests: opened in %.2f s, columns in %.2f s, %.0f MB\n", columns.size(), opened, now() - from, residentMegabytes() - before);
    const double beforeRows = residentMegabytes();
    from = now();
    const auto rows = must(StateQuery(store).tests({}));
    std::printf("%zu whole rows in %.2f s, %.0f MB\n", rows.size(), now() - from, residentMegabytes() - beforeRows);
}

}  // namespace

int main(int argc, char** argv)
{
    if (sodium_init() < 0)
        return 1;
    if (argc == 3 && std::string(argv[1]) == "read") {
        readOnly(argv[2]);
        return 0;
    }
    const std::string folder = std::string(argc > 1 ? argv[1] : ".") + "/book-bench";
    std::filesystem::remove_all(folder);
    std::filesystem::create_directories(folder);
    sealAgainstBareInsert(folder);
    std::puts("| tests | records | seal all, s | open, s | list, s | list, MB | rebuild, s | bytes per test |\n| --- | --- | --- | --- | --- | --- | --- | --- |");
    if (argc > 2)
        for (int i = 2; i < argc; ++i)
            grow(folder, std::atoi(argv[i]));
    else
        for (const int tests : {10'000, 100'000})
            grow(folder, tests);
    if (!std::getenv("BOOK_BENCH_KEEP"))
        std::filesystem::remove_all(folder);
}
