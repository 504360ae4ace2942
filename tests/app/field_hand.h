#pragma once

#include "app/kit_bench.h"

/// What a technician does in the running app by finger alone, one act at a time; each starts from wherever the app stands and is false when
/// it cannot be done.
class FieldHand {
public:
    explicit FieldHand(KitApp& app) : m_app(app) {}

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
        if (!touch("place_day") || !m_app.find(QStringLiteral("waitingRows/row0")) || !m_app.touchRow(QStringLiteral("waitingRows"), number))
            return false;
        QTest::qWait(100);  // it lies where it will stay
        return true;
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
        const bool byTape = m_app.waitStill(first) && m_app.textOf(first) == QStringLiteral("Enter the tape");
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

    bool placeRetest(const QString& failed)
    {
        return toPlace("place_day") && touch("startTest") && touch("purpose/choice_2") && touchFailure(failed) && touch("typePlace")
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
    bool weighLate(const QString& number)
    {
        return toPlace("place_day") && toTest(number) && touchAll({"sample/choice_1", "sieve/choice_1", "typeMasses"}) && m_app.type({"3186", "85"})
               && touch("keypadNext") && seal("dig");
    }
    bool amendReading(const QString& number)
    {
        return toPlace("place_day") && m_app.touchRow("resultsRows", number) && touchAll({"step_3", "amendLink"}) && m_app.write("askReason", "misread")
               && touchAll({"askAct", "readingLine_1"}) && touchAll({"keypadNext"}) && touchAll({"key_backspace"}) && m_app.type({"5"}) && seal("count");
    }
    bool voidTest(const QString& number)
    {
        return toPlace("place_day") && m_app.touchRow("resultsRows", number) && touchAll({"recordLink", "voidLink"}) && m_app.write("askReason", "asked for twice")
               && touch("askAct") && toPlace("place_day");
    }

protected:
    KitApp& m_app;
};
