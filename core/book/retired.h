#pragma once

#include "book/database.h"
#include "book/device_keys.h"
#include "book/record.h"

/// Retired keys where records are sealed, taken and checked. Private to core/book.
namespace groundcount::book {

Result<RetiredKeys> retiredKeys(Database& db);

/// True when the record stands in spite of a retirement: number up to `last`, or the very record that retires its own device.
bool stands(const Record& record, const Retirement& retirement);

}  // namespace groundcount::book
