#pragma once

#include "book/store.h"
#include "method/error.h"

#include <string>

/// What every verb on a book needs: the device's key, the book, the person and the time.
namespace groundcount::command {

/// `path`, or for an empty one ${XDG_DATA_HOME:-~/.local/share}/groundcount/device.key with its folder made.
/// @error Unavailable when there is no home folder or it cannot be written; else as DeviceKey::loadOrMake.
Result<book::DeviceKey> deviceKey(const std::string& path);

/// Opens a book to be read. A damaged one opens; its damage is printed on standard error.
Result<book::Store> openToRead(const std::string& path);

/// Opens a book to be written with the key of `keyPath` ("" = the default).
/// @error Refused for a damaged or read-only book, naming the broken record.
Result<book::Store> openToWrite(const std::string& path, const std::string& keyPath);

/// A new book under a name of its own beside `path`; `finish` gives it its name, the destructor removes it otherwise, so
/// that nothing half made is left.
class NewBook {
public:
    /// @error Refused when `path` exists; Unavailable when the disk does not do its part.
    static Result<NewBook> begin(const std::string& path, const std::string& keyPath);
    NewBook(NewBook&&) noexcept = default;
    NewBook& operator=(NewBook&&) = delete;
    NewBook(const NewBook&) = delete;
    NewBook& operator=(const NewBook&) = delete;
    ~NewBook();

    book::Store& store() { return *m_store; }
    Result<void> finish();

private:
    NewBook(std::string path, std::string draft, book::Store store);
    std::string m_path;
    std::string m_draft;  ///< "" once finished
    std::optional<book::Store> m_store;
};

/// The subject of the person who seals: the one called `name`, or the only one when `name` is empty.
/// @error Refused when there is no such person, or several and none named.
Result<std::string> personCalled(const book::Store& store, const std::string& name);

/// The machine's clock as records write it.
struct Now {
    std::string at;
    int offsetMinutes = 0;
};
Now now();

}  // namespace groundcount::command
