#include "gis/alignment_reader.h"
#include "gis/lot_ground.h"
#include "view/map_content.h"
#include "view/site_file_sheet.h"

#include <algorithm>

namespace groundcount::view {
namespace {

constexpr std::size_t kMostDrawn = 20'000;  // a preview, not a map; the seal takes fewer

}  // namespace

/// Lays the file into the job's grid once for each set of answers, and draws it.
void SiteFileSheet::place()
{
    const QString wanted = isThere() ? path() + '|' + typed("crs") + '|' + typed("units") : QString();
    const bool asked = (m_asksSystem && !has("crs")) || (m_asksUnit && m_unit < 0 && isThere() && m_reading.file()->format == "DXF");
    if (!isThere() || asked) {
        m_placed.clear();
        m_placedFor.clear();
        m_isPlaced = false;
    } else if (wanted != m_placedFor) {
        m_placedFor = wanted;
        m_placed.clear();
        const auto& file = *m_reading.file();
        Result<std::vector<gis::SiteFeature>> placed = std::vector<gis::SiteFeature>();
        if (file.format != "LandXML")
            placed = gis::placedInJob(file, m_session->job(), answers());
        else if (const auto lines = gis::alignmentBodies(file, m_session->job(), answers(), {}); !lines)
            placed = tl::unexpected(lines.error());
        m_isPlaced = placed.has_value();
        m_refusal = placed ? QString() : QString::fromStdString(placed.error().what);
        if (placed)
            m_placed = std::move(*placed);
    }
    m_preview.setScene(m_isPlaced ? scene() : std::make_shared<map::MapScene>());
}

std::shared_ptr<const map::MapScene> SiteFileSheet::scene() const
{
    // The job's line and lots stand behind the file, so that a wrong system or unit is seen at once.
    auto scene = mapContent(*m_session, map::kEveryLift);
    scene->points.clear();
    scene->rings.clear();
    const map::MapVertex origin = sceneOrigin(*m_session);
    const auto run = [&](const std::vector<method::PlanPoint>& corners) {
        map::MapRun out;
        for (const auto& p : corners)
            out.push_back({p.eastFt - origin.east, p.northFt - origin.north});
        return out;
    };
    for (const auto& layer : m_fileLayers)
        if (layer.isAlignment)
            if (const auto line = gis::alignmentFrom(m_reading.file()->alignments[layer.alignmentIndex]))
                scene->lines.push_back({map::LineStyle::Alignment, run(line->polyline(gis::kEdgeSagitta.metres() / m_session->metresPerGridUnit()))});
    std::size_t drawn = 0;
    for (const auto& feature : m_placed) {
        if (++drawn > kMostDrawn)
            break;
        const auto layer = std::find_if(m_fileLayers.begin(), m_fileLayers.end(), [&](const auto& l) { return l.form == feature.form && l.name == feature.layer; });
        const Kind kind = layer == m_fileLayers.end() ? Kind::LeaveOut : kindOf(*layer);
        const QString name = QString::fromStdString(feature.name);
        if (feature.form == gis::SiteForm::Point) {
            scene->obstacles.push_back({map::ObstacleKind::Structure, run(feature.rings.front()), name, {}});
        } else if (feature.form == gis::SiteForm::Line) {
            scene->lines.push_back({kind == Kind::Alignment ? map::LineStyle::Alignment : kind == Kind::LeaveOut ? map::LineStyle::Limit : map::LineStyle::Edge,
                                    run(feature.rings.front())});
        } else if (kind == Kind::LeaveOut || kind == Kind::Lot) {
            map::MapArea area{kind == Kind::Lot ? map::AreaStyle::ChosenLot : map::AreaStyle::Sublot, {}, kind == Kind::Lot ? name : QString(), map::kEveryLift};
            for (const auto& ring : feature.rings)
                area.rings.push_back(run(ring));
            scene->areas.push_back(std::move(area));
        } else {
            scene->obstacles.push_back({map::ObstacleKind::Structure, run(feature.rings.front()), name, {}});
        }
    }
    return scene;
}

}  // namespace groundcount::view
