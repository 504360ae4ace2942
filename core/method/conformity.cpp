#include "method/conformity.h"

#include "method/sentence.h"

namespace groundcount::method {

Result<Conformity> conformity(Bound bound, const Decimal& limit, const Decimal& observed, ConformityMethod method,
                              int places, TieRule tie)
{
    if (places < -9 || places > 15)
        return refusedValue("Number of places of the limit", places, "", "-9 to 15");
    Conformity result;
    result.compared = method == ConformityMethod::Rounding ? observed.rounded(places, tie) : observed;
    result.isMet = bound == Bound::Minimum ? result.compared >= limit : result.compared <= limit;
    return result;
}

}  // namespace groundcount::method
