#pragma once

#include "map/furniture_paint.h"
#include "map/map_gesture.h"
#include "map/map_scene.h"
#include "map/overlay_worker.h"
#include "map/point_index.h"
#include "map/symbol_atlas.h"

#include <QBasicTimer>
#include <QPointer>
#include <QQuickItem>
#include <QVariantList>

#include <limits>
#include <memory>

namespace groundcount::map {

/// The map. In QML:
///     GroundMap { source: page.mapSource; lift: 7; chosenId: page.chosen; ink: Theme.ink; ...; onPicked: id => page.open(id) }
/// North is always up. The scene graph under it holds image nodes only, so that GL, Vulkan and the software renderer draw the same: ground and
/// vector overlay are painted on a worker thread, symbols come from one atlas texture, unused nodes are parked with zero size.
///
/// One finger pans, two pinch about the point between them, a double tap on free ground zooms in, a tap picks the nearest symbol within 24 px,
/// a long press reports the place. Wheel and touchpad zoom; arrow keys pan, + and - zoom, Home shows everything.
class MapItem : public QQuickItem {
    Q_OBJECT
    QML_NAMED_ELEMENT(GroundMap)

    /// What is shown; a view-model owns it.
    Q_PROPERTY(groundcount::map::MapSource* source READ source WRITE setSource NOTIFY sourceChanged)

    /// View: job units for the centre, logical px per metre of ground for the scale.
    Q_PROPERTY(double centreEast READ centreEast WRITE setCentreEast NOTIFY viewChanged)
    Q_PROPERTY(double centreNorth READ centreNorth WRITE setCentreNorth NOTIFY viewChanged)
    Q_PROPERTY(double pixelsPerMetre READ pixelsPerMetre WRITE setPixelsPerMetre NOTIFY viewChanged)
    /// Only this lift is shown; -1 shows every lift.
    Q_PROPERTY(int lift READ lift WRITE setLift NOTIFY liftChanged)
    /// The symbol in brackets; empty for none.
    Q_PROPERTY(QString chosenId READ chosenId WRITE setChosenId NOTIFY chosenIdChanged)

    /// Own position: job units, metres, degrees clockwise from grid north; NaN hides (heading NaN hides only the wedge).
    Q_PROPERTY(double ownEast MEMBER m_ownEast NOTIFY ownChanged)
    Q_PROPERTY(double ownNorth MEMBER m_ownNorth NOTIFY ownChanged)
    Q_PROPERTY(double ownAccuracyMetres MEMBER m_ownAccuracy NOTIFY ownChanged)
    Q_PROPERTY(double ownHeadingDegrees MEMBER m_ownHeading NOTIFY ownChanged)
    Q_PROPERTY(QString ownLabel MEMBER m_ownLabel NOTIFY ownChanged)

    /// Theme. On imagery the day set is used whatever is set here.
    Q_PROPERTY(QColor ink MEMBER m_ink NOTIFY lookChanged)
    Q_PROPERTY(QColor ink2 MEMBER m_ink2 NOTIFY lookChanged)
    Q_PROPERTY(QColor paper MEMBER m_paper NOTIFY lookChanged)
    Q_PROPERTY(QColor hair MEMBER m_hair NOTIFY lookChanged)
    Q_PROPERTY(QColor pass MEMBER m_pass NOTIFY lookChanged)
    Q_PROPERTY(QColor fail MEMBER m_fail NOTIFY lookChanged)
    Q_PROPERTY(double strokeScale MEMBER m_strokeScale NOTIFY lookChanged)
    Q_PROPERTY(int bodyWeight MEMBER m_bodyWeight NOTIFY lookChanged)
    Q_PROPERTY(int strongWeight MEMBER m_strongWeight NOTIFY lookChanged)
    Q_PROPERTY(int decidingWeight MEMBER m_decidingWeight NOTIFY lookChanged)
    Q_PROPERTY(double symbolSize MEMBER m_symbolSize NOTIFY lookChanged)

    /// Distance of the north arrow's top left from the item's top left, and of the scale bar's bottom right from the item's bottom right;
    /// the bar never begins left of the arrow.
    Q_PROPERTY(QPointF northInset MEMBER m_northInset NOTIFY furnitureChanged)
    Q_PROPERTY(QPointF scaleBarInset MEMBER m_scaleBarInset NOTIFY furnitureChanged)
    /// Rectangles (item px) of controls that lie over the map; no word is written under them.
    Q_PROPERTY(QVariantList keepClear MEMBER m_keepClear NOTIFY furnitureChanged)
    /// Px at the item's right and lower edge that controls take: what is shown whole is shown beside them, at most half of the item.
    Q_PROPERTY(QPointF fitInset READ fitInset WRITE setFitInset NOTIFY fitInsetChanged)
    /// Time until a press is a long press, ms.
    Q_PROPERTY(int holdInterval MEMBER m_holdInterval NOTIFY holdIntervalChanged)
    /// Logical px that a contact may wander and still be a tap, and the reach of a tap.
    Q_PROPERTY(double pickRadius MEMBER m_pickRadius NOTIFY pickRadiusChanged)
    /// True while the picture shown is the one for the present view (nothing is being painted).
    Q_PROPERTY(bool settled READ isSettled NOTIFY settledChanged)

public:
    explicit MapItem(QQuickItem* parent = nullptr);
    ~MapItem() override;

    MapSource* source() const { return m_source; }
    void setSource(MapSource* source);
    /// For C++ callers without a MapSource; replaces whatever the source shows.
    void setScene(std::shared_ptr<const MapScene> scene);

    double centreEast() const { return m_view.centreEast; }
    void setCentreEast(double east);
    double centreNorth() const { return m_view.centreNorth; }
    void setCentreNorth(double north);
    double pixelsPerMetre() const;
    void setPixelsPerMetre(double px);
    int lift() const { return m_lift; }
    void setLift(int lift);
    QString chosenId() const { return m_chosenId; }
    void setChosenId(const QString& id);
    QPointF fitInset() const { return m_fitInset; }
    void setFitInset(QPointF px);
    bool isSettled() const;
    MapWindow view() const { return m_view; }
    /// Nodes that draw something now, for tests and the benchmark.
    int nodesInUse() const { return m_nodesInUse; }

    /// Shows everything there is, with a margin.
    Q_INVOKABLE void fitAll();
    /// Centres the own position; nothing happens while it is not known. @return whether it is
    Q_INVOKABLE bool centreOnOwn();
    /// Centres the point with this id. @return whether there is one
    Q_INVOKABLE bool centreOn(const QString& id);
    Q_INVOKABLE void zoomBy(double factor);
    /// Screen place of a map place and back, px of the item and job units.
    Q_INVOKABLE QPointF toScreen(double east, double north) const { return m_view.toScreen(east, north); }

signals:
    void sourceChanged();
    void viewChanged();
    void liftChanged();
    void chosenIdChanged();
    void ownChanged();
    void lookChanged();
    void furnitureChanged();
    void fitInsetChanged();
    void holdIntervalChanged();
    void pickRadiusChanged();
    void settledChanged();
    /// A symbol (or a named obstacle) was tapped.
    void picked(const QString& id);
    /// Free ground was tapped, job units relative to the scene's origin.
    void tappedAt(double east, double north);
    /// A long press, job units relative to the scene's origin.
    void heldAt(double east, double north);
    /// The person took hold of the map: a view that follows the own position should stop.
    void movedByHand();

protected:
    QSGNode* updatePaintNode(QSGNode* old, UpdatePaintNodeData* data) override;
    void updatePolish() override;
    void geometryChange(const QRectF& now, const QRectF& before) override;
    void itemChange(ItemChange change, const ItemChangeData& value) override;
    void touchEvent(QTouchEvent* event) override;
    void touchUngrabEvent() override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseUngrabEvent() override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;
    void timerEvent(QTimerEvent* event) override;

private:
    void takeContacts(const QList<Contact>& contacts, qint64 ms);
    void tap(QPointF at);
    bool zoomIntoCluster(QPointF at);
    QString obstacleAt(QPointF at) const;
    void releaseContacts();

    void rebuildIndex();
    void viewMoved();
    void markStale();
    void redrawAll();
    void requestOverlay();
    void takeOverlay(const QImage& image, const MapWindow& window);
    void updateFurniture();
    MapLook look() const;
    Ground ground() const;
    double ratio() const;
    double metresPerUnit() const;
    /// Fits what was fitted and not moved since.
    void fitAgain();
    double leastScale() const;
    double mostScale() const;
    int indexOf(const QString& id) const;

    QPointer<MapSource> m_source;
    std::shared_ptr<const MapScene> m_scene;
    std::unique_ptr<PointIndex> m_index;
    MapExtent m_extent;
    MapWindow m_view;
    int m_lift = kEveryLift;
    QString m_chosenId;
    int m_chosenPoint = -1;
    bool m_fitWanted = true;
    MapWindow m_fitted;  ///< the view after it was last fitted

    double m_ownEast = std::numeric_limits<double>::quiet_NaN();
    double m_ownNorth = std::numeric_limits<double>::quiet_NaN();
    double m_ownAccuracy = std::numeric_limits<double>::quiet_NaN();
    double m_ownHeading = std::numeric_limits<double>::quiet_NaN();
    QString m_ownLabel;

    QColor m_ink = SymbolColours().ink;
    QColor m_ink2 = MapLook().ink2;
    QColor m_paper = SymbolColours().paper;
    QColor m_hair = MapLook().hair;
    QColor m_pass = SymbolColours().pass;
    QColor m_fail = SymbolColours().fail;
    double m_strokeScale = 1;
    int m_bodyWeight = 500;
    int m_strongWeight = 700;
    int m_decidingWeight = 900;
    double m_symbolSize = 26;
    QPointF m_northInset{20, 14};
    QPointF m_scaleBarInset{20, 14};
    QPointF m_fitInset;
    QVariantList m_keepClear;
    int m_holdInterval;
    double m_pickRadius = 24;

    MapGesture m_gesture;
    QBasicTimer m_holdTimer;
    QBasicTimer m_settleTimer;

    OverlayWorker m_worker;
    QImage m_overlay;
    MapWindow m_overlayWindow;
    bool m_overlayFresh = false;  ///< a new picture waits for its texture
    bool m_overlayStale = true;   ///< the picture is not of the present view, or only a draft of it
    bool m_isZooming = false;     ///< the scale changed since the last picture was asked for
    double m_seenScale = 0;       ///< px per unit when the view last moved
    bool m_wasSettled = false;

    SymbolAtlas m_atlas;
    MapLook m_atlasLook;
    Ground m_atlasGround = Ground::List;
    bool m_atlasFresh = false;
    std::vector<PlacedSymbol> m_symbols;
    PlacedImage m_bar;
    PlacedImage m_north;
    bool m_furnitureFresh = false;
    bool m_furnitureStale = true;
    double m_barScale = 0;
    int m_nodesInUse = 0;
};

}  // namespace groundcount::map
