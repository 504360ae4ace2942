#include "book/carrier_mark.h"

#include "book/database.h"

namespace groundcount::book {

Result<std::string> carrierMark(const Store& store, const std::string& carrier, const std::string& name)
{
    const auto there = store.database().ask("SELECT 1 FROM sqlite_schema WHERE name = 'carrier_mark'");
    if (!there || there->empty())
        return there;
    auto query = store.database().use("SELECT value FROM carrier_mark WHERE carrier = ? AND name = ?");
    if (!query)
        return tl::unexpected(query.error());
    const auto row = query->bind(1, carrier).bind(2, name).step();
    if (!row)
        return tl::unexpected(row.error());
    return *row ? query->text(0) : std::string();
}

Result<void> setCarrierMark(const Store& store, const std::string& carrier, const std::string& name, const std::string& value)
{
    const std::pair<std::string, std::string> mark{name, value};
    return setCarrierMarks(store, carrier, {&mark, 1});
}

Result<void> setCarrierMarks(const Store& store, const std::string& carrier, std::span<const std::pair<std::string, std::string>> marks)
{
    if (store.isReadOnly())
        return refused("The field book " + store.path() + " is open for reading only.");
    Database& db = store.database();
    auto transaction = Transaction::begin(db);
    if (!transaction)
        return tl::unexpected(transaction.error());
    if (auto made = db.exec("CREATE TABLE IF NOT EXISTS carrier_mark(carrier TEXT NOT NULL, name TEXT NOT NULL, value TEXT NOT NULL,"
                            " PRIMARY KEY(carrier, name)) STRICT"); !made)
        return made;
    for (const auto& [name, value] : marks) {
        auto put = db.use("INSERT INTO carrier_mark VALUES(?,?,?) ON CONFLICT(carrier, name) DO UPDATE SET value = excluded.value");
        if (!put)
            return tl::unexpected(put.error());
        if (const auto done = put->bind(1, carrier).bind(2, name).bind(3, value).step(); !done)
            return tl::unexpected(done.error());
    }
    return transaction->commit();
}

}  // namespace groundcount::book
