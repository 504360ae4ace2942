#include "map/line_clip.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <utility>

namespace groundcount::map {
namespace {

/// The part [t0, t1] of segment a-b inside the box.
std::optional<std::pair<double, double>> insidePart(QPointF a, QPointF b, const QRectF& box)
{
    double t0 = 0;
    double t1 = 1;
    const QPointF d = b - a;
    const double p[4] = {-d.x(), d.x(), -d.y(), d.y()};
    const double q[4] = {a.x() - box.left(), box.right() - a.x(), a.y() - box.top(), box.bottom() - a.y()};
    for (int i = 0; i < 4; ++i) {
        if (p[i] == 0) {
            if (q[i] < 0)
                return std::nullopt;
            continue;
        }
        const double t = q[i] / p[i];
        if (p[i] < 0)
            t0 = std::max(t0, t);
        else
            t1 = std::min(t1, t);
    }
    if (!(t0 <= t1))
        return std::nullopt;
    return std::pair(t0, t1);
}

}  // namespace

std::vector<ClippedRun> clipLine(const QPolygonF& line, const QRectF& box)
{
    std::vector<ClippedRun> runs;
    double along = 0;
    bool open = false;
    for (qsizetype i = 1; i < line.size(); ++i) {
        const QPointF a = line[i - 1];
        const QPointF d = line[i] - a;
        const double length = std::hypot(d.x(), d.y());
        const auto part = insidePart(a, line[i], box);
        if (!part) {
            open = false;
        } else {
            if (!open || part->first > 0) {
                runs.push_back({{a + part->first * d}, along + part->first * length});
            }
            runs.back().points.append(a + part->second * d);
            open = part->second >= 1;
        }
        along += length;
    }
    return runs;
}

QPolygonF clipPolygon(const QPolygonF& polygon, const QRectF& box)
{
    QPolygonF in = polygon;
    // One pass per edge: keep what lies on the inner side, add the crossing where the outline changes sides.
    for (int edge = 0; edge < 4 && !in.isEmpty(); ++edge) {
        const auto depth = [&](QPointF p) {
            switch (edge) {
            case 0: return p.x() - box.left();
            case 1: return box.right() - p.x();
            case 2: return p.y() - box.top();
            default: return box.bottom() - p.y();
            }
        };
        QPolygonF out;
        QPointF from = in.last();
        double fromDepth = depth(from);
        for (const QPointF& to : std::as_const(in)) {
            const double toDepth = depth(to);
            if ((fromDepth < 0) != (toDepth < 0))
                out.append(from + (to - from) * (fromDepth / (fromDepth - toDepth)));
            if (toDepth >= 0)
                out.append(to);
            from = to;
            fromDepth = toDepth;
        }
        in = out;
    }
    return in.size() >= 3 ? in : QPolygonF();
}

}  // namespace groundcount::map
