#include "view/job_lines.h"

#include "view/figure_text.h"

#include <cmath>

namespace groundcount::view {

const JobLine* JobLines::named(const std::string& id) const
{
    for (const JobLine& line : m_lines)
        if (id.empty() ? m_lines.size() == 1 : line.id == id)
            return &line;
    return nullptr;
}

Result<LineFoot> JobLines::footOn(const JobLine& line, double north, double east)
{
    return line.line.locate(north, east).map([&](const method::StationOffset& foot) {
        return LineFoot{&line, foot.station.feet, foot.offsetRightFt};
    });
}

Result<LineFoot> JobLines::nearest(double north, double east) const
{
    Result<LineFoot> best = refused("No alignment is in the book.");
    for (const JobLine& line : m_lines) {
        const auto foot = footOn(line, north, east);
        if (!foot && !best)
            best = foot;
        if (foot && (!best || std::fabs(foot->offsetRightFt) < std::fabs(best->offsetRightFt)))
            best = foot;
    }
    return best;
}

QString JobLines::words(const LineFoot& foot) const
{
    const QString place = stationOffsetText(foot.stationFt, foot.offsetRightFt);
    return m_lines.size() > 1 ? foot.line->name + QChar(' ') + place : place;
}

}  // namespace groundcount::view
