#include "view/proctor_plot.h"

#include "method/soil/in_place.h"
#include "method/soil/shape_curve.h"
#include "view/figure_text.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace groundcount::view {
namespace {

constexpr int kCurveSteps = 48;  // smooth at 600 px

QString tr(const char* text)
{
    return QCoreApplication::translate("groundcount::view", text);
}

struct Axis {
    double low = 0, high = 1, step = 1;
    double at(double value) const { return (value - low) / (high - low); }
};

/// An axis of round figures round `low` to `high`, at most six parts.
Axis axisOf(double low, double high)
{
    const double raw = std::max(high - low, 1e-6) / 5;
    const double power = std::pow(10, std::floor(std::log10(raw)));
    double step = 10 * power;
    for (const double factor : {1.0, 2.0, 5.0})
        if (factor * power >= raw) {
            step = factor * power;
            break;
        }
    return {std::floor(low / step) * step, std::ceil(high / step) * step, step};
}

void label(const Axis& axis, QStringList& labels, QList<qreal>& at)
{
    for (double v = axis.low; v <= axis.high + axis.step / 2; v += axis.step) {
        labels << figureText(v, axis.step < 1 ? 1 : 0);
        at << axis.at(v);
    }
}

}  // namespace

ProctorPlot plotOf(const ProctorDrawing& d)
{
    ProctorPlot plot;
    std::vector<double> w, rho;
    for (const auto& point : d.points) {
        w.push_back(point.content.percent());
        rho.push_back(method::inUnit(point.dry, d.unit));
    }
    if (d.peak) {
        w.push_back(d.peak->optimum.percent());
        rho.push_back(method::inUnit(d.peak->maximum, d.unit));
    }
    if (w.empty())
        return plot;
    const double maximum = d.peak ? method::inUnit(d.peak->maximum, d.unit) : 0;
    if (d.peak && d.leastPercent)
        rho.push_back(maximum * *d.leastPercent / 100);
    for (const auto& test : d.tests) {
        w.push_back(test.content);
        rho.push_back(test.dry);
    }
    const auto [wLow, wHigh] = std::minmax_element(w.begin(), w.end());
    const auto [rLow, rHigh] = std::minmax_element(rho.begin(), rho.end());
    const double rRoom = std::max(0.15 * (*rHigh - *rLow), *rHigh * 0.01);
    const Axis x = axisOf(std::max(0.0, *wLow - 1), *wHigh + 1);
    const Axis y = axisOf(*rLow - rRoom, *rHigh + rRoom);
    label(x, plot.xLabels, plot.xAt);
    label(y, plot.yLabels, plot.yAt);
    const auto place = [&](double content, double dry) { return QPointF(x.at(content), y.at(dry)); };
    for (const auto& point : d.points)
        plot.points << place(point.content.percent(), method::inUnit(point.dry, d.unit));
    if (const auto curve = method::ShapeCurve::through(d.points)) {
        const auto [first, last] = std::minmax_element(d.points.begin(), d.points.end(), [](const auto& a, const auto& b) { return a.content < b.content; });
        for (int i = 0; i <= kCurveSteps; ++i) {
            const double content = std::min(last->content.percent(), first->content.percent() + (last->content.percent() - first->content.percent()) * i / kCurveSteps);
            if (const auto dry = curve->at(WaterContent::percent(content)))
                plot.curve << place(content, method::inUnit(*dry, d.unit));
        }
    }
    if (d.solidsGravity) {
        for (int i = 0; i <= kCurveSteps; ++i) {
            const double content = x.low + (x.high - x.low) * i / kCurveSteps;
            if (const auto dry = method::dryAtSaturation(*d.solidsGravity, d.water, WaterContent::percent(content), 100))
                plot.zeroAirVoids << place(content, method::inUnit(*dry, d.unit));
        }
        plot.voidsText = tr("Zero air voids");
        plot.voidsText2 = tr("gravity %1").arg(figureText(*d.solidsGravity, 2));
    }
    if (d.peak) {
        plot.peak = place(d.peak->optimum.percent(), maximum);
        if (d.leastPercent && d.windowLowPoints && d.windowHighPoints) {
            plot.hasWindow = true;
            plot.windowLeft = x.at(d.peak->optimum.percent() + *d.windowLowPoints);
            plot.windowRight = x.at(d.peak->optimum.percent() + *d.windowHighPoints);
            plot.windowFoot = y.at(maximum * *d.leastPercent / 100);
            plot.windowLeftText = signedText(*d.windowLowPoints, 0);
            plot.windowRightText = signedText(*d.windowHighPoints, 0);
            plot.windowFootText = figureText(*d.leastPercent, 0) + " %";
        }
    }
    for (const auto& test : d.tests) {
        plot.tests << place(test.content, test.dry);
        plot.testMarks << test.mark;
    }
    plot.yTitle = tr("Dry density, %1").arg(d.unit == method::DensityUnit::KgPerM3 ? QStringLiteral("kg/m³") : QStringLiteral("lb/ft³"));
    plot.xTitle = tr("Moisture, % of dry mass");
    plot.spoken = tr("%1 points, peak %2 at %3 %").arg(d.points.size()).arg(d.peak ? figureText(maximum, 1) : tr("none"), d.peak ? figureText(d.peak->optimum.percent(), 1) : QString());
    return plot;
}

}  // namespace groundcount::view
