#pragma once

#include "app/kit_bench.h"

#include <functional>
#include <utility>
#include <vector>

/// One invented working day by finger alone: the gauge out, standard counts, eight tests with one of each branch, the late sample, an
/// amendment, a void, the gauge in. Each act starts from wherever the app stands, so a killed program goes on with the next one.
class FingerDay {
public:
    explicit FingerDay(KitApp& app) : m_app(app) { plan(); }

    int size() const { return static_cast<int>(m_acts.size()); }
    QString name(int act) const { return m_acts[static_cast<std::size_t>(act)].first; }
    /// The day's clock at an act: half past six, four minutes on each time.
    static QDateTime clock(int act)
    {
        return QDateTime(QDate(2026, 6, 10), QTime(6, 30), Qt::OffsetFromUTC, -5 * 3600).addSecs(240 * act);
    }
    bool act(int index)
    {
        m_app.session().setClock(clock(index));
        return m_acts[static_cast<std::size_t>(index)].second();
    }

private:
    using Act = std::function<bool()>;
    void add(const QString& name, Act act) { m_acts.emplace_back(name, std::move(act)); }
    bool touch(const char* path) { return m_app.touch(QLatin1String(path)); }
    bool touchAll(std::initializer_list<const char*> paths)
    {
        for (const char* path : paths)
            if (!touch(path))
                return false;
        return true;
    }

    bool toPlace(const char* place)
    {
        for (int layers = 0; m_app.find(QStringLiteral("back")) && layers < 4; ++layers)
            if (!touch("back"))
                return false;
        return touch(place);
    }
    /// The sheet of a test that is begun: it lies open, or its row on Day leads to it.
    bool toTest(const QString& number)
    {
        if (m_app.find(QStringLiteral("testPage")))
            return true;
        return touch("place_day") && (m_app.find(QStringLiteral("waitingRows/row0")) ? m_app.touchRow(QStringLiteral("waitingRows"), number) : false);
    }
    bool seal(const char* step)
    {
        if (m_app.find(QStringLiteral("sealNotYet")))
            qWarning("%s: %s", step, qPrintable(m_app.textOf(QStringLiteral("sealNotYet"))));
        return touch("seal");
    }

    bool custody(const char* event, const char* place)
    {
        if (m_app.find(QStringLiteral("kitAct")) && m_app.textOf(QStringLiteral("kitAct")) == QStringLiteral("Sign the gauge out"))
            touch("kitAct");
        else if (!toPlace("place_kit") || !m_app.touchRow(QStringLiteral("kitGauges"), QStringLiteral("Custody")))
            return false;
        return touch(event) && m_app.write(QStringLiteral("custodyPlace"), QLatin1String(place))
               && touchAll({"custodyBarriers/choice_2", "check_badge", "check_papers", "kitSeal"}) && toPlace("place_day");
    }
    bool standardCounts()
    {
        return touch("place_day") && touch("kitAct") && touchAll({"check_warm", "check_block", "check_gauges", "check_around", "typeCounts"})
               && m_app.type({"2850", "650", "2853", "649", "2849", "651", "2852", "648"}) && touch("kitSeal") && toPlace("place_day");
    }

    bool placeAtSite(const char* row)
    {
        // The drawn station and offset stand in the fields; the tape confirms them.
        return toPlace("place_day") && touch(row) && touch("typePlace") && touchAll({"keypadNext", "keypadNext"}) && seal("place");
    }
    bool placeByTape(const QString& station, const QString& offset, bool left)
    {
        return toPlace("place_day") && touch("startTest") && touch("typePlace") && m_app.type({station})
               && touch(left ? "entryChoice/choice_0" : "entryChoice/choice_1") && m_app.type({offset}) && touch("purpose/choice_1") && seal("place");
    }
    /// By eye where nothing is known to be near, by tape where the map cannot tell.
    bool settle(const QString& hazard, const QString& tape)
    {
        const QString first = QStringLiteral("act_%1_0").arg(hazard);
        if (m_app.waitFor("hazardRow_" + hazard) && m_app.find("hazardRow_" + hazard)->property("settled").toBool())
            return true;
        const bool byTape = m_app.waitFor(first) && m_app.textOf(first) == QStringLiteral("Enter the tape");
        return m_app.touch(first) && (!byTape || m_app.type({tape}));
    }
    bool clear(const QString& number)
    {
        return toTest(number) && settle("face", "60") && settleOthers() && seal("clear");
    }
    bool settleOthers() { return settle("people", "40") && settle("vehicles", "40") && settle("gauges", "60"); }
    bool seatAtEight(const QString& number)
    {
        return toTest(number) && touchAll({"surface/choice_0", "rocks/choice_0"}) && m_app.touch(depthChoice("depth/choice_", 8)) && touch("typeHole") && m_app.type({"10"}) && seal("seat");
    }
    /// The choice that shows the depth in inches.
    QString depthChoice(const QString& stem, int inches) const
    {
        for (int i = 0; m_app.find(stem + QString::number(i)); ++i)
            if (m_app.textOf(stem + QString::number(i)).startsWith(QString::number(inches) + ' '))
                return stem + QString::number(i);
        return stem;
    }
    bool startCount(const QString& number) { return toTest(number) && touch("startCount"); }
    bool read(const QString& number, const QString& first, const QString& second)
    {
        return toTest(number) && touch("enterReading") && m_app.type({first, second});
    }
    bool digNothing(const QString& number) { return toTest(number) && touch("sample/choice_0") && seal("dig"); }
    bool judge(const QString& number) { return toTest(number) && seal("verdict") && touch("sealedNext"); }

    /// What is alike in most tests: clear, 8 in., one count.
    void counted(const QString& n, const QString& density, const QString& moisture, bool hasOwnClearance = false)
    {
        if (!hasOwnClearance)
            add(n + " clear", [=, this] { return clear(n); });
        add(n + " seat", [=, this] { return seatAtEight(n); });
        add(n + " count", [=, this] { return startCount(n); });
        add(n + " reading", [=, this] { return read(n, density, moisture) && seal("count"); });
    }
    /// The same to its verdict, without coarse particles.
    void plain(const QString& n, const QString& density, const QString& moisture, bool hasOwnClearance = false)
    {
        counted(n, density, moisture, hasOwnClearance);
        add(n + " dig", [=, this] { return digNothing(n); });
        add(n + " verdict", [=, this] { return judge(n); });
    }

    void plan()
    {
        add("sign out", [this] { return custody("custodyEvent/choice_0", "field office"); });
        add("standard counts", [this] { return standardCounts(); });
        add("at site", [this] { return custody("custodyEvent/choice_2", "north approach"); });
        planRandom();
        planHazards();
        planSecond();
        planLate();
        add("31 amend", [this] { return amendReading(); });
        add("31 verdict again", [this] { return toTest("31") && touchAll({"step_5", "seal"}); });
        add("30 void", [this] { return voidTest(); });
        add("sign in", [this] { return custody("custodyEvent/choice_3", "field office"); });
    }
    void planRandom()
    {
        add("27 place", [this] { return placeAtSite("owedRows/row1"); });
        plain("27", "1986", "266");
        add("28 place", [this] { return placeAtSite("owedRows/row0"); });
        plain("28", "2109", "302");  // too wet and too loose: fails
        add("28A place", [this] { return placeRetest(); });
        plain("28A", "1986", "266");
    }
    void planHazards()
    {
        add("29 place", [this] { return placeByTape("4726.1", "27", true); });  // the headwall's face is near
        add("29 too close", [this] { return toTest("29") && touchAll({"act_face_0", "toOffset_face"}) && trenchOffset(); });
        add("29 clear", [this] { return toTest("29") && settleOthers() && seal("clear"); });
        plain("29", "1959", "287", true);
        add("30 place", [this] { return placeByTape("5340.9", "14", false); });
        add("30 overridden", [this] { return overrideFace(); });
        plain("30", "1986", "266", true);
    }
    void planSecond()
    {
        add("31 place", [this] { return placeByTape("5150", "5", false); });
        add("31 clear", [this] { return clear("31"); });
        add("31 seat", [this] { return seatAtEight("31"); });
        add("31 count", [this] { return startCount("31"); });
        add("31 reading", [this] { return read("31", "1980", "266"); });
        add("31 turn", [this] { return toTest("31") && touch("second_0") && touch("startCount"); });
        add("31 second", [this] { return read("31", "1988", "264") && seal("count"); });
        add("31 dig", [this] { return digNothing("31"); });
        add("31 verdict", [this] { return judge("31"); });
    }
    void planLate()
    {
        add("32 place", [this] { return placeByTape("5200", "5", false); });
        counted("32", "1986", "266");
        add("32 later", [this] { return toTest("32") && touchAll({"sample/choice_2"}) && seal("dig"); });
        add("32 provisional", [this] { return judge("32"); });
        add("33 place", [this] { return placeByTape("5250", "5", true); });
        counted("33", "1986", "266");
        add("33 oven", [this] { return toTest("33") && touch("sample/choice_0") && touchAll({"moisture/choice_1", "otherMethod/choice_0", "typeContent"}) && m_app.type({"13.1"}) && seal("dig"); });
        add("33 verdict", [this] { return judge("33"); });
        add("32 sample", [this] { return weighLate(); });
        add("32 final", [this] { return judge("32"); });
    }

    bool placeRetest()
    {
        return toPlace("place_day") && touch("startTest") && touch("purpose/choice_2") && touchFailure("28") && touch("typePlace")
               && touchAll({"keypadNext", "keypadNext"}) && m_app.write("rework", "dried back and rolled") && seal("place");
    }
    bool touchFailure(const QString& number)
    {
        QTest::qWait(50);
        for (QQuickItem* item : gallery::items(m_app.find("placeStep")))
            if (item->objectName().startsWith("failure_") && item->property("lead").toString() == number)
                return m_app.touch(item->objectName());
        qWarning("failure %s is not offered", qPrintable(number));
        return false;
    }
    bool trenchOffset()
    {
        return touchAll({"offsetKind/choice_0", "typeEvidence"}) && m_app.type({"671"}) && touchAll({"keypadNext", "keypadNext", "keypadNext"})
               && m_app.write("offsetPlace", "headwall") && touchAll({"kitSeal", "back"});
    }
    bool overrideFace()
    {
        return toTest("30") && m_app.write("override_face", "asked for by the engineer")
               && settleOthers() && seal("clear");
    }
    bool weighLate()
    {
        return toPlace("place_day") && toTest("32") && touchAll({"sample/choice_1", "sieve/choice_1", "typeMasses"}) && m_app.type({"3186", "85"})
               && touch("keypadNext") && seal("dig");
    }
    bool amendReading()
    {
        return toPlace("place_day") && m_app.touchRow("resultsRows", "31") && touchAll({"step_3", "amendLink"}) && m_app.write("askReason", "misread")
               && touchAll({"askAct", "readingLine_1"}) && touchAll({"keypadNext"}) && touchAll({"key_backspace"}) && m_app.type({"5"}) && seal("count");
    }
    bool voidTest()
    {
        return toPlace("place_day") && m_app.touchRow("resultsRows", "30") && touchAll({"recordLink", "voidLink"}) && m_app.write("askReason", "asked for twice")
               && touch("askAct") && toPlace("place_day");
    }

    KitApp& m_app;
    std::vector<std::pair<QString, Act>> m_acts;
};
