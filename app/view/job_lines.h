#pragma once

#include "book/state.h"
#include "method/error.h"
#include "method/site/alignment.h"

#include <QString>
#include <optional>
#include <string>
#include <vector>

namespace groundcount::view {

struct JobLine {
    std::string id;
    QString name;
    method::Alignment line;  ///< in the unit of the job's grid
};

/// Where a place stands along one of the lines.
struct LineFoot {
    const JobLine* line;
    double stationFt = 0, offsetRightFt = 0;
};

/// The lines of a job that stations count along: its main line, ramps, side roads.
class JobLines {
public:
    void clear() { m_lines.clear(); }
    void add(JobLine line) { m_lines.push_back(std::move(line)); }
    const std::vector<JobLine>& all() const { return m_lines; }
    bool isEmpty() const { return m_lines.empty(); }
    /// The line with this id; without an id the job's only one. nullptr when there is none, or none is named among several.
    const JobLine* named(const std::string& id) const;
    /// The line that the stations of a lot count along.
    const JobLine* of(const book::LotRow& lot) const { return named(lot.alignment); }
    /// The foot with the least offset over all lines. @error Refused: no line at all, or the place lies beside the ends of every one
    Result<LineFoot> nearest(double north, double east) const;
    static Result<LineFoot> footOn(const JobLine& line, double north, double east);
    /// "53+38, 14 Rt", with the line's name before it where the job has several.
    QString words(const LineFoot& foot) const;

private:
    std::vector<JobLine> m_lines;
};

}  // namespace groundcount::view
