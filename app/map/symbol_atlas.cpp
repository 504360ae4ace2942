#include "map/symbol_atlas.h"

#include <QFontMetricsF>
#include <QPainter>

#include <cmath>

namespace groundcount::map {
namespace {

constexpr double kCell = 48; // logical px; the largest member is the bracket square of 40
constexpr double kClusterRadius = 18;
constexpr double kFigurePx = 15;
constexpr int kColumns = 6;
const QString kGlyphs = QStringLiteral("0123456789kM.");

}  // namespace

SymbolAtlas::SymbolAtlas(const MapLook& look, Ground ground, double symbolPx, double ratio)
    : m_image(QSize(static_cast<int>(std::ceil(kCell * kColumns * ratio)), static_cast<int>(std::ceil(kCell * 3 * ratio))),
              QImage::Format_ARGB32_Premultiplied),
      m_ratio(ratio)
{
    m_image.fill(Qt::transparent);
    QPainter painter(&m_image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.scale(ratio, ratio);

    const auto cell = [](int column, int row) { return QRectF(column * kCell, row * kCell, kCell, kCell); };
    const auto square = [](const QRectF& in, double side) {
        return QRectF(in.center() - QPointF(side / 2, side / 2), QSizeF(side, side));
    };
    const auto source = [ratio](const QRectF& box) {
        return QRectF(std::floor(box.x() * ratio), std::floor(box.y() * ratio), std::ceil(box.width() * ratio), std::ceil(box.height() * ratio));
    };
    for (int i = 0; i < kPointStateCount; ++i) {
        const QRectF box = cell(i, 0);
        paintState(painter, static_cast<PointState>(i), square(box, symbolPx), look.symbols, ground);
        m_states[static_cast<std::size_t>(i)] = source(square(box, std::ceil(symbolPx * (1 + 2 * reachBeyondBox(ground) / 24)) + 2));
    }
    const QRectF bracketCell = cell(0, 1);
    paintBrackets(painter, square(bracketCell, 42), look.symbols, ground);
    m_brackets = source(square(bracketCell, 44));

    for (int i = 0; i < 2; ++i) {
        const QRectF box = cell(1 + i, 1);
        painter.setBrush(ground == Ground::Imagery ? QColor(Qt::white) : look.symbols.paper);
        painter.setPen(QPen(look.symbols.ink, 1.8 * look.strokeScale));
        painter.drawEllipse(box.center(), kClusterRadius, kClusterRadius);
        if (i == 1)
            paintState(painter, PointState::Fail, square(box, 16).translated(14, -14), look.symbols, ground);
    }
    m_cluster = source(square(cell(1, 1), kCell));
    m_clusterFail = source(square(cell(2, 1), kCell));

    const QRectF patch = cell(3, 1);
    painter.fillRect(patch, look.symbols.paper);
    m_paper = source(square(patch, 8));

    const QFont font = mapFont(look, kFigurePx, look.strongWeight);
    const QFontMetricsF metrics(font);
    painter.setFont(font);
    painter.setPen(look.symbols.ink);
    double x = 2;
    for (qsizetype i = 0; i < kGlyphs.size(); ++i) {
        const double w = metrics.horizontalAdvance(kGlyphs[i]);
        painter.drawText(QPointF(x, 2 * kCell + 20), QString(kGlyphs[i]));
        m_glyphs[static_cast<std::size_t>(i)] = QRectF(x * ratio, 2 * kCell * ratio, w * ratio, 28 * ratio);
        x += w + 6;
    }
}

std::vector<QRectF> SymbolAtlas::figure(std::uint32_t count) const
{
    QString text = QString::number(count);
    if (count >= 1000000)
        text = QString::number(count / 1000000) + QLatin1Char('M');
    else if (count >= 10000)
        text = QString::number(count / 1000) + QLatin1Char('k');
    else if (count >= 1000)
        text = QString::number(count / 1000) + QLatin1Char('.') + QString::number(count / 100 % 10) + QLatin1Char('k');
    std::vector<QRectF> glyphs;
    for (const QChar c : std::as_const(text))
        glyphs.push_back(m_glyphs[static_cast<std::size_t>(kGlyphs.indexOf(c))]);
    return glyphs;
}

}  // namespace groundcount::map
