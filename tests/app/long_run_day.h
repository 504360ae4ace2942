#pragma once

#include "app/field_hand.h"

#include <functional>
#include <random>

/// Working days on one book, one after the other: the gauge out, standard counts, a test that passes, one that fails with its retest, one
/// of two readings that is amended, one whose sample is weighed late, one that is voided, the gauge in. Between two acts `interlude` may do
/// anything else in the app.
class LongDay : FieldHand {
public:
    LongDay(KitApp& app, std::mt19937& chance, std::function<void()> interlude) : FieldHand(app), m_chance(chance), m_interlude(std::move(interlude)) {}

    /// The first day is the one after the demo day; the gauge's leak test holds until mid-September.
    static constexpr int kMostDays = 95;
    /// Tests that a day adds, and what becomes of them.
    static constexpr int kTests = 6, kPass = 4, kFail = 1, kVoid = 1;

    bool work(int day)
    {
        m_clock = QDateTime(QDate(2026, 6, 10).addDays(day), QTime(6, 30), Qt::OffsetFromUTC, -5 * 3600);
        return act("sign out", [this] { return custody("custodyEvent/choice_0", "field office"); })
               && act("standard counts", [this] { return standardCounts(); })
               && act("at site", [this] { return custody("custodyEvent/choice_2", "north approach"); })
               && passes() && failsAndIsTestedAgain() && isAmended() && waitsForItsSample() && isVoided()
               && act("sign in", [this] { return custody("custodyEvent/choice_3", "field office"); });
    }

    QString lastAct() const { return m_lastAct; }

private:
    bool act(const QString& name, const std::function<bool()>& doIt)
    {
        m_lastAct = name;
        m_clock = m_clock.addSecs(240);
        m_app.session().setClock(m_clock);
        if (!doIt())
            return false;
        m_interlude();
        return true;
    }
    QString nextNumber() const
    {
        return QString::fromStdString(groundcount::book::StateQuery(m_app.session().store()).nextTestNumber().value_or(std::string()));
    }
    /// Anywhere on a stretch of the lot that lies clear of every wall.
    bool placeSomewhere()
    {
        m_number = nextNumber();
        const int station = std::uniform_int_distribution(5130, 5270)(m_chance), offset = std::uniform_int_distribution(2, 12)(m_chance);
        return act(m_number + " place", [=, this] { return placeByTape(QString::number(station), QString::number(offset), offset % 2 == 0); });
    }
    bool count(const QString& density, const QString& moisture)
    {
        return act(m_number + " clear", [this] { return clear(m_number); }) && act(m_number + " seat", [this] { return seatAtEight(m_number); })
               && act(m_number + " count", [this] { return startCount(m_number); })
               && act(m_number + " reading", [=, this] { return read(m_number, density, moisture); });
    }
    bool closeCount() { return toTest(m_number) && seal("count"); }
    bool digAndJudge()
    {
        return act(m_number + " dig", [this] { return digNothing(m_number); }) && act(m_number + " verdict", [this] { return judge(m_number); });
    }

    bool passes() { return placeSomewhere() && count("1986", "266") && closeCount() && digAndJudge(); }
    bool failsAndIsTestedAgain()
    {
        if (!placeSomewhere() || !count("2109", "302") || !closeCount() || !digAndJudge())
            return false;
        const QString failed = m_number;
        m_number += 'A';
        return act(m_number + " place", [=, this] { return placeRetest(failed); }) && count("1986", "266") && closeCount() && digAndJudge();
    }
    bool isAmended()
    {
        return placeSomewhere() && count("1980", "266") && act(m_number + " turn", [this] { return toTest(m_number) && touch("second_0") && touch("startCount"); })
               && act(m_number + " second", [this] { return read(m_number, "1988", "264") && seal("count"); }) && digAndJudge()
               && act(m_number + " amend", [this] { return amendReading(m_number); })
               && act(m_number + " verdict again", [this] { return toTest(m_number) && touchAll({"step_5", "seal"}); });
    }
    bool waitsForItsSample()
    {
        return placeSomewhere() && count("1986", "266") && closeCount()
               && act(m_number + " later", [this] { return toTest(m_number) && touch("sample/choice_2") && seal("dig"); })
               && act(m_number + " provisional", [this] { return judge(m_number); }) && act(m_number + " sample", [this] { return weighLate(m_number); })
               && act(m_number + " final", [this] { return judge(m_number); });
    }
    bool isVoided()
    {
        return passes() && act(m_number + " void", [this] { return voidTest(m_number); });
    }

    std::mt19937& m_chance;
    std::function<void()> m_interlude;
    QDateTime m_clock;
    QString m_number, m_lastAct;
};
