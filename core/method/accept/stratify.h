#pragma once

#include "method/decimal.h"
#include "method/error.h"

namespace groundcount::method {

/// Size of one of equal sublots: total/sublots. @param total above 0 @param sublots at least 1
/// @error Refused outside the ranges, NaN. @source [FAA-ERLPM], [D3665-SCOPE]
Result<double> sublotSize(double total, int sublots);

/// Whole units (trucks, loads, blocks) in one sublot, floor(total/(sublots x unit)), exact on the decimals as typed.
/// @param total above 0 @param sublots at least 1 @param unit above 0, same unit as the total
/// @return at least 1 @error Refused outside the ranges, or when not one whole unit fits. @source [FAA-ERLPM]
Result<int> unitsPerSublot(const Decimal& total, int sublots, const Decimal& unit);

/// A random number times a quantity. @param random 0 to 1 @error Refused outside. @source [LA-S605]
Result<double> randomProduct(double quantity, double random);

/// How a random number picks a row, column or unit of n.
enum class PickRule {
    Nearest,      ///< r n rounded, half up; 0 is refused
    FloorPlusOne  ///< floor(r n) + 1, at most n
};

/// @param n number of rows, columns or units, at least 1 @param random 0 to 1
/// @return 1 to n @error Refused outside the ranges; by plain rounding also a pick of 0. @source [NETTCP-N]; floor + 1 [COMPUTED]
Result<int> randomPick(int n, double random, PickRule rule);

}  // namespace groundcount::method
