// Longer than 250 lines: one item of the scene graph with its properties.
#include "map/map_item.h"

#include <QGuiApplication>
#include <QQuickWindow>
#include <QStyleHints>

#include <algorithm>
#include <cmath>
#include <utility>

namespace groundcount::map {
namespace {

constexpr double kMarginPx = 128;     // painted round the screen, so that a pan shows map at once
constexpr double kMostScaled = 1.25;  // a zoom of so much shows the picture scaled until the finger rests
constexpr double kDenseRatio = 2;     // device pixels a pixel
constexpr int kSettleMs = 80;         // a view within both is painted anew when the finger rests this long
constexpr double kClusterCellPx = 64;
constexpr std::size_t kMostPoints = 600;   // beyond it the software renderer's dirty regions grow faster than the nodes
constexpr std::size_t kMostClusters = 120; // each takes up to five nodes: disc and four figures
constexpr double kLargestImage = 4096;     // texture side that every GL ES 3 device takes

}  // namespace

MapItem::MapItem(QQuickItem* parent) : QQuickItem(parent), m_holdInterval(QGuiApplication::styleHints()->mousePressAndHoldInterval())
{
    setFlag(ItemHasContents);
    setClip(true);
    setAcceptedMouseButtons(Qt::LeftButton);
    setAcceptTouchEvents(true);
    setActiveFocusOnTab(true);
    m_scene = std::make_shared<const MapScene>();
    rebuildIndex();
    connect(&m_worker, &OverlayWorker::painted, this, &MapItem::takeOverlay);
    connect(this, &MapItem::lookChanged, this, &MapItem::redrawAll);
    connect(this, &MapItem::furnitureChanged, this, &MapItem::redrawAll);
    connect(this, &MapItem::ownChanged, this, &QQuickItem::update);
    connect(this, &MapItem::pickRadiusChanged, this, [this] { m_pickRadius = std::max(m_pickRadius, 1.0); });
}

MapItem::~MapItem() = default;

void MapItem::setSource(MapSource* source)
{
    if (m_source == source)
        return;
    if (m_source)
        m_source->disconnect(this);
    m_source = source;
    if (m_source) {
        connect(m_source, &MapSource::changed, this, [this] { setScene(m_source->scene()); });
        setScene(m_source->scene());
    } else {
        setScene(nullptr);
    }
    emit sourceChanged();
}

void MapItem::setScene(std::shared_ptr<const MapScene> scene)
{
    const double before = metresPerUnit();
    m_scene = scene ? std::move(scene) : std::make_shared<const MapScene>();
    m_extent = m_scene->extent();
    rebuildIndex();
    m_chosenPoint = indexOf(m_chosenId);
    // The first scene with something in it is shown whole; later ones (one test more) leave the view where it is.
    if (m_fitWanted)
        fitAll();
    else
        m_view.pxPerUnit *= metresPerUnit() / before; // the very same for the same unit, so that a fitted map is known as one
    redrawAll();
}

void MapItem::rebuildIndex()
{
    m_index = std::make_unique<PointIndex>(m_scene, m_lift);
}

int MapItem::indexOf(const QString& id) const
{
    return m_scene->names.indexOf(id);
}

void MapItem::setLift(int lift)
{
    if (m_lift == lift)
        return;
    m_lift = lift;
    rebuildIndex();
    redrawAll();
    emit liftChanged();
}

void MapItem::setChosenId(const QString& id)
{
    if (m_chosenId == id)
        return;
    m_chosenId = id;
    m_chosenPoint = indexOf(id);
    redrawAll();
    emit chosenIdChanged();
}

void MapItem::geometryChange(const QRectF& now, const QRectF& before)
{
    QQuickItem::geometryChange(now, before);
    m_view.size = now.size();
    fitAgain(); // also when a window comes to its size in steps or a phone is turned
    redrawAll();
}

void MapItem::itemChange(ItemChange change, const ItemChangeData& value)
{
    if (change == ItemDevicePixelRatioHasChanged || change == ItemSceneChange || change == ItemVisibleHasChanged)
        redrawAll();
    QQuickItem::itemChange(change, value);
}

double MapItem::ratio() const
{
    return window() ? window()->effectiveDevicePixelRatio() : 1.0;
}

Ground MapItem::ground() const
{
    return m_scene->ground ? Ground::Imagery : Ground::Drawn;
}

MapLook MapItem::look() const
{
    MapLook look;
    if (ground() == Ground::Drawn) {
        look.symbols = {m_ink, m_paper, m_pass, m_fail};
        look.ink2 = m_ink2;
        look.hair = m_hair;
    }
    look.strokeScale = std::clamp(m_strokeScale, 0.5, 3.0);
    look.bodyWeight = std::clamp(m_bodyWeight, 100, 900);
    look.strongWeight = std::clamp(m_strongWeight, 100, 900);
    look.decidingWeight = std::clamp(m_decidingWeight, 100, 900);
    return look;
}

void MapItem::redrawAll()
{
    m_furnitureStale = true;
    markStale();
}

void MapItem::viewMoved()
{
    markStale();
    emit viewChanged();
}

void MapItem::markStale()
{
    m_overlayStale = true;
    m_isZooming = m_isZooming || m_seenScale != m_view.pxPerUnit;
    m_seenScale = m_view.pxPerUnit;
    const double scaled = m_view.pxPerUnit / m_overlayWindow.pxPerUnit;
    const bool covered = !m_overlay.isNull() && scaled < kMostScaled && scaled > 1 / kMostScaled && !m_furnitureStale
        && m_view.placeOf(m_overlayWindow).contains(QRectF(QPointF(0, 0), m_view.size));
    if (covered)
        m_settleTimer.start(kSettleMs, this);
    else
        m_settleTimer.stop();
    if (m_wasSettled) {
        m_wasSettled = false;
        emit settledChanged();
    }
    // Symbols move with every step; the overlay is painted anew only when it must be.
    polish();
}

bool MapItem::isSettled() const
{
    return !m_overlayStale && m_worker.isIdle();
}

void MapItem::updatePolish()
{
    if (!window() || width() <= 0 || height() <= 0)
        return;
    m_view.size = size();
    const MapLook now = look();
    if (m_atlas.image().isNull() || m_atlas.ratio() != ratio() || !(m_atlasLook == now) || m_atlasGround != ground()
        || m_furnitureStale) {
        m_atlas = SymbolAtlas(now, ground(), std::clamp(m_symbolSize, 16.0, 36.0), ratio());
        m_atlasLook = now;
        m_atlasGround = ground();
        m_atlasFresh = true;
    }
    // Symbols whose middle lies just off the screen still show their edge.
    const MapWindow reach = m_view.widened(m_symbolSize);
    m_symbols = m_index->query(reach, kClusterCellPx, kMostPoints, kMostClusters);
    for (PlacedSymbol& symbol : m_symbols)
        symbol.at -= QPointF(m_symbolSize, m_symbolSize);
    updateFurniture();
    if (m_overlayStale && !m_settleTimer.isActive())
        requestOverlay();
    update();
}

void MapItem::updateFurniture()
{
    if (!m_furnitureStale && m_barScale == m_view.pxPerUnit)
        return;
    const MapLook now = look();
    const ScaleBar bar = scaleBarFor(m_view.pxPerUnit, std::min(120.0, width() * 0.35));
    m_bar = paintScaleBar(bar, m_scene->unitName, now, ground(), QPointF(width(), height()) - m_scaleBarInset, ratio());
    m_bar.rect.moveLeft(std::max(m_bar.rect.left(), m_northInset.x()));
    m_north = paintNorthArrow(now, ground(), m_northInset, ratio());
    m_barScale = m_view.pxPerUnit;
    m_furnitureStale = false;
    m_furnitureFresh = true;
}

void MapItem::requestOverlay()
{
    const double largest = std::max(width(), height()) * ratio();
    const double margin = std::clamp((kLargestImage - largest) / 2 / ratio(), 0.0, kMarginPx);
    // While the finger zooms, half the detail of a dense screen is enough, and a quarter of the pixels; it rests, and the whole is painted.
    const bool isDraft = m_isZooming && !m_overlay.isNull() && ratio() >= kDenseRatio;
    m_isZooming = false;
    OverlayJob job;
    job.scene = m_scene;
    job.window = m_view.widened(margin);
    job.inner = QRectF(QPointF(margin, margin), m_view.size);
    job.devicePixelRatio = isDraft ? ratio() / 2 : ratio();
    job.lift = m_lift;
    job.chosenPoint = m_chosenPoint;
    job.look = look();
    job.symbolPx = m_symbolSize;
    const bool clustered = std::any_of(m_symbols.begin(), m_symbols.end(), [](const PlacedSymbol& s) { return s.point < 0; });
    job.symbols = clustered ? m_symbols : m_index->query(job.window, kClusterCellPx, 4 * kMostPoints, kMostClusters);
    if (clustered) {
        for (PlacedSymbol& symbol : job.symbols)
            symbol.at += QPointF(margin, margin);
    }
    job.keepClear = {m_bar.rect.translated(margin, margin), m_north.rect.translated(margin, margin)};
    for (const QVariant& box : std::as_const(m_keepClear))
        job.keepClear.push_back(box.toRectF().translated(margin, margin));
    m_overlayStale = isDraft;
    if (isDraft)
        m_settleTimer.start(kSettleMs, this);
    m_worker.request(std::move(job));
}

void MapItem::takeOverlay(const QImage& image, const MapWindow& window)
{
    m_overlay = image;
    m_overlayWindow = window;
    m_overlayFresh = true;
    update();
    if (isSettled() && !m_wasSettled) {
        m_wasSettled = true;
        emit settledChanged();
    }
}

}  // namespace groundcount::map
