#include "map/furniture_paint.h"

#include "map/label_place.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace groundcount::map {
namespace {

PlacedImage blank(const QRectF& rect, double ratio)
{
    // Whole device pixels, so that the node draws the picture without resampling.
    const QPointF corner(std::floor(rect.left()), std::floor(rect.top()));
    const QSizeF size(std::ceil(rect.right() - corner.x()), std::ceil(rect.bottom() - corner.y()));
    PlacedImage placed{QImage((size * ratio).toSize(), QImage::Format_ARGB32_Premultiplied), QRectF(corner, size)};
    placed.image.setDevicePixelRatio(ratio);
    placed.image.fill(Qt::transparent);
    return placed;
}

QColor under(const MapLook& look, Ground ground)
{
    return ground == Ground::Imagery ? QColor(Qt::white) : look.symbols.paper;
}

QPen pen(const QColor& colour, double width)
{
    return QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin);
}

/// Furniture on a photograph stands in its own frame.
void paintFrame(QPainter& painter, QSizeF size, const MapLook& look, Ground ground)
{
    if (ground != Ground::Imagery)
        return;
    painter.setPen(pen(look.symbols.ink, 2));
    painter.setBrush(look.symbols.paper);
    painter.drawRoundedRect(QRectF(QPointF(1, 1), size - QSizeF(2, 2)), 3, 3);
}

}  // namespace

ScaleBar scaleBarFor(double pxPerUnit, double mostPx)
{
    if (!(pxPerUnit > 0) || !(mostPx > 0))
        return {};
    const double most = mostPx / pxPerUnit;
    const double power = std::pow(10.0, std::floor(std::log10(most)));
    double units = power;
    for (const double step : {2.0, 5.0, 10.0}) {
        if (step * power <= most)
            units = step * power;
    }
    return {units, units * pxPerUnit};
}

PlacedImage paintScaleBar(const ScaleBar& bar, const QString& unit, const MapLook& look, Ground ground, QPointF bottomRight, double ratio)
{
    const QFont font = mapFont(look, 14, look.bodyWeight);
    const QFontMetricsF metrics(font);
    const auto figure = [](double units) { return QString::number(units, 'g', 6); };
    const QString last = figure(bar.units);
    const QString tail = QStringLiteral(" ") + unit;
    const double pad = ground == Ground::Imagery ? 12 : 4;
    const double lead = std::max(metrics.horizontalAdvance(QStringLiteral("0")) / 2, 2.0) + pad;
    const double trail = metrics.horizontalAdvance(last) / 2 + metrics.horizontalAdvance(tail) + pad;
    const QSizeF size(lead + bar.px + trail, 38 + 2 * (pad - 4));
    PlacedImage placed = blank(QRectF(bottomRight - QPointF(size.width(), size.height()), size), ratio);
    QPainter painter(&placed.image);
    painter.setRenderHint(QPainter::Antialiasing);
    paintFrame(painter, size, look, ground);
    const double y = size.height() - pad - 8;
    const QColor ink = look.symbols.ink;
    const double s = look.strokeScale;
    const auto line = [&](const QColor& colour, double more) {
        painter.setPen(pen(colour, 2.5 * s + more));
        painter.drawLine(QPointF(lead - more / 2, y), QPointF(lead + bar.px + more / 2, y));
        for (const double part : {0.0, 0.5, 1.0}) {
            const double half = part == 0.5 ? 5 : 7;
            painter.drawLine(QPointF(lead + part * bar.px, y - half - more / 2), QPointF(lead + part * bar.px, y + half + more / 2));
        }
    };
    line(under(look, ground), 4);
    line(ink, 0);
    const auto word = [&](const QString& text, const QString& after, double x) {
        const double w = metrics.horizontalAdvance(text);
        writeHaloed(painter, text + after, font, ink, under(look, ground), QRectF(x - w / 2, y - 27, w, 16));
    };
    // Three figures only where they have room; the end of the bar always has its length.
    const QString half = figure(bar.units / 2);
    if (bar.px / 2 > metrics.horizontalAdvance(half) + metrics.horizontalAdvance(last) / 2)
        word(half, {}, lead + bar.px / 2);
    word(QStringLiteral("0"), {}, lead);
    word(last, tail, lead + bar.px);
    return placed;
}

PlacedImage paintNorthArrow(const MapLook& look, Ground ground, QPointF topLeft, double ratio)
{
    const QSizeF size = ground == Ground::Imagery ? QSizeF(48, 64) : QSizeF(28, 56);
    PlacedImage placed = blank(QRectF(topLeft, size), ratio);
    QPainter painter(&placed.image);
    painter.setRenderHint(QPainter::Antialiasing);
    paintFrame(painter, size, look, ground);
    const double x = size.width() / 2;
    const double top = (size.height() - 50) / 2 + 2;
    const auto arrow = [&](const QColor& colour, double width) {
        painter.setPen(QPen(colour, width, Qt::SolidLine, Qt::FlatCap, Qt::MiterJoin));
        painter.setBrush(Qt::NoBrush);
        painter.drawLine(QPointF(x, top + 1), QPointF(x, top + 31));
        painter.drawPolyline(QPolygonF({{x - 8, top + 10}, {x, top + 1}, {x + 8, top + 10}}));
    };
    arrow(under(look, ground), 5.5);
    arrow(look.symbols.ink, 2.2 * look.strokeScale);
    const QFont font = mapFont(look, 16, look.strongWeight);
    const double w = QFontMetricsF(font).horizontalAdvance(QStringLiteral("N"));
    writeHaloed(painter, QStringLiteral("N"), font, look.symbols.ink, under(look, ground), QRectF(x - w / 2, top + 32, w, 16));
    return placed;
}

PlacedImage paintOwn(const OwnPlace& own, const MapWindow& window, double metresPerUnit, const MapLook& look, Ground ground, double ratio)
{
    if (!std::isfinite(own.east) || !std::isfinite(own.north) || window.size.isEmpty())
        return {};
    constexpr double kSymbol = 20;
    constexpr double kReach = 20; // disc, ring and wedge
    const QPointF at = window.toScreen(own.east, own.north);
    const double radius = std::isfinite(own.accuracyMetres) && own.accuracyMetres > 0 ? own.accuracyMetres / metresPerUnit * window.pxPerUnit : 0;
    const QFont font = mapFont(look, 16, look.strongWeight);
    const double wordWidth = QFontMetricsF(font).horizontalAdvance(own.label);
    const double gap = std::clamp(radius, kReach, window.size.width() / 3) + 8;
    // On the left as a rule, where fewer station words stand; right if there is no room.
    const bool left = at.x() - gap - wordWidth > 6;
    const QRectF wordBox(left ? at.x() - gap - wordWidth : at.x() + gap, at.y() - 9, wordWidth, 18);

    const double reach = std::max(radius + 2, kReach);
    QRectF box = QRectF(at - QPointF(reach, reach), QSizeF(2 * reach, 2 * reach)).united(wordBox.adjusted(-4, -2, 4, 2));
    box = box.intersected(QRectF(QPointF(0, 0), window.size).adjusted(-kReach, -kReach, kReach, kReach));
    if (box.isEmpty())
        return {};
    PlacedImage placed = blank(box, ratio);
    QPainter painter(&placed.image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.translate(-placed.rect.topLeft());
    painter.setBrush(QColor(under(look, ground).red(), under(look, ground).green(), under(look, ground).blue(), 90));
    if (radius > 0) {
        painter.setPen(pen(under(look, ground), 4));
        painter.drawEllipse(at, radius, radius);
        painter.setBrush(Qt::NoBrush);
        painter.setPen(pen(look.symbols.ink, 1.6 * look.strokeScale));
        painter.drawEllipse(at, radius, radius);
    }
    paintOwnPlace(painter, QRectF(at - QPointF(kSymbol / 2, kSymbol / 2), QSizeF(kSymbol, kSymbol)), look.symbols, own.headingDegrees);
    if (!own.label.isEmpty())
        writeHaloed(painter, own.label, font, look.symbols.ink, under(look, ground), wordBox);
    return placed;
}

}  // namespace groundcount::map
