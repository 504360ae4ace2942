#pragma once

#include "map/label_place.h"

namespace groundcount::map {

inline constexpr double kWordPx = 16;

/// The words of the overlay; the order of the calls is the order in which they get their place.
class OverlayWords {
public:
    /// Both must outlive this.
    OverlayWords(const OverlayJob& job, LabelPlacer& placer) : m_job(job), m_look(job.look), m_placer(placer) {}

    /// What is chosen, then failures, then what is owed or waits, then the rest.
    void points();
    /// Names of lots: inside where they fit, else beside.
    void areas();
    void obstacles();
    void free();
    /// Stations beside the corridor.
    void stations();

private:
    QPointF at(const MapVertex& v) const { return m_job.window.toScreen(v.east, v.north); }
    QFont strong() const { return mapFont(m_look, kWordPx, m_look.strongWeight); }

    const OverlayJob& m_job;
    const MapLook& m_look;
    LabelPlacer& m_placer;
};

}  // namespace groundcount::map
