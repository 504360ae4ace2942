#include "book/read_view.h"

#include "book/database.h"

#include <tuple>

namespace groundcount::book {

Result<ReadView> ReadView::begin(const Store& store)
{
    if (auto begun = store.database().exec("BEGIN"); !begun)
        return tl::unexpected(begun.error());
    ReadView view(store);
    // The moment is that of the first read, not of BEGIN.
    if (auto first = store.database().ask("SELECT count(*) FROM sqlite_schema"); !first)
        return tl::unexpected(first.error());
    return view;
}

ReadView::~ReadView()
{
    if (m_store)
        std::ignore = m_store->database().exec("ROLLBACK");
}

}  // namespace groundcount::book
