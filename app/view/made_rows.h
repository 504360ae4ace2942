#pragma once

#include "view/row_list.h"

#include <functional>

namespace groundcount::view {

/// A list of rows that may be long: the rows of a short one are kept and compared, so that it stays where it was scrolled to; those of a long one are
/// formatted when they come into view.
class MadeRows : public RowList {
public:
    using RowList::RowList;
    void show(std::size_t count, std::function<Row(std::size_t)> make);
    int rowCount(const QModelIndex& parent = {}) const override;
    QVariant data(const QModelIndex& index, int role) const override;

private:
    std::function<Row(std::size_t)> m_make;  ///< of a long list
    std::size_t m_count = 0;
    mutable RowList m_seen;       ///< the row that was asked for last: its roles come one after the other
    mutable int m_seenRow = -1;
};

}  // namespace groundcount::view
