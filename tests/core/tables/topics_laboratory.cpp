#include "cells.h"
#include "topics.h"

#include "method/soil/compaction_test.h"
#include "method/soil/drying.h"
#include "method/soil/hole.h"
#include "method/soil/in_place.h"

// Weighings: compaction points, drying, holes.
namespace groundcount::tables {
namespace {

using namespace groundcount::method;

WaterContent content(const Row& row, const std::string& column) { return WaterContent::percent(row.number(column)); }

Result<Outcome> proctorPoints(const Row& row)
{
    const double unit = kgPerM3Of(row.text("density_unit"));
    const std::string& mass = row.text("mass_unit");
    const auto point = compactedPoint(siOf(row.number("gross_mass"), mass, "kg"), siOf(row.numberOr("tare_mass", 0), mass, "kg"),
                                      siOf(row.number("volume"), row.text("volume_unit"), "m3"), content(row, "w_pct"));
    if (!point)
        return errorOf(point);
    return Outcome{"ok", {{"want_wet", point->wet.kgPerM3() / unit}, {"want_dry", point->dry.kgPerM3() / unit}}, {}};
}

Result<Outcome> moldVolume(const Row& row)
{
    return moldVolumeM3(Length::inches(row.number("diameter_in")), Length::inches(row.number("height_in"))).map([](double v) {
        return Outcome{"ok", {{"want_volume_ft3", siOf(v, "m3", "ft3")}}, {}};
    });
}

Result<Outcome> compactionEnergy(const Row& row)
{
    return compactionEnergyFtLbfPerFt3(row.number("rammer_lbf"), Length::feet(row.number("drop_ft")), row.number("layers"), row.number("blows"),
                                       siOf(row.number("volume_ft3"), "ft3", "m3"))
        .map([](double energy) { return Outcome{"ok", {{"want_ft_lbf_ft3", energy}}, {}}; });
}

Result<Outcome> moisturePairs(const Row& row)
{
    const auto top = contentFromMasses(row.number("water_1_g"), row.number("dry_1_g"));
    const auto bottom = contentFromMasses(row.number("water_2_g"), row.number("dry_2_g"));
    if (!top || !bottom)
        return errorOf(top ? bottom : top);
    return meanOfTwo(*top, *bottom).map([](WaterContent w) { return Outcome{"ok", {{"want_w_pct", w.percent()}}, {}}; });
}

Result<Outcome> ovenMoisture(const Row& row)
{
    return driedSample(row.number("can"), row.number("wet_with_can"), row.number("dry_with_can")).map([](const DriedSample& s) {
        return Outcome{"ok", {{"want_w_dry_basis_pct", s.content.percent()}, {"want_w_wet_basis_pct", s.wetBasisPercent}}, {}};
    });
}

Result<Outcome> carbideMoisture(const Row& row)
{
    const std::string& size = row.text("sample");
    if (size != "full" && size != "half")
        unknownWord("sample", size);
    return carbideSample(row.number("dial_pct"), size == "half" ? CarbideSample::Half : CarbideSample::Full).map([](const DriedSample& s) {
        return Outcome{"ok", {{"want_wet_basis_pct", s.wetBasisPercent}, {"want_dry_basis_pct", s.content.percent()}}, {}};
    });
}

Result<Outcome> constantMassTopic(const Row& row)
{
    return constantMass(row.number("previous"), row.number("current"), row.number("limit_pct")).map([](const ConstantMass& m) {
        return Outcome{m.state == DryingState::Constant ? "constant" : "continue", {{"want_change_pct", m.changePercent}}, {}};
    });
}

// The units of a row are consistent with each other; its numbers stand for kg, m3 and kg/m3.
Result<Outcome> inPlaceVolume(const Row& row)
{
    const std::string& method = row.text("method");
    const double before = row.number("before");
    const double after = row.number("after");
    const double cone = row.numberOr("cone", 0);
    const auto volume = method == "sand_mass"     ? holeVolumeBySand({before, after, cone}, row.number("sand_density"))
                        : method == "sand_volume" ? holeVolumeBySandVolume(before, after, cone)
                        : method == "balloon"     ? holeVolumeByBalloon(before, after)
                                                  : (unknownWord("method", method), Result<double>(0.0));
    if (!volume)
        return errorOf(volume);
    const auto wet = wetInHole(row.number("soil_wet"), *volume);
    if (!wet)
        return errorOf(wet);
    Outcome outcome{"ok", {{"want_volume", *volume}, {"want_wet", wet->kgPerM3()}}, {}};
    if (!row.has("w_pct"))
        return outcome;
    const auto dry = dryFromContent(*wet, content(row, "w_pct"));
    if (!dry)
        return errorOf(dry);
    outcome.want["want_dry"] = dry->dry.kgPerM3();
    if (row.has("max_dry")) {
        const auto compaction = percentCompaction(dry->dry, DryDensity::kgPerM3(row.number("max_dry")));
        if (!compaction)
            return errorOf(compaction);
        outcome.want["want_pc_pct"] = compaction->percent();
    }
    return outcome;
}

Result<Outcome> over3In(const Row& row)
{
    HoleWithStones hole;
    hole.volumeM3 = row.number("hole_volume");
    hole.moistTotalKg = row.number("moist_total");
    hole.dryOversizeKg = row.number("dry_oversize");
    hole.oversizeGravity = row.number("G_oversize");
    hole.rhoW = DensityOfWater::kgPerM3(row.number("water_density"));
    hole.control = content(row, "w_control_pct");
    hole.oversize = content(row, "w_oversize_pct");
    return controlFraction(hole).map([](const ControlFraction& c) {
        return Outcome{"ok",
                       {{"want_oversize_volume", c.oversizeVolumeM3},
                        {"want_control_volume", c.volumeM3},
                        {"want_control_moist", c.moistKg},
                        {"want_control_wet", c.wet.kgPerM3()},
                        {"want_control_dry", c.dry.kgPerM3()}},
                       {}};
    });
}

Result<Outcome> wrongProctorDry(const Row& row)
{
    const auto point = compactedPoint(row.pairNumber("inputs", "moist_kg"), 0, siOf(row.pairNumber("inputs", "volume_cm3"), "cm3", "m3"),
                                      WaterContent::percent(row.pairNumber("inputs", "w_pct")));
    return point.map([&](const CompactedPoint& p) { return wrongBeside(row, p.dry.kgPerM3()); });
}

Result<Outcome> wrongDryFromWet(const Row& row)
{
    const auto volume = holeVolumeBySand({row.pairNumber("inputs", "sand_kg"), 0, 0}, row.pairNumber("inputs", "sand_g_cm3") * 1000.0);
    if (!volume)
        return errorOf(volume);
    const auto wet = wetInHole(row.pairNumber("inputs", "wet_kg"), *volume);
    if (!wet)
        return errorOf(wet);
    return dryFromContent(*wet, WaterContent::percent(row.pairNumber("inputs", "w_pct"))).map([&](const DryResult& r) {
        return wrongBeside(row, r.dry.kgPerM3() / 1000.0);
    });
}

}  // namespace

std::vector<Topic> laboratoryTopics()
{
    return {{"proctor_points", proctorPoints},
            {"mold_volume", moldVolume},
            {"compaction_energy", compactionEnergy},
            {"moisture_pairs", moisturePairs},
            {"oven_moisture", ovenMoisture},
            {"carbide_moisture", carbideMoisture},
            {"constant_mass", constantMassTopic},
            {"in_place_volume", inPlaceVolume},
            {"over_3in", over3In},
            {"published_but_wrong/proctor_dry", wrongProctorDry},
            {"published_but_wrong/dry_from_wet", wrongDryFromWet}};
}

}  // namespace groundcount::tables
