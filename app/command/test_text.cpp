#include "command/test_text.h"

#include "command/columns.h"
#include "method/decimal.h"
#include "method/site/station.h"

#include <cmath>

namespace groundcount::command {
namespace {

using Json = nlohmann::ordered_json;

constexpr double kPerStation = 100;  // feet in a station

std::string joined(const std::vector<std::string>& parts)
{
    std::string all;
    for (const auto& part : parts)
        all += (all.empty() ? "" : ", ") + part;
    return all;
}

std::string figure(const std::string& text, const std::string& unit)
{
    return text.empty() ? "" : text + " " + unit;
}

Json orNull(const std::string& text)
{
    return text.empty() ? Json() : Json(text);
}

Json orNull(const std::optional<double>& value)
{
    return value ? Json(*value) : Json();
}

}  // namespace

std::string placeText(const book::TestRow& test)
{
    if (!test.stationFt)
        return {};
    std::string place = method::stationText(*test.stationFt, kPerStation, 1);
    if (test.offsetFt)
        place += ", " + reportedText(std::fabs(*test.offsetFt), 1, TieRule::HalfEven) + (*test.offsetFt < 0 ? " Lt" : " Rt");
    return place;
}

std::string listed(std::span<const book::TestRow> tests)
{
    Columns columns({Align::Left, Align::Left, Align::Right, Align::Left, Align::Right, Align::Right, Align::Left, Align::Left});
    columns.add({"TEST", "LOT", "LIFT", "PLACE", "COMPACTION %", "WATER %", "STATE", "WHY"});
    for (const auto& t : tests) {
        std::string why = joined(t.reasons);
        if (!t.retestOfNumber.empty())
            why += (why.empty() ? "" : "; ") + ("retest of " + t.retestOfNumber);
        columns.add({t.number, t.lotName, std::to_string(t.liftNumber), placeText(t), t.compactionPct, t.contentPct,
                     book::word(t.state), why});
    }
    return columns.text();
}

std::string detailed(const book::TestRow& t, const book::JobRow& job)
{
    Columns columns({Align::Left, Align::Left});
    const auto add = [&](const char* what, const std::string& value) {
        if (!value.empty())
            columns.add({what, value});
    };
    add("Test", t.number);
    add("State", book::word(t.state));
    add("Why", joined(t.reasons));
    add("Waits for", t.waitingFor);
    add("Overridden", t.overrides);
    add("Retest of", t.retestOfNumber + (t.rework.empty() ? "" : ", after: " + t.rework));
    add("Lot, lift", t.lotName + ", " + std::to_string(t.liftNumber));
    add("Purpose", book::word(t.purpose));
    add("Place", placeText(t));
    if (t.north != 0 || t.east != 0)
        add("Grid", "N " + reportedText(t.north, 2, TieRule::HalfEven) + "  E " + reportedText(t.east, 2, TieRule::HalfEven) + " " +
                        job.gridUnit);
    add("Fix", t.fixKind + (t.fixes > 0 ? ", " + std::to_string(t.fixes) + " averaged" : ""));
    add("Started", t.startedAt);
    add("Verdict at", t.verdictAt);
    add("By", t.personName + (t.certificate.empty() ? "" : ", " + t.certificate));
    add("Gauge", t.gaugeName + (t.mode.empty() ? "" : ", " + t.mode + (t.depthInText.empty() ? "" : ", " + t.depthInText + " in.")));
    add("Material", t.materialName + (t.proctorName.empty() ? "" : ", " + t.proctorName));
    add("Standard counts", figure(t.densityStandard, "density") + (t.moistureStandard.empty() ? "" : ", " + t.moistureStandard + " moisture"));
    add("Counts", figure(t.densityCount, "density") + (t.moistureCount.empty() ? "" : ", " + t.moistureCount + " moisture"));
    add("Wet density", figure(t.wet, job.densityUnit));
    add("Water density", figure(t.water, job.densityUnit));
    add("Dry density", figure(t.dry, job.densityUnit));
    add("Water content", figure(t.contentPct, "%"));
    add("Maximum", figure(t.maximum, job.densityUnit) + (t.optimumPct.empty() ? "" : " at " + t.optimumPct + " %"));
    add("Coarse part", figure(t.coarsePct, "%"));
    add("Compaction", figure(t.compactionPct, "%") + (t.uncertaintyPct.empty() ? "" : ", \xC2\xB1" + t.uncertaintyPct + " (k = 2)"));
    add("Required", (t.minimumPct.empty() ? "" : "at least " + t.minimumPct + " %") + (t.maximumPct.empty() ? "" : ", at most " + t.maximumPct + " %"));
    add("Water allowed", t.windowLowPct.empty() && t.windowHighPct.empty() ? "" : t.windowLowPct + " to " + t.windowHighPct + " %");
    add("Record", t.recordHash);
    return columns.text();
}

std::string arithmeticText(std::span<const method::ExplainStep> steps)
{
    Columns columns({Align::Left, Align::Left, Align::Left, Align::Left, Align::Left});
    for (const auto& s : steps)
        columns.add({s.name, s.formula, s.numbers, s.value, s.source.empty() ? "" : "[" + s.source + "]"});
    return columns.text();
}

Json toJson(const book::TestRow& t)
{
    return {{"number", t.number}, {"id", t.id}, {"state", book::word(t.state)}, {"purpose", book::word(t.purpose)},
            {"reasons", t.reasons}, {"waiting_for", orNull(t.waitingFor)}, {"overrides", orNull(t.overrides)},
            {"retest_of", orNull(t.retestOfNumber)}, {"rework", orNull(t.rework)}, {"lot", orNull(t.lotName)}, {"lift", t.liftNumber},
            {"station_ft", orNull(t.stationFt)}, {"offset_ft", orNull(t.offsetFt)}, {"north", t.north}, {"east", t.east},
            {"latitude_deg", t.latitudeDeg}, {"longitude_deg", t.longitudeDeg}, {"started_at", orNull(t.startedAt)},
            {"verdict_at", orNull(t.verdictAt)}, {"person", orNull(t.personName)}, {"gauge", orNull(t.gaugeName)},
            {"material", orNull(t.materialName)}, {"reference_test", orNull(t.proctorName)}, {"mode", orNull(t.mode)},
            {"depth_in", orNull(t.depthInText)}, {"density_standard", orNull(t.densityStandard)},
            {"moisture_standard", orNull(t.moistureStandard)}, {"density_count", orNull(t.densityCount)},
            {"moisture_count", orNull(t.moistureCount)}, {"wet_density", orNull(t.wet)}, {"water_density", orNull(t.water)},
            {"dry_density", orNull(t.dry)}, {"water_content_pct", orNull(t.contentPct)}, {"percent_compaction", orNull(t.compactionPct)},
            {"uncertainty_pct", orNull(t.uncertaintyPct)}, {"maximum", orNull(t.maximum)}, {"optimum_pct", orNull(t.optimumPct)},
            {"coarse_pct", orNull(t.coarsePct)}, {"minimum_pct", orNull(t.minimumPct)}, {"maximum_pct", orNull(t.maximumPct)},
            {"window_low_pct", orNull(t.windowLowPct)}, {"window_high_pct", orNull(t.windowHighPct)},
            {"rule_set", orNull(t.ruleSetHash)}, {"core", orNull(t.coreVersion)}, {"record", orNull(t.recordHash)}};
}

}  // namespace groundcount::command
