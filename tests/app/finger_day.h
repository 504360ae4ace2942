#pragma once

#include "app/field_hand.h"

#include <functional>
#include <utility>
#include <vector>

/// One invented working day by finger alone: the gauge out, standard counts, eight tests with one of each branch, the late sample, an
/// amendment, a void, the gauge in. Each act starts from wherever the app stands, so a killed program goes on with the next one.
class FingerDay : FieldHand {
public:
    explicit FingerDay(KitApp& app) : FieldHand(app) { plan(); }

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
        add("31 amend", [this] { return amendReading("31"); });
        add("31 verdict again", [this] { return toTest("31") && touchAll({"step_5", "seal"}); });
        add("30 void", [this] { return voidTest("30"); });
        add("sign in", [this] { return custody("custodyEvent/choice_3", "field office"); });
    }
    void planRandom()
    {
        add("27 place", [this] { return placeAtSite("owedRows/row1"); });
        plain("27", "1986", "266");
        add("28 place", [this] { return placeAtSite("owedRows/row0"); });
        plain("28", "2109", "302");  // too wet and too loose: fails
        add("28A place", [this] { return placeRetest("28"); });
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
        add("32 sample", [this] { return weighLate("32"); });
        add("32 final", [this] { return judge("32"); });
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

    std::vector<std::pair<QString, Act>> m_acts;
};
