#include "command/open_book.h"

#include "book/state_query.h"

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <iostream>

namespace groundcount::command {
namespace {

namespace fs = std::filesystem;

std::string setting(const char* name)
{
    const char* value = std::getenv(name);
    return value ? value : "";
}

void removeBook(const std::string& path)
{
    std::error_code ignored;  // nothing more can be done about a file that stays
    for (const char* ending : {"", "-wal", "-shm", "-journal"})
        fs::remove(path + ending, ignored);
}

}  // namespace

Result<book::DeviceKey> deviceKey(const std::string& path)
{
    if (!path.empty())
        return book::DeviceKey::loadOrMake(path);
    fs::path folder = setting("XDG_DATA_HOME");
    if (folder.empty()) {
        if (setting("HOME").empty())
            return unavailable("There is no home folder for the device's key; name a file with --key.");
        folder = fs::path(setting("HOME")) / ".local" / "share";
    }
    folder /= "groundcount";
    std::error_code error;
    fs::create_directories(folder, error);
    if (error)
        return unavailable("The folder \"" + folder.string() + "\" for the device's key cannot be made: " + error.message() + ".");
    return book::DeviceKey::loadOrMake((folder / "device.key").string());
}

Result<book::Store> openToRead(const std::string& path)
{
    auto store = book::Store::open(path, book::OpenMode::ReadOnly);
    if (store && !store->damage().empty())
        std::cerr << store->damage() << '\n';
    if (store && !store->hasCurrentFold())
        std::cerr << "The lists in " << path << " are of another version of this program; \"groundbook rebuild " << path << "\" makes them anew from the records.\n";
    return store;
}

Result<book::Store> openToWrite(const std::string& path, const std::string& keyPath)
{
    std::error_code error;
    if (!fs::exists(path, error))
        return refused("There is no field book \"" + path + "\"; \"groundbook make\" makes one.");
    const auto key = deviceKey(keyPath);
    if (!key)
        return tl::unexpected(key.error());
    auto store = book::Store::open(path, book::OpenMode::ReadWrite, *key);
    if (!store)
        return store;
    if (!store->damage().empty())
        return refused("The book is open read-only: " + store->damage());
    if (store->isReadOnly())
        return unavailable("The field book \"" + path + "\" can be read but not written.");
    return store;
}

NewBook::NewBook(std::string path, std::string draft, book::Store store)
    : m_path(std::move(path)), m_draft(std::move(draft)), m_store(std::move(store))
{
}

Result<NewBook> NewBook::begin(const std::string& path, const std::string& keyPath)
{
    std::error_code error;
    if (fs::exists(path, error))
        return refused("\"" + path + "\" exists already; a new book needs a new name.");
    const auto key = deviceKey(keyPath);
    if (!key)
        return tl::unexpected(key.error());
    const std::string draft = path + ".making";
    removeBook(draft);  // left behind by a power cut
    auto store = book::Store::open(draft, book::OpenMode::Create, *key);
    if (!store) {
        removeBook(draft);
        return tl::unexpected(store.error());
    }
    return NewBook(path, draft, std::move(*store));
}

NewBook::~NewBook()
{
    if (!m_store)
        return;
    m_store.reset();
    removeBook(m_draft);
}

Result<void> NewBook::finish()
{
    m_store.reset();  // closes it, so that no write-ahead log stays under the draft's name
    std::error_code error;
    if (fs::exists(m_path, error)) {
        removeBook(m_draft);
        return refused("\"" + m_path + "\" exists by now; the new book was not put in its place.");
    }
    fs::rename(m_draft, m_path, error);
    if (!error)
        return {};
    removeBook(m_draft);
    return unavailable("\"" + m_path + "\" cannot be written: " + error.message() + ".");
}

Result<std::string> personCalled(const book::Store& store, const std::string& name)
{
    const auto people = book::StateQuery(store).people();
    if (!people)
        return tl::unexpected(people.error());
    if (name.empty() && people->size() == 1)
        return people->front().id;
    std::string known;
    for (const auto& person : *people) {
        if (person.name == name)
            return person.id;
        known += (known.empty() ? "\"" : ", \"") + person.name + "\"";
    }
    if (people->empty())
        return refused("Nobody is in the book, so nobody can seal.");
    return refused((name.empty() ? std::string("Several people are in the book; name one with --by: ")
                                 : "Nobody in the book is called \"" + name + "\"; there are: ") + known + ".");
}

Now now()
{
    using namespace std::chrono;
    const auto instant = system_clock::now();
    const std::time_t seconds = system_clock::to_time_t(instant);
    std::tm utc{};
    std::tm local{};
    gmtime_r(&seconds, &utc);
    localtime_r(&seconds, &local);
    const auto milliseconds = duration_cast<std::chrono::milliseconds>(instant.time_since_epoch()).count() % 1000;
    char text[80];
    std::snprintf(text, sizeof text, "%04d-%02d-%02dT%02d:%02d:%02d.%03dZ", utc.tm_year + 1900, utc.tm_mon + 1, utc.tm_mday,
                  utc.tm_hour, utc.tm_min, utc.tm_sec, static_cast<int>(milliseconds));
    return {text, static_cast<int>(local.tm_gmtoff / 60)};
}

}  // namespace groundcount::command
