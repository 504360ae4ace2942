#include "gis/crs.h"
#include "gis/crs_search.h"

#include <cstdio>

using namespace groundcount::gis;

/// What coordinate systems say in a program whose PROJ is missing (late_formats_test).
int main()
{
    std::puts(Crs::selfTest().error().what.c_str());
    std::puts(Crs::fromEpsg(26997).error().what.c_str());
    const auto found = findCrs("Missouri", 5);
    std::puts(found ? "Systems are found." : found.error().what.c_str());
    return 0;
}
