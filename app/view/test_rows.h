#pragma once

#include "book/state.h"
#include "view/row_list.h"

namespace groundcount::view {

/// The symbol of a test's state.
Mark markOf(book::TestState state);
/// "Pass", "Fail", "provisional", "Information only", "Void", "open".
QString wordOf(book::TestState state);
/// A test as a list row: number, place, lot and lift, percent compaction over the state's word.
Row testRow(const book::TestRow& test);

}  // namespace groundcount::view
