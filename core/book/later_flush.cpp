#include "book/later_flush.h"

#include "book/carrier_mark.h"
#include "book/database.h"

#include <tuple>

namespace groundcount::book {

Result<LaterFlush> LaterFlush::begin(const Store& store)
{
    if (auto later = store.database().exec("PRAGMA synchronous=NORMAL"); !later)
        return tl::unexpected(later.error());
    return LaterFlush(store);
}

LaterFlush::~LaterFlush()
{
    if (m_store)
        std::ignore = m_store->database().exec("PRAGMA synchronous=FULL");
}

Result<void> LaterFlush::end()
{
    const Store* const store = std::exchange(m_store, nullptr);
    if (auto now = store->database().exec("PRAGMA synchronous=FULL"); !now)
        return now;
    if (store->isReadOnly())
        return {};
    return setCarrierMark(*store, "", "flushed", "");  // a commit flushes the log, and with it every one before
}

}  // namespace groundcount::book
