#include "gis/layer_columns.h"

#include "method/site/station.h"

#include <utility>

namespace groundcount::gis {
namespace {

std::string endingOf(const book::JobRow& job, Ending ending)
{
    const bool metric = job.gridUnit == "m";
    switch (ending) {
    case Ending::None:
        return "";
    case Ending::Density:
        return job.densityUnit == "lb/ft3" ? "_lb_ft3" : "_kg_m3";
    case Ending::Length:
        return metric ? "_m" : "_ft";
    case Ending::Surface:
        return metric ? "_m2" : "_ft2";
    }
    return "";
}

std::string unitOf(const std::string& name, const book::JobRow& job)
{
    if (name.find("station_ft") != std::string::npos)
        return job.gridUnit;
    if (name == "percent_compaction")
        return "%";
    for (const auto& [ending, unit] : {std::pair{"_lb_ft3", "lb/ft³"}, {"_kg_m3", "kg/m³"}, {"_ft2", "ft²"}, {"_m2", "m²"}, {"_pct", "%"}, {"_ft", "ft"},
                                       {"_in", "in."}, {"_m", "m"}, {"_deg", "°"}})
        if (name.ends_with(ending))
            return unit;
    return "";
}

template <class... Word>
std::vector<std::string> spelled(Word... words)
{
    return {std::string(word(words))...};
}

}  // namespace

Result<void> checkUnits(const book::JobRow& job)
{
    if (job.densityUnit != "lb/ft3" && job.densityUnit != "kg/m3")
        return refused("The density unit of the job must be lb/ft3 or kg/m3; it is \"" + job.densityUnit + "\".");
    return {};
}

ClosedList closedList(Words words)
{
    using enum book::TestState;
    using enum book::TestPurpose;
    switch (words) {
    case Words::Any:
        return {};
    case Words::TestStates:
        return {"test_state", spelled(Open, Waiting, Pass, Fail, InformationOnly, Void)};
    case Words::Purposes:
        return {"test_purpose", spelled(Random, Directed, Retest)};
    case Words::SiteStates:
        return {"site_state", {"owed", "tested"}};
    case Words::GroundStates:
        return {"ground_state", {"pass", "fail", "untested"}};
    case Words::ObstacleKinds:
        return {"obstacle_kind", {"wall", "structure", "pipe", "vehicle", "gauge"}};
    case Words::WaterWindows:
        return {"water_window", {"none", "points", "percent of optimum"}};
    }
    return {};
}

LayerField fieldOf(const book::JobRow& job, const char* name, const char* title, const char* what, FieldForm form, Ending ending, Words words)
{
    LayerField field;
    field.name = name + endingOf(job, ending);
    field.title = title;
    field.what = what;
    field.unit = unitOf(field.name, job);
    field.form = form;
    field.list = closedList(words);
    return field;
}

FieldValue stationOrNull(const std::optional<double>& station, const ExportOptions& options)
{
    if (!station || !(std::abs(*station) < 1e8))
        return {};
    return method::stationText(*station, options.perStation, options.stationPlaces);
}

}  // namespace groundcount::gis
