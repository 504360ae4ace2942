// Coverage of one lift from text on standard input, its figures as JSON: the other side of reference_shapely.py.
// "unit METRES", "required N", then "ring" or "hole" lines "COUNT n e n e ...", then "site NORTH EAST" lines.
#include "gis/coverage.h"

#include <cstdio>
#include <iostream>
#include <string>

using namespace groundcount;

namespace {

std::vector<method::PlanPoint> corners()
{
    std::size_t count = 0;
    std::cin >> count;
    std::vector<method::PlanPoint> ring(count);
    for (auto& p : ring)
        std::cin >> p.northFt >> p.eastFt;
    return ring;
}

}  // namespace

int main()
{
    method::PlanArea ground;
    std::vector<gis::CoverageSite> sites;
    double unit = 0;
    int required = 0;
    for (std::string word; std::cin >> word;) {
        if (word == "unit")
            std::cin >> unit;
        else if (word == "required")
            std::cin >> required;
        else if (word == "ring")
            ground.ring = corners();
        else if (word == "hole")
            ground.holes.push_back(corners());
        else if (word == "site") {
            gis::CoverageSite site{std::to_string(sites.size()), {}, sites.size() % 3 ? gis::SiteAnswer::Pass : gis::SiteAnswer::Fail};
            std::cin >> site.point.northFt >> site.point.eastFt;
            sites.push_back(site);
        }
    }
    const auto c = gis::coverageOf(ground, sites, required, Length::metres(unit));
    if (!c) {
        std::fprintf(stderr, "%s\n", c.error().what.c_str());
        return 1;
    }
    const auto circle = [](const gis::GroundCircle& g) { std::printf("[%.9f, %.9f, %.9f]", g.centre.northFt, g.centre.eastFt, g.radius.metres()); };
    std::printf("{\"ground_m2\": %.12g, \"share_m2\": %.12g, \"passed_m2\": %.12g, \"failed_m2\": %.12g, \"untested_m2\": %.12g, \"patch\": ",
                c->ground.squareMetres(), c->share.squareMetres(), c->passed.squareMetres(), c->failed.squareMetres(), c->untested.squareMetres());
    circle(c->patch);
    std::printf(", \"farthest\": ");
    circle(c->farthest);
    std::printf(", \"outside\": [");
    for (std::size_t i = 0; i < c->outside.size(); ++i)
        std::printf("%s%zu", i ? ", " : "", c->outside[i]);
    std::printf("], \"cells\": [");
    for (std::size_t i = 0; i < c->cells.size(); ++i) {
        std::printf("%s{\"sites\": [", i ? ", " : "");
        for (std::size_t k = 0; k < c->cells[i].sites.size(); ++k)
            std::printf("%s%zu", k ? ", " : "", c->cells[i].sites[k]);
        std::printf("], \"m2\": %.12g, \"beyond_m2\": %.12g}", c->cells[i].surface.squareMetres(), c->cells[i].beyondShare.squareMetres());
    }
    std::printf("]}\n");
    return 0;
}
