#pragma once

#include "view/book_shelf.h"
#include "view/exchange_view.h"
#include "view/obstacle_sheet.h"
#include "view/receiver.h"
#include "view/screen_settings.h"
#include "view/session.h"
#include "view/test_sheet.h"

#include <QObject>
#include <functional>

class QJSEngine;
class QQmlEngine;

namespace groundcount::view {

/// Where the person is: which of the four places, and whether a test's sheet lies open over it.
class Desk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON
    Q_PROPERTY(QString place READ place WRITE setPlace NOTIFY placeChanged)
    Q_PROPERTY(QString lot READ lot WRITE setLot NOTIFY lotChanged)
    Q_PROPERTY(QString lotSheet READ lotSheet WRITE setLotSheet NOTIFY lotChanged)
    /// Whether the map shows what ground the tests stand for.
    Q_PROPERTY(bool coverageShown MEMBER m_coverageShown NOTIFY coverageShownChanged)
    Q_PROPERTY(QString kit READ kit WRITE setKit NOTIFY kitChanged)
    Q_PROPERTY(QString kitSheet READ kitSheet NOTIFY kitChanged)
    Q_PROPERTY(QString kitSubject READ kitSubject NOTIFY kitChanged)
    Q_PROPERTY(bool testOpen READ isTestOpen NOTIFY testOpenChanged)
    Q_PROPERTY(groundcount::view::TestSheet* sheet READ sheet CONSTANT)
    Q_PROPERTY(groundcount::view::ObstacleSheet* obstacle READ obstacle CONSTANT)
    Q_PROPERTY(groundcount::view::ScreenSettings* screen READ screen CONSTANT)
    Q_PROPERTY(groundcount::view::ExchangeView* exchange READ exchange CONSTANT)
    Q_PROPERTY(groundcount::view::Receiver* receiver READ receiver CONSTANT)
    Q_PROPERTY(groundcount::view::BookShelf* shelf READ shelf CONSTANT)
    Q_PROPERTY(QString paper READ paper WRITE setPaper NOTIFY paperChanged)
    Q_PROPERTY(bool screenOpen READ isScreenOpen WRITE setScreenOpen NOTIFY screenOpenChanged)

public:
    explicit Desk(Session* session, QObject* parent = nullptr);
    static Desk* create(QQmlEngine* engine, QJSEngine* scriptEngine);

    /// "day", "map", "lots" or "kit"; another word changes nothing.
    QString place() const { return m_place; }
    void setPlace(const QString& place);
    /// The lot that is looked into on Lots; empty for the list.
    QString lot() const { return m_lot; }
    void setLot(const QString& id);
    /// The sheet that lies open beside or over the lot: "review", "figures", "draw", "profile" or "tests"; empty for none.
    QString lotSheet() const { return m_lotSheet; }
    void setLotSheet(const QString& sheet);
    /// The sheet that lies open on Kit, "counts" or "custody:GAUGE" for example; empty for the list. Setting one leads to Kit;
    /// leaving it leads back to the test that was open.
    QString kit() const { return m_kit; }
    void setKit(const QString& sheet);
    QString kitSheet() const { return m_kit.section(':', 0, 0); }
    QString kitSubject() const { return m_kit.section(':', 1); }
    bool isTestOpen() const { return m_testOpen; }
    TestSheet* sheet() { return &m_sheet; }
    ObstacleSheet* obstacle() { return &m_obstacle; }
    ScreenSettings* screen() { return &m_screen; }
    ExchangeView* exchange() { return &m_exchange; }
    Receiver* receiver() { return &m_receiver; }
    BookShelf* shelf() { return &m_shelf; }
    /// The sheet to be signed that lies over the place, as PaperSheet names it; empty for none.
    QString paper() const { return m_paper; }
    void setPaper(const QString& sheet);
    /// Whether the page that chooses light, text and language lies over the place.
    bool isScreenOpen() const { return m_screenOpen; }
    void setScreenOpen(bool open);

    /// A new test here, at a drawn site, as a retest; or a test that is in the book.
    Q_INVOKABLE void start();
    Q_INVOKABLE void startAt(const QString& siteId);
    /// A new test aimed at a point of the job's grid: its station and offset are offered as if taped.
    Q_INVOKABLE void startAtPoint(double north, double east);
    Q_INVOKABLE void retest(const QString& testId);
    Q_INVOKABLE void openTest(const QString& testId);
    /// The same, with what is sealed of it in front; an empty id opens nothing.
    Q_INVOKABLE void openRecord(const QString& testId);
    /// What is typed stays as a draft; what is sealed is in the book.
    Q_INVOKABLE void closeTest();
    /// Opens what a word names: "new" a new test, "test:26" a test by its number, "test:26/4" its fourth step, "lot:N-4" a lot by its name, "lot:N-4/review" its review, "coverage" the map with it, "hand-over", "server" and "publish" those pages,
    /// "kit:counts" a sheet of Kit, "kit:material:P-12" with its subject by name, "paper:day" today's sheet, "paper:26" the sheet of a test, "paper:lot:N-4" and "paper:review:N-4" those of a lot.
    /// @error Refused for another word, or a name that the book does not have
    Result<void> openNamed(const QString& what);

signals:
    void placeChanged();
    void lotChanged();
    void kitChanged();
    void testOpenChanged();
    void screenOpenChanged();
    void paperChanged();
    void coverageShownChanged();

private:
    /// Acts now, or when the tests of a long book are read; of several waiting only the last, and none once the test is closed.
    void whenRead(std::function<void()> act);
    /// Whether a word stands for a pane in a lot's place, for what leads off the device; no lot has such an id.
    static bool leadsOff(const QString& word);
    void setTestOpen(bool open);

    Session* m_session;
    TestSheet m_sheet;
    ObstacleSheet m_obstacle;
    ScreenSettings m_screen;
    ExchangeView m_exchange;
    Receiver m_receiver;
    BookShelf m_shelf;
    QString m_place = QStringLiteral("day");
    QString m_lot, m_lotSheet, m_kit, m_paper;
    QString m_placeOfTest;  ///< the place under a test that gave way to a sheet of Kit; empty when none did
    QString m_kitUnder;     ///< the lot's sheet under one that was opened from it
    bool m_fromLots = false;  ///< Kit was entered from Lots and leads back there
    bool m_testOpen = false, m_screenOpen = false, m_coverageShown = false;
    std::function<void()> m_whenRead;
};

}  // namespace groundcount::view
