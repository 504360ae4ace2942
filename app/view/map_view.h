#pragma once

#include "map/map_scene.h"
#include "view/beside_work.h"
#include "view/map_background.h"
#include "view/map_coverage.h"
#include "view/made_rows.h"
#include "view/session.h"

#include <QObject>

#include <memory>

namespace groundcount::view {

/// The map's content out of the book, the lift picker and the thing that was touched.
class MapView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(groundcount::view::Session* session READ session WRITE setSession NOTIFY sessionChanged REQUIRED)
    Q_PROPERTY(groundcount::map::MapSource* source READ source CONSTANT)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString subtitle READ subtitle NOTIFY changed)
    Q_PROPERTY(int lift READ lift NOTIFY changed)
    Q_PROPERTY(QString liftText READ liftText NOTIFY changed)
    Q_PROPERTY(bool canGoUp READ canGoUp NOTIFY changed)
    Q_PROPERTY(bool canGoDown READ canGoDown NOTIFY changed)
    Q_PROPERTY(double originEast READ originEast NOTIFY changed)
    Q_PROPERTY(double originNorth READ originNorth NOTIFY changed)
    Q_PROPERTY(bool hasContent READ hasContent NOTIFY changed)
    Q_PROPERTY(QString chosenId READ chosenId WRITE choose NOTIFY chosenChanged)
    Q_PROPERTY(int chosenMark READ chosenMark NOTIFY chosenChanged)
    Q_PROPERTY(QString chosenTitle READ chosenTitle NOTIFY chosenChanged)
    Q_PROPERTY(QString chosenText READ chosenText NOTIFY chosenChanged)
    Q_PROPERTY(QString chosenFigure READ chosenFigure NOTIFY chosenChanged)
    Q_PROPERTY(bool chosenIsTest READ chosenIsTest NOTIFY chosenChanged)
    Q_PROPERTY(QString touchedText READ touchedText NOTIFY touchedChanged)
    Q_PROPERTY(bool isHeld READ isHeld NOTIFY touchedChanged)
    Q_PROPERTY(double heldNorth MEMBER m_heldNorth NOTIFY touchedChanged)
    Q_PROPERTY(double heldEast MEMBER m_heldEast NOTIFY touchedChanged)
    Q_PROPERTY(double heldUncertaintyMetres MEMBER m_heldUncertainty NOTIFY touchedChanged)
    Q_PROPERTY(groundcount::view::RowList* tests READ tests CONSTANT)
    /// "day", "sun" or "dusk": how far the background gives way.
    Q_PROPERTY(QString theme READ theme WRITE setTheme NOTIFY changed)
    /// Whether the ground that each test stands for is drawn, with its figures.
    Q_PROPERTY(bool coverageShown READ isCoverageShown WRITE showCoverage NOTIFY changed)
    Q_PROPERTY(groundcount::view::RowList* coverage READ coverage CONSTANT)
    /// The coverage is being worked out, or the tests of a long book are being read, beside the pages; the map goes on.
    Q_PROPERTY(bool reading READ isReading NOTIFY changed)
    Q_PROPERTY(QStringList chosenFacts MEMBER m_chosenFacts NOTIFY chosenChanged)
    Q_PROPERTY(QStringList chosenFactLabels MEMBER m_chosenFactLabels NOTIFY chosenChanged)

public:
    explicit MapView(QObject* parent = nullptr);
    Session* session() const { return m_session; }
    void setSession(Session* session);
    map::MapSource* source() { return &m_source; }
    QString title() const { return m_title; }
    QString subtitle() const { return m_subtitle; }
    int lift() const { return m_lift; }
    QString liftText() const;
    bool canGoUp() const;
    bool canGoDown() const;
    bool hasContent() const { return m_hasContent; }
    /// Grid place of the scene's local origin.
    double originEast() const { return m_origin.east; }
    double originNorth() const { return m_origin.north; }
    Q_INVOKABLE void goUp();
    Q_INVOKABLE void goDown();

    QString chosenId() const { return m_chosenId; }
    /// Chooses a test or site by its id on the map; an empty id chooses nothing.
    Q_INVOKABLE void choose(const QString& id);
    int chosenMark() const { return static_cast<int>(m_chosen.mark); }
    QString chosenTitle() const { return m_chosen.title; }
    QString chosenText() const { return m_chosen.second; }
    QString chosenFigure() const { return m_chosen.figure; }
    bool chosenIsTest() const { return m_chosenIsTest; }
    /// Station and offset of a touched point, "54+12, 8 Rt".
    QString touchedText() const { return m_touchedText; }
    Q_INVOKABLE void touch(double east, double north);
    /// A long press: the place waits for what is to be done there. A finger knows it to about a fingertip on the glass.
    Q_INVOKABLE void hold(double east, double north, double pixelsPerMetre);
    Q_INVOKABLE void letGo();
    bool isHeld() const { return m_isHeld; }
    RowList* tests() { return &m_tests; }
    bool isCoverageShown() const { return m_coverageShown; }
    void showCoverage(bool shown);
    QString theme() const { return m_theme; }
    void setTheme(const QString& theme);
    RowList* coverage() { return &m_coverage; }
    bool isReading() const;

signals:
    void sessionChanged();
    void changed();
    void chosenChanged();
    void touchedChanged();

private:
    void refresh();
    void refreshWords();
    void chooseTest(const book::TestRow& test);
    void showFacts(const book::TestRow& test);
    void setLift(int lift);
    void startCoverage();
    void takeCoverage();
    int startLift() const;

    Session* m_session = nullptr;
    map::MapSource m_source;
    MapBackground m_background;
    QString m_theme;
    QString m_title, m_subtitle, m_chosenId, m_touchedText;
    map::MapVertex m_origin;
    Row m_chosen;
    bool m_chosenIsTest = false, m_hasContent = false, m_isHeld = false, m_coverageShown = false;
    QStringList m_chosenFacts, m_chosenFactLabels;
    double m_heldNorth = 0, m_heldEast = 0, m_heldUncertainty = 0;  ///< job's grid; metres
    int m_lift = map::kEveryLift;
    std::vector<int> m_lifts;  ///< lift numbers in the book, ascending
    MadeRows m_tests;
    RowList m_coverage;
    std::shared_ptr<const map::MapScene> m_plain;  ///< without the coverage
    std::shared_ptr<CoverageShown> m_shown;
    BesideWork m_beside;  ///< last: its thread ends first
};

}  // namespace groundcount::view
