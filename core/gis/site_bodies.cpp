#include "gis/site_bodies.h"

#include "gis/crs_change.h"
#include "gis/job_crs.h"
#include "gis/plane_shapes.h"
#include "method/quantity.h"
#include "method/sentence.h"
#include "method/site/heading.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace groundcount::gis {
namespace {

using method::PlanPoint;

constexpr std::size_t kMostCorners = 2000;

std::string decimal(double value)
{
    char text[64];
    std::snprintf(text, sizeof text, "%.4f", value);
    return text;
}

std::string ending(const book::JobRow& job)
{
    return job.gridUnit == "m" ? "_m" : job.gridUnit == "ft" ? "_ft" : "_usft";
}

book::Body corner(const PlanPoint& p, const book::JobRow& job)
{
    return {{"grid_north" + ending(job), decimal(p.northFt)}, {"grid_east" + ending(job), decimal(p.eastFt)}};
}

double metresOf(const std::string& unit)
{
    return unit == "m" ? 1.0 : unit == "ft" ? kMetrePerFoot : unit == "ftUS" ? kMetrePerSurveyFoot : 0.0;
}

std::string nameOf(const SiteFeature& feature, std::size_t index)
{
    return feature.name.empty() ? feature.layer + " " + std::to_string(index + 1) : feature.name;
}

/// The file's own system, or the answered one.
Result<Crs> systemOf(const SiteFile& file, const SiteAnswers& answers)
{
    if (file.crsWkt.empty()) {
        if (!answers.epsg)
            return refused("The " + file.format + " file does not say its coordinate system; name it by its EPSG code.");
        return Crs::fromEpsg(*answers.epsg);
    }
    auto own = Crs::fromWkt(file.crsWkt);
    if (!own || !answers.epsg)
        return own;
    const auto answered = Crs::fromEpsg(*answers.epsg);
    if (!answered)
        return answered;
    if (!own->isSameAs(*answered))
        return refused("The file says that it lies in " + own->name() + "; the answer says " + answered->name() + ".");
    return own;
}

}  // namespace

Result<std::vector<SiteFeature>> placedInJob(const SiteFile& file, const book::JobRow& job, const SiteAnswers& answers)
{
    const auto target = jobCrs(job);
    const auto source = systemOf(file, answers);
    if (!target || !source)
        return tl::unexpected(target ? source.error() : target.error());
    if (!answers.unit.empty() && metresOf(answers.unit) == 0)
        return refused("The unit of the coordinates must be ft, ftUS or m; it is \"" + answers.unit + "\".");
    if (file.format == "DXF" && answers.unit.empty())
        return refused("A drawing does not say the unit of its coordinates; answer ft (international), ftUS (US survey) or m.");
    double scale = 1;
    if (!answers.unit.empty()) {
        if (!source->isProjected())
            return refused("Coordinates of " + source->name() + " are degrees; no unit of length can be answered.");
        scale = metresOf(answers.unit) / source->metresPerUnit();
        // A file that names its system also names its unit; the two feet differ by 2e-6.
        if (!file.crsWkt.empty() && std::abs(scale - 1) > 1e-7)
            return refused("The file's own system " + source->name() + " counts in the " + source->unitName() + "; the answer says " + answers.unit + ".");
    }
    std::optional<CrsChange> change;
    if (!source->isSameAs(*target)) {
        auto way = CrsChange::between(*source, *target);
        if (!way)
            return tl::unexpected(way.error());
        change = std::move(*way);
    }
    std::vector<SiteFeature> placed;
    for (const SiteFeature& feature : file.features) {
        if (!answers.layer.empty() && feature.layer != answers.layer)
            continue;
        placed.push_back(feature);
        for (auto& ring : placed.back().rings)
            for (PlanPoint& p : ring) {
                const GridPoint scaled{p.northFt * scale, p.eastFt * scale};
                const auto there = change ? (*change)(scaled) : scaled;
                if (!there)
                    return refused("The place " + shownNumber(p.northFt) + ", " + shownNumber(p.eastFt) + " of the file cannot be laid into " + target->name() + ".");
                p = {there->north, there->east};
            }
    }
    if (placed.empty())
        return refused("The file has nothing in the layer \"" + answers.layer + "\".");
    return placed;
}

Result<std::vector<book::Body>> obstacleBodies(const std::vector<SiteFeature>& features, const book::JobRow& job, const std::string& kind,
                                               const std::string& fileName)
{
    std::vector<book::Body> bodies;
    for (std::size_t i = 0; i < features.size(); ++i) {
        const auto& path = features[i].rings.front();
        if (path.size() > kMostCorners)
            return refused("An obstacle may have at most " + std::to_string(kMostCorners) + " corners; " + nameOf(features[i], i) + " has " + std::to_string(path.size()) + ".");
        PlanPoint low = path.front(), high = path.front();
        for (const PlanPoint& p : path) {
            low = {std::min(low.northFt, p.northFt), std::min(low.eastFt, p.eastFt)};
            high = {std::max(high.northFt, p.northFt), std::max(high.eastFt, p.eastFt)};
        }
        const PlanPoint middle{(low.northFt + high.northFt) / 2, (low.eastFt + high.eastFt) / 2};
        book::Body body = corner(middle, job);
        body["name"] = nameOf(features[i], i);
        body["obstacle_kind"] = kind;
        if (!fileName.empty())
            body["from_file"] = fileName;
        if (path.size() > 1) {
            double reach = 0;
            for (const PlanPoint& p : path) {
                reach = std::max(reach, std::hypot(p.northFt - middle.northFt, p.eastFt - middle.eastFt));
                body["path"].push_back(corner(p, job));
            }
            // Rounded up, so that it holds every corner.
            body["radius_ft"] = decimal(Length::metres(reach * job.metresPerGridUnit).feet() + 0.001);
            if (features[i].form == SiteForm::Area)
                body["closed"] = true;
        }
        bodies.push_back(std::move(body));
    }
    return bodies;
}

Result<std::vector<book::Body>> lotBodies(const std::vector<SiteFeature>& features, const book::JobRow& job, const LotAnswers& answers)
{
    if (answers.testsPerLift < 1)
        return refused("A lot needs at least 1 test per lift; " + std::to_string(answers.testsPerLift) + " is answered.");
    std::vector<book::Body> bodies;
    for (std::size_t i = 0; i < features.size(); ++i) {
        const SiteFeature& feature = features[i];
        const std::string name = nameOf(feature, i);
        if (feature.form != SiteForm::Area)
            return refused("A lot must be an area; " + name + " is a " + (feature.form == SiteForm::Line ? "line." : "point."));
        const method::PlanArea area{feature.rings.front(), {feature.rings.begin() + 1, feature.rings.end()}};
        const PlaneShapes shapes(area.ring.front());
        if (const std::string fault = shapes.fault(shapes.polygon(area).get()); !fault.empty())
            return refused("The rings of " + name + " must not cross; GEOS says \"" + fault + "\".");
        book::Body body{{"name", name}, {"material", answers.material}, {"proctor", answers.proctor}, {"tests_per_lift", answers.testsPerLift}};
        if (!answers.minimumPct.empty())
            body["minimum_pct"] = answers.minimumPct;
        std::size_t corners = 0;
        for (std::size_t r = 0; r < feature.rings.size(); ++r)
            for (const PlanPoint& p : feature.rings[r]) {
                book::Body one = corner(p, job);
                one["ring"] = r + 1;
                body["area"].push_back(std::move(one));
                ++corners;
            }
        if (corners > kMostCorners)
            return refused("A lot may have at most " + std::to_string(kMostCorners) + " corners; " + name + " has " + std::to_string(corners) + ".");
        bodies.push_back(std::move(body));
    }
    return bodies;
}

Result<book::Body> straightAlignment(const book::JobRow& job, const std::string& name, const std::string& beginStation, PlanPoint begin, PlanPoint end)
{
    const auto grid = [&](double gridUnits) { return Length::metres(gridUnits * job.metresPerGridUnit); };
    const auto heading = method::headingOf({grid(end.northFt - begin.northFt), grid(end.eastFt - begin.eastFt)});
    if (!heading)
        return tl::unexpected(heading.error());
    if (heading->distance.feet() < 1)
        return refused("The begin and the end of the line " + name + " must lie at least 1 ft apart; they lie " + decimal(heading->distance.feet()) + " ft apart.");
    char degrees[32];
    std::snprintf(degrees, sizeof degrees, "%.9f", heading->bearingDeg);
    return book::Body{{"name", name}, {"unit", job.gridUnit}, {"begin_station", beginStation}, {"begin_north", decimal(begin.northFt)},
                      {"begin_east", decimal(begin.eastFt)}, {"begin_azimuth_deg", degrees},
                      {"elements", {{{"kind", "line"}, {"length", decimal(heading->distance.metres() / job.metresPerGridUnit)}}}}};
}

Result<std::vector<book::Body>> alignmentBodies(const SiteFile& file, const book::JobRow& job, const SiteAnswers& answers, const std::string& beginStation)
{
    std::vector<book::Body> bodies;
    if (file.format == "LandXML") {
        const std::string own = "EPSG:" + std::to_string(job.epsg);
        const std::string says = !file.crsName.empty() ? file.crsName : answers.epsg ? "EPSG:" + std::to_string(*answers.epsg) : "";
        if (says.empty())
            return refused("The LandXML file does not say its coordinate system; name it by its EPSG code.");
        if (says != own)
            return refused("An alignment must lie in the job's own system, " + own + "; the file's is " + says + ".");
        if (file.unit != job.gridUnit)
            return refused("An alignment must count in the unit of the job's grid, " + job.gridUnit + "; the file counts in " + file.unit + ".");
        for (const auto& text : file.alignments)
            bodies.push_back(nlohmann::json::parse(text, nullptr, false));
        return bodies;
    }
    const auto features = placedInJob(file, job, answers);
    if (!features)
        return tl::unexpected(features.error());
    if (beginStation.empty())
        return refused("The " + file.format + " file does not say where stations begin; answer the station of the line's first corner.");
    for (std::size_t i = 0; i < features->size(); ++i) {
        const auto& line = (*features)[i];
        if (line.form != SiteForm::Line || line.rings.front().size() != 2)
            return refused("An alignment out of a " + file.format + " file must be a straight line of two corners, since its curves are not in the file; "
                           + nameOf(line, i) + " has " + std::to_string(line.rings.front().size()) + ". LandXML carries curves.");
        const PlanPoint a = line.rings.front()[0], b = line.rings.front()[1];
        auto body = straightAlignment(job, nameOf(line, i), beginStation, a, b);
        if (!body)
            return tl::unexpected(body.error());
        bodies.push_back(std::move(*body));
    }
    return bodies;
}

}  // namespace groundcount::gis
