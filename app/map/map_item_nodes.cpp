#include "map/map_item.h"

#include <QQuickWindow>
#include <QSGImageNode>
#include <QSGTexture>

#include <array>
#include <cmath>
#include <memory>
#include <vector>

namespace groundcount::map {
namespace {

/// The map's part of the scene graph, bottom to top: paper, overlay, symbols, brackets, own place, furniture. Image nodes only.
class MapNode : public QSGNode {
public:
    explicit MapNode(QQuickWindow* window, QSGTexture* atlas) : m_window(window), m_atlas(atlas)
    {
        for (QSGImageNode*& node : paper)
            node = append(this);
        overlay = append(this);
        symbols = new QSGNode;
        appendChildNode(symbols);
        brackets = append(this);
        own = append(this);
        bar = append(this);
        north = append(this);
    }

    QSGImageNode* append(QSGNode* parent)
    {
        QSGImageNode* node = m_window->createImageNode();
        node->setTexture(m_atlas.get());
        // All lie pixel on pixel but an overlay while the map is zoomed, until it is painted again; smoothing that costs a processor that
        // draws half of a frame, and is not seen in the moment.
        node->setFiltering(QSGTexture::Nearest);
        node->setRect(QRectF());
        node->setFlag(QSGNode::OwnedByParent);
        parent->appendChildNode(node);
        return node;
    }

    void setAtlas(QSGTexture* atlas)
    {
        for (QSGImageNode* node : pool)
            node->setTexture(atlas);
        for (QSGImageNode* node : paper)
            node->setTexture(atlas);
        brackets->setTexture(atlas);
        for (QSGImageNode* node : {overlay, own, bar, north}) {
            if (node->texture() == m_atlas.get())
                node->setTexture(atlas);
        }
        m_atlas.reset(atlas);
    }

    /// The next node of the pool, made if there is none.
    QSGImageNode* next()
    {
        if (used == pool.size())
            pool.push_back(append(symbols));
        return pool[used++];
    }

    void setPicture(QSGImageNode* node, const QImage& image)
    {
        QSGTexture* texture = m_window->createTextureFromImage(image);
        // An owning node deletes its texture on change; the shared atlas must not go with it.
        node->setOwnsTexture(node->texture() != m_atlas.get());
        node->setTexture(texture);
        node->setOwnsTexture(true);
        node->setSourceRect(QRectF(QPointF(0, 0), image.size()));
    }

    std::array<QSGImageNode*, 4> paper;
    QSGImageNode* overlay;
    QSGNode* symbols;
    QSGImageNode* brackets;
    QSGImageNode* own;
    QSGImageNode* bar;
    QSGImageNode* north;
    std::vector<QSGImageNode*> pool;
    std::size_t used = 0;

private:
    QQuickWindow* m_window;
    std::unique_ptr<QSGTexture> m_atlas;
};

/// To whole device pixels: atlas members are then copied, not resampled, by every renderer.
QPointF snapped(QPointF at, double ratio)
{
    return {std::round(at.x() * ratio) / ratio, std::round(at.y() * ratio) / ratio};
}

void place(QSGImageNode* node, const QRectF& source, QPointF topLeft, QSizeF size, double ratio)
{
    node->setSourceRect(source);
    node->setRect(QRectF(snapped(topLeft, ratio), size));
}

/// What of the window is not covered: above, below, left and right of it, each perhaps empty.
std::array<QRectF, 4> besides(const QRectF& window, const QRectF& covered)
{
    const QRectF in = covered & window;
    if (in.isEmpty())
        return {window, {}, {}, {}};
    return {QRectF(window.topLeft(), QPointF(window.right(), in.top())), QRectF(QPointF(window.left(), in.bottom()), window.bottomRight()),
            QRectF(QPointF(window.left(), in.top()), in.bottomLeft()), QRectF(in.topRight(), QPointF(window.right(), in.bottom()))};
}

}  // namespace

QSGNode* MapItem::updatePaintNode(QSGNode* old, UpdatePaintNodeData*)
{
    if (m_atlas.image().isNull() || width() <= 0 || height() <= 0) {
        delete old;
        m_overlayFresh = m_furnitureFresh = true;
        return nullptr;
    }
    auto* node = static_cast<MapNode*>(old);
    if (!node) {
        node = new MapNode(window(), window()->createTextureFromImage(m_atlas.image()));
        m_overlayFresh = m_furnitureFresh = true;
    } else if (m_atlasFresh) {
        node->setAtlas(window()->createTextureFromImage(m_atlas.image()));
    }
    m_atlasFresh = false;
    const double px = m_atlas.ratio();

    QRectF covered;
    if (!m_overlay.isNull()) {
        if (m_overlayFresh)
            node->setPicture(node->overlay, m_overlay);
        m_overlayFresh = false;
        covered = m_view.placeOf(m_overlayWindow);
        const bool isScaled = m_overlayWindow.pxPerUnit != m_view.pxPerUnit;
        if (!isScaled)
            covered = QRectF(snapped(covered.topLeft(), px), m_overlay.deviceIndependentSize());
        node->overlay->setRect(covered);
    }
    // Painted only where it shows: each layer over the whole window costs as much as all symbols.
    const auto bare = besides(QRectF(QPointF(0, 0), size()), covered);
    for (std::size_t i = 0; i < bare.size(); ++i) {
        node->paper[i]->setSourceRect(m_atlas.paper());
        node->paper[i]->setRect(bare[i]);
    }

    node->used = 0;
    for (const PlacedSymbol& symbol : m_symbols) {
        const auto put = [&](const QRectF& source, QPointF centre) {
            const QSizeF sizePx = m_atlas.onScreen(source);
            place(node->next(), source, centre - QPointF(sizePx.width() / 2, sizePx.height() / 2), sizePx, px);
        };
        if (symbol.point >= 0) {
            put(m_atlas.state(m_scene->points[static_cast<std::size_t>(symbol.point)].state), symbol.at);
            continue;
        }
        put(m_atlas.cluster(symbol.failures), symbol.at);
        const std::vector<QRectF> glyphs = m_atlas.figure(symbol.count);
        double wide = 0;
        for (const QRectF& glyph : glyphs)
            wide += glyph.width() / px;
        double x = symbol.at.x() - wide / 2;
        for (const QRectF& glyph : glyphs) {
            put(glyph, QPointF(x + glyph.width() / px / 2, symbol.at.y()));
            x += glyph.width() / px;
        }
    }
    for (std::size_t i = node->used; i < node->pool.size(); ++i) {
        if (!node->pool[i]->rect().isEmpty())
            node->pool[i]->setRect(QRectF());
    }
    m_nodesInUse = static_cast<int>(node->used);

    if (m_chosenPoint >= 0 && onLift(m_scene->points[static_cast<std::size_t>(m_chosenPoint)].lift, m_lift)) {
        const MapPoint& point = m_scene->points[static_cast<std::size_t>(m_chosenPoint)];
        const QSizeF sizePx = m_atlas.onScreen(m_atlas.brackets());
        place(node->brackets, m_atlas.brackets(),
              m_view.toScreen(point.east, point.north) - QPointF(sizePx.width() / 2, sizePx.height() / 2), sizePx, px);
    } else {
        node->brackets->setRect(QRectF());
    }

    const PlacedImage own = paintOwn({m_ownEast, m_ownNorth, m_ownAccuracy, m_ownHeading, m_ownLabel}, m_view, metresPerUnit(), m_atlasLook,
                                     ground(), px);
    if (own.image.isNull()) {
        node->own->setRect(QRectF());
    } else {
        node->setPicture(node->own, own.image);
        node->own->setRect(QRectF(snapped(own.rect.topLeft(), px), QSizeF(own.image.size()) / px));
    }
    if (m_furnitureFresh) {
        node->setPicture(node->bar, m_bar.image);
        node->bar->setRect(m_bar.rect);
        node->setPicture(node->north, m_north.image);
        node->north->setRect(m_north.rect);
        m_furnitureFresh = false;
    }
    return node;
}

}  // namespace groundcount::map
