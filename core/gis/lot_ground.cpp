// Longer than 250 lines: strips, areas and what is left out of them: one idea of a lot's ground.
#include "gis/lot_ground.h"

#include "gis/alignment_reader.h"
#include "gis/plane_shapes.h"
#include "method/rules/json_object.h"
#include "method/sentence.h"

#include <algorithm>
#include <cmath>
#include <set>

namespace groundcount::gis {
namespace {

using method::JsonObject;
using method::PlanArea;
using method::PlanPoint;

constexpr int kDeepest = 24;  // halvings; 2^24 chords a strip are never needed

/// One edge of a strip, cut in two until every chord is near enough.
class Edge {
public:
    Edge(const method::Alignment& line, double offset, double sagitta) : m_line(line), m_offset(offset), m_sagitta(sagitta) {}

    Result<std::vector<PlanPoint>> between(double from, double to)
    {
        // Eight pieces to begin with: an S of two equal curves has its middle on the chord.
        constexpr int kPieces = 8;
        const auto first = at(from);
        if (!first)
            return tl::unexpected(first.error());
        m_points = {*first};
        for (int i = 0; i < kPieces; ++i)
            if (const auto done = cut(from + (to - from) * i / kPieces, from + (to - from) * (i + 1) / kPieces, 0); !done)
                return tl::unexpected(done.error());
        return std::move(m_points);
    }

private:
    Result<PlanPoint> at(double along) const
    {
        const auto station = m_line.stations().stationAt(along);
        if (!station)
            return tl::unexpected(station.error());
        return m_line.at(*station, m_offset);
    }

    Result<void> cut(double from, double to, int depth)
    {
        const auto end = at(to);
        if (!end)
            return tl::unexpected(end.error());
        const PlanPoint a = m_points.back();
        double stray = 0;
        for (const double part : {0.25, 0.5, 0.75}) {
            const auto p = at(from + (to - from) * part);
            if (!p)
                return tl::unexpected(p.error());
            stray = std::max(stray, fromChord(*p, a, *end));
        }
        if (stray <= m_sagitta || depth == kDeepest) {
            m_points.push_back(*end);
            return {};
        }
        const double middle = from + (to - from) / 2;
        if (const auto left = cut(from, middle, depth + 1); !left)
            return left;
        return cut(middle, to, depth + 1);
    }

    static double fromChord(PlanPoint p, PlanPoint a, PlanPoint b)
    {
        const double n = b.northFt - a.northFt;
        const double e = b.eastFt - a.eastFt;
        const double square = n * n + e * e;
        const double t = square > 0 ? std::clamp(((p.northFt - a.northFt) * n + (p.eastFt - a.eastFt) * e) / square, 0.0, 1.0) : 0;
        return std::hypot(p.northFt - a.northFt - t * n, p.eastFt - a.eastFt - t * e);
    }

    const method::Alignment& m_line;
    double m_offset;
    double m_sagitta;
    std::vector<PlanPoint> m_points;
};

double gridValue(JsonObject& corner, const std::string& stem, const book::JobRow& job)
{
    for (const auto& [ending, word, metres] : {std::tuple{"_ft", "ft", kMetrePerFoot}, {"_usft", "ftUS", kMetrePerSurveyFoot}, {"_m", "m", 1.0}}) {
        const std::string key = stem + ending;
        if (corner.has(key.c_str()))
            return job.gridUnit == word ? corner.number(key.c_str()) : corner.number(key.c_str()) * metres / job.metresPerGridUnit;
    }
    corner.refuse("must have " + stem + "_ft, " + stem + "_usft or " + stem + "_m");
    return 0;
}

/// The corners of a sealed list, by ring number from 1.
Result<std::vector<std::vector<PlanPoint>>> sealedRings(const std::string& list, const book::JobRow& job, const std::string& name)
{
    const auto json = nlohmann::json::parse("{\"corners\":" + list + "}", nullptr, false);
    std::optional<Error> error;
    JsonObject body(json, name, error);
    std::vector<std::vector<PlanPoint>> rings;
    for (JsonObject& corner : body.list("corners")) {
        const double ring = corner.numberOr("ring", 1);
        if (!(ring >= 1 && ring <= 10'000 && ring == std::floor(ring)))
            corner.refuse("must have a ring from 1 to 10 000");
        if (error)
            break;
        if (rings.size() < static_cast<std::size_t>(ring))
            rings.resize(static_cast<std::size_t>(ring));
        PlanPoint point;
        point.northFt = gridValue(corner, "grid_north", job);
        point.eastFt = gridValue(corner, "grid_east", job);
        rings[static_cast<std::size_t>(ring) - 1].push_back(point);
    }
    if (error)
        return tl::unexpected(*error);
    return rings;
}

Result<const book::AlignmentRow*> lineOf(const book::LotRow& lot, std::span<const book::AlignmentRow> lines)
{
    for (const auto& line : lines)
        if (!lot.alignment.empty() ? line.id == lot.alignment : lines.size() == 1)
            return &line;
    return refused("Lot " + lot.name + " lies between stations and needs the alignment they count along; the job has " + std::to_string(lines.size())
                   + (lot.alignment.empty() ? "." : " and none of them is the one that the lot names."));
}

}  // namespace

Result<PlanArea> stripGround(const method::Alignment& line, double beginStation, double endStation, Length leftOffset, Length rightOffset, Length gridUnit)
{
    const double left = leftOffset.metres() / gridUnit.metres();
    const double right = rightOffset.metres() / gridUnit.metres();
    if (!(left >= 0 && right >= 0 && left + right > 0 && std::isfinite(left + right)))
        return refused("The offsets of a strip must be at least 0 and not both 0; they are " + shownNumber(left) + " left and " + shownNumber(right) + " right.");
    double along[2];
    for (const auto& [station, into] : {std::pair{beginStation, &along[0]}, {endStation, &along[1]}}) {
        const auto place = line.stations().only(station);
        if (!place)
            return tl::unexpected(place.error());
        const auto distance = line.stations().alongFt(*place);
        if (!distance)
            return tl::unexpected(distance.error());
        *into = *distance;
    }
    if (!(along[0] < along[1]))
        return refused("A strip must begin before it ends; it begins at station " + shownNumber(beginStation) + " and ends at " + shownNumber(endStation) + ".");
    const double sagitta = kEdgeSagitta.metres() / gridUnit.metres();
    auto ring = Edge(line, -left, sagitta).between(along[0], along[1]);
    if (!ring)
        return tl::unexpected(ring.error());
    const auto back = Edge(line, right, sagitta).between(along[0], along[1]);
    if (!back)
        return tl::unexpected(back.error());
    ring->insert(ring->end(), back->rbegin(), back->rend());
    PlanArea area{std::move(*ring), {}};
    const PlaneShapes shapes(area.ring.front());
    if (!shapes.fault(shapes.polygon(area).get()).empty())
        return refused("The strip from station " + shownNumber(beginStation) + " to " + shownNumber(endStation)
                       + " must not fold over itself; an offset of " + shownNumber(left) + " left or " + shownNumber(right) + " right is wider than a curve allows.");
    return area;
}

Result<method::Alignment> lotLine(const book::LotRow& lot, const book::JobRow& job, std::span<const book::AlignmentRow> lines)
{
    const auto row = lineOf(lot, lines);
    if (!row)
        return tl::unexpected(row.error());
    std::optional<Error> error;
    const auto json = nlohmann::json::parse((*row)->body, nullptr, false);
    const std::string unit = JsonObject(json, "Alignment " + (*row)->name, error).textOr("unit", "");
    if (unit != job.gridUnit)
        return refused("Alignment " + (*row)->name + " must be in the unit of the job's grid, " + job.gridUnit + "; it is in " + unit + ".");
    return alignmentFrom((*row)->body);
}

Result<PlanArea> lotGround(const book::LotRow& lot, const book::JobRow& job, std::span<const book::AlignmentRow> lines)
{
    if (!lot.area.empty()) {
        auto rings = sealedRings(lot.area, job, "The area of lot " + lot.name);
        if (!rings)
            return tl::unexpected(rings.error());
        if (rings->empty())
            return refused("The area of lot " + lot.name + " must have corners; it has none.");
        PlanArea area{std::move(rings->front()), {}};
        area.holes.assign(std::make_move_iterator(rings->begin() + 1), std::make_move_iterator(rings->end()));
        return area;
    }
    if (!lot.beginStationFt || !lot.endStationFt || (!lot.leftFt && !lot.rightFt))
        return refused("The ground of lot " + lot.name + " is not sealed: it needs corners, or two stations and the offsets to its edges.");
    const auto line = lotLine(lot, job, lines);
    if (!line)
        return tl::unexpected(line.error());
    auto strip = stripGround(*line, *lot.beginStationFt, *lot.endStationFt, Length::feet(lot.leftFt.value_or(0)), Length::feet(lot.rightFt.value_or(0)),
                             Length::metres(job.metresPerGridUnit));
    if (!strip)
        return refused("Lot " + lot.name + ": " + strip.error().what);
    return strip;
}

Result<std::vector<PlanPoint>> obstaclePath(const book::ObstacleRow& obstacle, const book::JobRow& job)
{
    if (obstacle.path.empty())
        return std::vector<PlanPoint>{{obstacle.north, obstacle.east}};
    auto rings = sealedRings(obstacle.path, job, "The path of " + obstacle.name);
    if (!rings)
        return tl::unexpected(rings.error());
    if (rings->size() != 1)
        return refused("The path of " + obstacle.name + " must be one line; it has " + std::to_string(rings->size()) + " parts.");
    return std::move(rings->front());
}

std::vector<CoverageSite> speakingTests(std::span<const book::TestRow> tests, const std::string& lift)
{
    const auto speaks = [&](const book::TestRow& test) {
        return test.lift == lift && (test.state == book::TestState::Pass || test.state == book::TestState::Fail);
    };
    std::set<std::string> retested;
    std::vector<const book::TestRow*> chosen;
    for (const auto& test : tests)
        if (speaks(test)) {
            chosen.push_back(&test);
            if (!test.retestOf.empty())
                retested.insert(test.retestOf);
        }
    std::erase_if(chosen, [&](const auto* t) { return retested.contains(t->id) || (t->north == 0 && t->east == 0); });
    std::stable_sort(chosen.begin(), chosen.end(),
                     [](const auto* a, const auto* b) { return std::tie(a->verdictAt, a->id) < std::tie(b->verdictAt, b->id); });
    std::vector<CoverageSite> sites;
    sites.reserve(chosen.size());
    for (const auto* test : chosen)
        sites.push_back({test->number, {test->north, test->east}, test->state == book::TestState::Pass ? SiteAnswer::Pass : SiteAnswer::Fail});
    return sites;
}

Result<Coverage> liftCoverage(const book::LotRow& lot, const book::LiftRow& lift, const book::JobRow& job, std::span<const book::AlignmentRow> lines,
                              std::span<const book::TestRow> tests)
{
    if (lot.testsPerLift < 1)
        return refused("Lot " + lot.name + " needs a number of tests per lift for its coverage; " + std::to_string(lot.testsPerLift) + " is sealed.");
    const auto ground = lotGround(lot, job, lines);
    if (!ground)
        return tl::unexpected(ground.error());
    return coverageOf(*ground, speakingTests(tests, lift.id), lot.testsPerLift, Length::metres(job.metresPerGridUnit));
}

}  // namespace groundcount::gis
