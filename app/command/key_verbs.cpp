#include "book/device_keys.h"
#include "command/open_book.h"
#include "command/verb.h"

#include <memory>

namespace groundcount::command {
namespace {

std::string lineText(const book::KeyInUse& key)
{
    std::string text = key.device + "  " + std::to_string(key.records) + " records, number " + std::to_string(key.last) +
                       " the last, sealed " + key.firstAt.substr(0, 10) + " to " + key.lastAt.substr(0, 10);
    if (key.retirement)
        text += "\n    " + book::sentence(*key.retirement);
    return text;
}

/// The device of the book whose key begins with `start`.
Result<book::KeyInUse> keyCalled(const book::Store& store, const std::string& start)
{
    const auto keys = book::keysInUse(store);
    if (!keys)
        return tl::unexpected(keys.error());
    std::vector<book::KeyInUse> found;
    for (const auto& key : *keys)
        if (key.device.starts_with(start))
            found.push_back(key);
    if (start.size() < 8 || found.size() != 1)
        return refused("The key must be named by its first 8 to 64 hexadecimal digits, and by one key only; \"" + start + "\" names " +
                       std::to_string(start.size() < 8 ? keys->size() : found.size()) + " of " + std::to_string(keys->size()) + ".");
    return found.front();
}

struct RetireOptions {
    std::string book, device, why, by, key;
    std::int64_t last = -1;
};

Result<book::Record> retire(const RetireOptions& options)
{
    auto store = openToWrite(options.book, options.key);
    if (!store)
        return tl::unexpected(store.error());
    const auto by = personCalled(*store, options.by);
    const auto device = keyCalled(*store, options.device);
    if (!by || !device)
        return tl::unexpected(by ? device.error() : by.error());
    book::Entry entry;
    entry.kind = "retired-key";
    entry.subject = book::newSubject();
    entry.by = *by;
    const auto [at, offset] = now();
    entry.at = at;
    entry.offsetMinutes = offset;
    entry.body = {{"device", device->device}, {"last", options.last < 0 ? device->last : options.last}, {"why", options.why}};
    return store->seal(entry);
}

}  // namespace

void addKeys(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("keys", "The device keys that sealed the records of a book");
    auto path = std::make_shared<std::string>();
    verb->add_option("BOOK", *path, "Field book")->required();
    verb->callback([path, &status] {
        const auto store = openToRead(*path);
        const auto keys = store ? book::keysInUse(*store) : Result<std::vector<book::KeyInUse>>(tl::unexpected(store.error()));
        status = keys ? kDone : refuse(keys.error());
        if (!keys)
            return;
        print("Book " + store->bookId().value_or(""));
        for (const auto& key : *keys)
            print(lineText(key));
    });
}

void addRetire(CLI::App& app, int& status)
{
    auto* verb = app.add_subcommand("retire", "Retire a device's key: a lost phone, a key that may have been copied");
    auto options = std::make_shared<RetireOptions>();
    verb->add_option("BOOK", options->book, "Field book")->required();
    verb->add_option("KEY", options->device, "The key's first 8 or more digits, as the verb \"keys\" shows them")->required();
    verb->add_option("--why", options->why, "Reason, kept with the record")->required();
    verb->add_option("--last", options->last, "Last number of the key that still stands; without it the last one in this book")
        ->check(CLI::NonNegativeNumber);
    verb->add_option("--by", options->by, "Name of the person who retires it; may be left out when the book has one person");
    verb->add_option("--key", options->key, "This device's key file")->type_name("FILE");
    verb->footer("What the key sealed up to that number stays. Whatever it seals beyond is refused by merge and named by check. Void the\n"
                 "record to take it back, amend it to move the number, both with a reason.");
    verb->callback([options, &status] {
        const auto sealed = retire(*options);
        status = sealed ? kDone : refuse(sealed.error());
        if (sealed)
            print("Key " + sealed->body.at("device").get<std::string>().substr(0, 16) + " is retired after number " +
                  std::to_string(sealed->body.at("last").get<std::int64_t>()) + ".");
    });
}

}  // namespace groundcount::command
