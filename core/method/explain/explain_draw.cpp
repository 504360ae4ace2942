#include "method/explain/explain_draw.h"

#include <algorithm>

namespace groundcount::method {
namespace {

void addSeed(ExplainSteps& s, std::uint64_t seed, const std::string& generator)
{
    s.add("Random numbers", "upper 53 bits of " + generator + " / 2^53", "seed " + std::to_string(seed), "repeatable from the seed", "DESIGN");
}

void addCount(ExplainSteps& s, std::size_t sites, std::size_t rejected)
{
    s.add("Drawn", "sites kept, draws rejected; none is moved", std::to_string(sites) + ", " + std::to_string(rejected), std::to_string(sites) + " sites", "COMPUTED");
}

std::string pair(double first, double second) { return "r1 " + shown(first, 6) + ", r2 " + shown(second, 6); }

void addSite(ExplainSteps& s, const std::string& name, const StripSite& site)
{
    const std::string place = shown(site.place.stationFt, 1) + " ft, " + shown(site.place.fromLeftFt, 1) + " ft from the left";
    s.add(name + " in sublot " + std::to_string(site.sublot), "begin of the sublot + r1" + std::string(kTimes) + "its length; r2 across",
          pair(site.along, site.across), site.why.empty() ? place : place + ": " + site.why, "LA-S605, SK-STP107");
}

std::string plane(PlanPoint p) { return "north " + shown(p.northFt, 2) + ", east " + shown(p.eastFt, 2); }

void addSite(ExplainSteps& s, const std::string& name, const AreaSite& site)
{
    s.add(name, "south edge + r1" + std::string(kTimes) + "north extent; west edge + r2" + kTimes + "east extent", pair(site.alongNorth, site.alongEast),
          site.why.empty() ? plane(site.point) : plane(site.point) + ": " + site.why, "LA-S605, COMPUTED");
}

template <class Draw>
std::vector<ExplainStep> withSites(ExplainSteps s, const Draw& draw)
{
    for (std::size_t i = 0; i < draw.rejected.size(); ++i)
        addSite(s, "Rejected draw " + std::to_string(i + 1), draw.rejected[i]);
    for (std::size_t i = 0; i < draw.sites.size(); ++i)
        addSite(s, "Site " + std::to_string(i + 1), draw.sites[i]);
    addCount(s, draw.sites.size(), draw.rejected.size());
    return s.take();
}

}  // namespace

std::vector<ExplainStep> explainStripDraw(const StripPlan& plan, const StripDraw& draw)
{
    ExplainSteps s(DensityUnit::LbPerFt3);
    addSeed(s, draw.seed, draw.generator);
    s.add("Sublots", "length / number", shown(plan.strip.lengthFt, 1) + " / " + std::to_string(plan.sublots),
          shown(plan.strip.lengthFt / plan.sublots, 1) + " ft, " + std::to_string(plan.sitesPerSublot) + " in each", "D3665-SCOPE");
    return withSites(std::move(s), draw);
}

std::vector<ExplainStep> explainAreaDraw(const PlanArea& area, double edge, const AreaDraw& draw)
{
    ExplainSteps s(DensityUnit::LbPerFt3);
    addSeed(s, draw.seed, draw.generator);
    const auto [south, north] = std::minmax_element(area.ring.begin(), area.ring.end(), [](PlanPoint a, PlanPoint b) { return a.northFt < b.northFt; });
    const auto [west, east] = std::minmax_element(area.ring.begin(), area.ring.end(), [](PlanPoint a, PlanPoint b) { return a.eastFt < b.eastFt; });
    s.add("Extent", "of the outer ring", plane({south->northFt, west->eastFt}) + " to " + plane({north->northFt, east->eastFt}),
          shown(north->northFt - south->northFt, 2) + kTimes + shown(east->eastFt - west->eastFt, 2), "LA-S605");
    s.add("Rejected", "outside the area, or nearer to its edge than", shown(edge, 2), "drawn again", "D3665-SCOPE, COMPUTED");
    return withSites(std::move(s), draw);
}

std::vector<ExplainStep> explainWeightedMean(std::span<const double> results, std::span<const double> weights, double mean)
{
    ExplainSteps s(DensityUnit::LbPerFt3);
    double sum = 0, size = 0;
    for (std::size_t i = 0; i < results.size(); ++i) {
        sum += weights[i] * results[i];
        size += weights[i];
    }
    s.add("Results, with the size that each stands for", "result; size", figures(results) + "; " + figures(weights), figure(size) + " in all", "D3665-SCOPE");
    s.add("Mean", "sum of size" + std::string(kTimes) + "result / sum of sizes", figure(sum) + " / " + figure(size), shown(mean, 2), "D3665-SCOPE");
    return s.take();
}

std::vector<ExplainStep> explainRetestNumber(const std::string& parent, int retestNo, const std::string& number)
{
    ExplainSteps s(DensityUnit::LbPerFt3);
    s.add("Number of the retest", "number of the failed test and a letter, A for the first; after Z two letters", parent + ", retest " + std::to_string(retestNo), number,
          "SJC-CQA, DESIGN");
    return s.take();
}

}  // namespace groundcount::method
