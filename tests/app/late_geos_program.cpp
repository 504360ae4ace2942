#include "gis/coverage.h"

#include <cstdio>

using namespace groundcount;

/// What a lift's coverage says in a program whose GEOS is missing (late_formats_test).
int main()
{
    const method::PlanArea square{{{0, 0}, {0, 100}, {100, 100}, {100, 0}}, {}};
    const gis::CoverageSite sites[] = {{"1", {50, 50}, gis::SiteAnswer::Pass}};
    const auto coverage = gis::coverageOf(square, sites, 1, Length::feet(1));
    std::puts(coverage ? "There is a coverage." : coverage.error().what.c_str());
    return 0;
}
