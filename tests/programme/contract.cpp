#include "programme/contract.h"

#include "book/canonical.h"
#include "book/database.h"
#include "book/keys.h"
#include "method/rules/rule_set.h"

#include <algorithm>
#include <chrono>
#include <cmath>
#include <cstdio>
#include <cstdlib>

using namespace groundcount::book;

namespace programme {

namespace {

constexpr int kTestSeconds = 300, kTestsADay = 144, kDayBegins = 12 * 3600;  // 7:00 local, five minutes each
constexpr int kVariants = 16;

std::string text(double value, int places)
{
    char buffer[40];
    std::snprintf(buffer, sizeof buffer, "%.*f", places, value);
    return buffer;
}

std::string two(int number)
{
    return {static_cast<char>('0' + number / 10), static_cast<char>('0' + number % 10)};
}

/// UTC of a day from 1 June 2026 and a second in it.
std::string timeText(int day, int second)
{
    using namespace std::chrono;
    const year_month_day on{sys_days{year(2026) / June / 1} + days(day + second / 86'400)};
    second %= 86'400;
    return std::to_string(int(on.year())) + '-' + two(static_cast<int>(unsigned(on.month()))) + '-' + two(static_cast<int>(unsigned(on.day()))) + 'T' +
           two(second / 3600) + ':' + two(second / 60 % 60) + ':' + two(second % 60) + ".000Z";
}

/// What differs from a test in order.
struct Plan {
    Body site = Body::object(), hazard = Body::object(), reading = Body::object(), second = Body::object();
    bool isReadout = false, hasSecond = false, amends = false, adds = false;
    std::string standard, person, gauge;
    int shift = 0;
};

class Writer {
public:
    Writer(const std::string& path, int number, const Size& size, std::uint64_t seed)
        : m_number(number), m_random(seed), m_store(Store::open(path, OpenMode::Create, key(number)).value())
    {
        // A generated book may be lost in a power cut: no flush for each of its thousands of commits.
        (void)m_store.database().exec("PRAGMA synchronous=OFF");
        m_truth.size = size;
        m_truth.begin = 1000;
        m_truth.lotLength = 1000;
        m_truth.halfWidth = 40;
        m_truth.north0 = 482000;
        m_truth.east0 = 1204600;
        m_truth.minimum = 95;
        m_truth.optimum = 12.8;
        // a contract for benchmarks goes on for years; its papers do too
        const int days = size.lots * size.lifts * size.testsPerLift / kTestsADay;
        m_expires = days > 150 ? "2126-01-01" : "2027-01-01";
    }

    Truth write()
    {
        setUp();
        for (int lift = 1; lift <= m_truth.size.lifts; ++lift)
            for (int lot = 0; lot < m_truth.size.lots; ++lot)
                for (int i = 0; i < m_truth.size.testsPerLift; ++i)
                    random(lot, lift);
        return m_truth;
    }

private:
    static DeviceKey key(int number)
    {
        std::array<unsigned char, 32> seed{};
        seed.fill(static_cast<unsigned char>(40 + number));
        return DeviceKey::fromSeed(seed);
    }
    static Record checked(groundcount::Result<Record> sealed)
    {
        if (!sealed) {
            std::fprintf(stderr, "programme: %s\n", sealed.error().what.c_str());
            std::abort();
        }
        return std::move(*sealed);
    }
    std::string id(int kind, int n) const
    {
        char buffer[40];
        std::snprintf(buffer, sizeof buffer, "%08x-%04x-4000-8000-%012x", static_cast<unsigned>(n), static_cast<unsigned>(kind), static_cast<unsigned>(m_number));
        return buffer;
    }
    Entry entry(const char* kind, const std::string& subject, Body body, int second)
    {
        Entry e;
        e.kind = kind;
        e.subject = subject;
        e.by = m_by;
        e.at = timeText(m_day, second);
        e.offsetMinutes = -300;
        e.body = std::move(body);
        return e;
    }
    Record seal(const char* kind, const std::string& subject, Body body, int second) { return checked(m_store.seal(entry(kind, subject, std::move(body), second))); }

    enum Kind { People = 1, Gauges, Others, Lots, Lifts, Tests };

    void person(int n, const char* name, const char* role, const char* party, const char* expires)
    {
        Body body{{"name", name}, {"role", role}, {"party", party}};
        if (*expires) {
            body["certificate"] = "T-" + std::to_string(n);
            body["certificate_expires"] = expires;
        }
        seal("person", id(People, n), body, n);
    }

    void setUp()
    {
        m_by = id(People, 1);
        person(1, "A. Contractor", "technician", "contractor", m_expires);
        person(2, "B. Agency", "technician", "agency", m_expires);
        person(3, "C. Lapsed", "technician", "contractor", "2026-05-31");
        person(4, "E. Engineer", "engineer", "agency", "");
        const std::string rules = id(Others, 1), crs = id(Others, 2), material = id(Others, 3), proctor = id(Others, 4);
        seal("rule-set", rules, {{"rules", Body::parse(groundcount::method::toJson(groundcount::method::neutralRules()))}}, 5);
        seal("crs", crs, {{"epsg", 6411}, {"name", "Arkansas North (ftUS)"}, {"unit", "ftUS"}}, 5);
        seal("job", id(Others, 5), {{"name", "Contract " + std::to_string(m_number)}, {"density_unit", "lb/ft3"}, {"crs", crs}, {"rule_set", rules}}, 5);
        seal("alignment", id(Others, 6), {{"name", "Line A"}, {"unit", "ftUS"}, {"begin_station", text(m_truth.begin, 0)}, {"begin_north", text(m_truth.north0, 0)}, {"begin_east", text(m_truth.east0, 0)},
                                          {"begin_azimuth_deg", "0"}, {"elements", {{{"kind", "line"}, {"length", text(m_truth.lotLength * m_truth.size.lots, 0)}}}}}, 5);
        seal("material", material, {{"name", "Lean clay"}}, 5);
        seal("proctor", proctor, {{"name", "P-1"}, {"material", material}, {"standard", "T 99"}, {"max_dry_density_lb_ft3", "118.6"}, {"optimum_pct", text(m_truth.optimum, 1)}, {"peak_by", "fit"}}, 5);
        for (int g = 1; g <= 3; ++g) {  // the third one's leak test is out of date
            seal("gauge", id(Gauges, g), {{"name", "Gauge " + std::to_string(g)}, {"serial", "000" + std::to_string(g)}, {"prescale", "16"}}, 6);
            seal("calibration", id(Others, 10 + g), {{"gauge", id(Gauges, g)}, {"on", "2026-01-05"}, {"expires", m_expires},
                 {"curves", Body::array({{{"depth_in", "8"}, {"mode", "direct"}, {"a", "9.7"}, {"b_per_lb_ft3", "0.0185"}, {"c", "-0.06"}}})}, {"water", {{"e", "0.02"}, {"slope_per_lb_ft3", "0.011"}}}}, 6);
            seal("leak-test", id(Others, 20 + g), {{"gauge", id(Gauges, g)}, {"on", g == 3 ? "2025-11-01" : "2026-05-01"}, {"expires", g == 3 ? "2026-05-01" : m_expires}, {"result", "no leak"}}, 6);
        }
        for (int lot = 0; lot < m_truth.size.lots; ++lot) {
            m_truth.lots.push_back("C" + std::to_string(m_number) + "-" + std::to_string(lot + 1));
            const double begin = m_truth.begin + lot * m_truth.lotLength;
            seal("lot", id(Lots, lot), {{"name", m_truth.lots.back()}, {"material", material}, {"proctor", proctor}, {"begin_station", text(begin, 0)}, {"end_station", text(begin + m_truth.lotLength, 0)},
                 {"left_ft", text(m_truth.halfWidth, 0)}, {"right_ft", text(m_truth.halfWidth, 0)}, {"minimum_pct", text(m_truth.minimum, 0)}, {"window", {{"kind", "points"}, {"low", "-2"}, {"high", "2"}}},
                 {"tests_per_lift", m_truth.size.testsPerLift}, {"sublots", 1}}, 8);
            for (int lift = 1; lift <= m_truth.size.lifts; ++lift)
                seal("lift", liftId(lot, lift), {{"lot", id(Lots, lot)}, {"number", lift}}, 8);
        }
        newDay();
    }

    std::string liftId(int lot, int lift) const { return id(Lifts, lot * 1000 + lift); }

    std::string standard(int n, int gauge, const char* deviation, int second)
    {
        return seal("standard-count", id(Others, 1000 + n), {{"gauge", id(Gauges, gauge)}, {"density_count", "2850"}, {"moisture_count", "684"}, {"density_before", Body::array({"2848"})},
            {"moisture_before", Body::array({"685"})}, {"accepted", true}, {"density_deviation_pct", deviation}, {"moisture_deviation_pct", "0.1"}}, second).hash;
    }

    void newDay()
    {
        m_inDay = 0;
        m_old = m_standards[0];
        for (int g = 1; g <= 2; ++g)
            m_standards[g - 1] = standard(100 + 10 * m_day + g, g, "0.1", kDayBegins - 600 + g);
    }

    /// The next five minutes; a new day with its standard counts when this one is full.
    int nextBegin()
    {
        if (m_inDay == kTestsADay) {
            ++m_day;
            newDay();
        }
        return kDayBegins + kTestSeconds * m_inDay++;
    }

    double uniform() { return std::uniform_real_distribution<double>(0, 1)(m_random); }

    void random(int lot, int lift)
    {
        Test t;
        t.lot = m_truth.lots[static_cast<std::size_t>(lot)];
        t.lift = lift;
        t.north = std::round((m_truth.north0 + m_truth.lotLength * (lot + 0.001 + 0.998 * uniform())) * 100) / 100;
        t.east = std::round((m_truth.east0 + m_truth.halfWidth * (1.99 * uniform() - 0.995)) * 100) / 100;
        const double centre = 96.6 + 0.05 * (lot % 9);
        t.percent = std::round((centre + std::normal_distribution<double>(0, 0.9)(m_random)) * 10) / 10;
        t.moisture = std::round((m_truth.optimum + std::normal_distribution<double>(0, 0.7)(m_random)) * 10) / 10;
        t.result = t.percent < m_truth.minimum ? "fail" : "pass";
        const int total = static_cast<int>(m_truth.tests.size());
        const int every = m_truth.size.faultEvery;
        // within a day, so that a twin lies in the same one, and after a test that passed
        const bool isFault = every > 0 && total % every == every - 1 && m_inDay > 12 && m_inDay < kTestsADay - 6;
        if (!isFault || !plant(lot, lift, t))
            make(lot, lift, t, ordinary());
        const Test begun = m_truth.tests.back();
        if (begun.result == "fail" && uniform() < 0.8)  // the others stay open
            retest(lot, lift, begun);
    }

    Plan ordinary()
    {
        Plan plan;
        plan.isReadout = uniform() < 0.3;
        plan.hasSecond = uniform() < 0.2;
        return plan;
    }

    void retest(int lot, int lift, const Test& failed)
    {
        Test t = failed;
        t.isRandom = false;
        t.retestOf = failed.number;
        t.north += 2;
        t.percent = m_truth.minimum + std::round(30 * uniform()) / 10;
        t.result = "pass";
        Plan plan = ordinary();
        plan.site = {{"purpose", "retest"}, {"retest_of", id(Tests, std::stoi(failed.number))}, {"rework", "rolled again"}};
        make(lot, lift, t, plan);
    }

    void make(int lot, int lift, Test t, const Plan& plan)
    {
        const int n = static_cast<int>(m_truth.tests.size()) + 1;
        const int second = nextBegin() + plan.shift;
        const bool agency = n % 5 == 0;
        t.number = std::to_string(n);
        t.person = !plan.person.empty() ? plan.person : id(People, agency ? 2 : 1);
        t.gauge = !plan.gauge.empty() ? plan.gauge : id(Gauges, agency ? 2 : 1);
        const std::string subject = id(Tests, n);
        Body site{{"number", t.number}, {"gauge", t.gauge}, {"lot", id(Lots, lot)}, {"lift", liftId(lot, lift)}, {"purpose", "random"}, {"latitude_deg", "36.1"}, {"longitude_deg", "-92.5"},
                  {"grid_north_usft", text(t.north, 2)}, {"grid_east_usft", text(t.east, 2)}, {"station", text(m_truth.begin + t.north - m_truth.north0, 2)}, {"offset_ft", text(t.east - m_truth.east0, 2)},
                  {"fixes", 20}, {"sigma_north_m", "0.4"}, {"sigma_east_m", "0.5"}};
        site.update(plan.site);
        Body hazard{{"hazard", "people"}, {"known_by", "tape"}, {"distance_ft", "40"}, {"required_ft", "15"}, {"answer", "clear"}};
        hazard.update(plan.hazard);
        Body reading{{"number", 1}, {"mode", "direct"}, {"depth_in", "8"}, {"orientation", "along"}, {"seconds", 60}};
        if (plan.isReadout) {  // no two of a day alike
            reading["wet_density_lb_ft3"] = text(120 + 0.01 * m_inDay, 2);
            reading["water_content_pct"] = text(t.moisture, 1);
        } else {
            reading["density_count"] = 2500 + m_inDay;
            reading["moisture_count"] = 120 + m_inDay % 9;
            reading["standard_count"] = plan.standard.empty() ? m_standards[agency ? 1 : 0] : plan.standard;
        }
        reading.update(plan.reading);
        m_by = t.person;
        std::vector<Entry> entries{entry("test-site", subject, site, second), entry("clearance", subject, {{"hazards", Body::array({hazard})}}, second + 20),
                                   entry("reading", subject, reading, second + 120)};
        if (plan.hasSecond) {
            Body second2 = reading;
            second2["number"] = 2;
            second2["orientation"] = "turned 90";
            if (plan.isReadout)
                second2["wet_density_lb_ft3"] = text(122 + 0.01 * m_inDay, 2);
            else
                second2["density_count"] = 4500 + m_inDay;
            second2.update(plan.second);
            entries.push_back(entry("reading", subject, second2, second + 190));
        }
        const auto sealed = m_store.sealThen(entries, [&](const std::vector<Record>& first) -> groundcount::Result<std::vector<Entry>> {
            const double dry = 118.6 * t.percent / 100;
            return std::vector{entry("verdict", subject, {{"result", t.result}, {"reasons", Body::array()}, {"rule_set", std::string(64, 'a')}, {"core", "0.1.0"}, {"from", Body::array({first[2].hash})},
                {"figures", {{"percent_compaction", text(t.percent, 1)}, {"dry_density_lb_ft3", text(dry, 1)}, {"water_content_pct", text(t.moisture, 1)}, {"optimum_pct", text(m_truth.optimum, 1)},
                             {"maximum_lb_ft3", "118.6"}, {"minimum_pct", text(m_truth.minimum, 0)}}}}, second + 200)};
        });
        if (!sealed) {
            std::fprintf(stderr, "programme: %s\n", sealed.error().what.c_str());
            std::abort();
        }
        m_lastReading = (*sealed)[2];
        if (plan.amends) {
            Entry again = m_lastReading;
            again.amends = m_lastReading.hash;
            again.reason = "digits changed over";
            again.at = timeText(m_day, second + 230);
            again.body["density_count"] = 9000 + m_inDay;
            checked(m_store.seal(again));
        }
        if (plan.adds)
            seal("seating", subject, {{"surface", "filled"}, {"rocks", false}, {"depth_in", "8"}}, second + 240);
        m_by = id(People, 1);
        m_truth.tests.push_back(std::move(t));
    }

    /// Makes a test with the next fault in turn. @return false when this place does not suit it
    bool plant(int lot, int lift, Test t)
    {
        t.result = "pass";
        t.percent = std::max(t.percent, m_truth.minimum + 0.5);
        Plan plan;
        const std::string twinGauge = id(Gauges, 1);
        const auto planted = [&](Unusual kind) { m_truth.planted.push_back({m_truth.tests.back().number, kind}); };
        const auto twin = [&](bool readout) {  // an ordinary test by the same gauge before it
            Plan before;
            before.isReadout = readout;
            before.gauge = plan.gauge = twinGauge;
            before.standard = plan.standard = readout ? "" : m_standards[0];
            Test one = t;
            one.isRandom = true;
            make(lot, lift, one, before);
            t.north = std::min(t.north + 5, m_truth.north0 + m_truth.lotLength * (lot + 0.999));
        };
        switch (m_fault++ % kVariants) {
        case 0: plan.site = {{"gauge_override_reason", "only gauge on the job"}}; make(lot, lift, t, plan); planted(Unusual::Overridden); return true;
        case 1: plan.amends = true; make(lot, lift, t, plan); planted(Unusual::AmendedAfterVerdict); return true;
        case 2: plan.adds = true; make(lot, lift, t, plan); planted(Unusual::AmendedAfterVerdict); return true;
        case 3: plan.standard = standard(100'000 + m_fault, 1, "1.8", kDayBegins + kTestSeconds * m_inDay - 30); make(lot, lift, t, plan); planted(Unusual::StandardCountOut); return true;
        case 4:
            if (m_old.empty())
                return false;
            plan.standard = m_old;
            plan.gauge = twinGauge;
            make(lot, lift, t, plan);
            planted(Unusual::StandardCountOut);
            return true;
        case 5: plan.isReadout = true; plan.gauge = id(Gauges, 3); make(lot, lift, t, plan); planted(Unusual::PapersExpired); return true;
        case 6: plan.isReadout = true; plan.person = id(People, 3); make(lot, lift, t, plan); planted(Unusual::PapersExpired); return true;
        case 7: plan.hazard = {{"answer", "cannot tell"}}; make(lot, lift, t, plan); planted(Unusual::ClearanceNotMet); return true;
        case 8: plan.hazard = {{"distance_ft", "9"}}; make(lot, lift, t, plan); planted(Unusual::ClearanceNotMet); return true;
        case 9: plan.site = {{"fixes", 5}}; make(lot, lift, t, plan); planted(Unusual::PositionPoor); return true;
        case 10: plan.site = {{"sigma_north_m", "1.9"}, {"sigma_east_m", "1.9"}}; make(lot, lift, t, plan); planted(Unusual::PositionPoor); return true;
        case 11: plan.hasSecond = true; plan.second = {{"density_count", 2500 + m_inDay + 1}}; make(lot, lift, t, plan); planted(Unusual::DuplicateReading); return true;
        case 12:
            twin(true);
            plan.isReadout = true;
            plan.reading = {{"wet_density_lb_ft3", m_lastReading.body.at("wet_density_lb_ft3")}, {"water_content_pct", m_lastReading.body.at("water_content_pct")}};
            make(lot, lift, t, plan);
            planted(Unusual::DuplicateReading);
            return true;
        case 13:  // the clock set back, between two counts of the gauge
            plan.shift = -1050;
            make(lot, lift, t, plan);
            planted(Unusual::ImpossibleTime);
            return true;
        case 14:
            twin(false);
            plan.reading = {{"density_count", m_lastReading.body.at("density_count")}, {"moisture_count", m_lastReading.body.at("moisture_count")}};
            make(lot, lift, t, plan);
            planted(Unusual::SameCountsTwice);
            return true;
        default: {  // 50 ft from a test that failed: it closes nothing
            Test failed = t;
            failed.percent = m_truth.minimum - 1;
            failed.result = "fail";
            failed.north = m_truth.north0 + m_truth.lotLength * (lot + 0.5);
            make(lot, lift, failed, ordinary());
            t.isRandom = false;
            t.retestOf = m_truth.tests.back().number;
            t.north = failed.north + 50;
            t.east = failed.east;
            plan.site = {{"purpose", "retest"}, {"retest_of", id(Tests, std::stoi(t.retestOf))}, {"rework", "rolled again"}};
            make(lot, lift, t, plan);
            planted(Unusual::RetestElsewhere);
            return true;
        }
        }
    }

    int m_number;
    std::mt19937_64 m_random;
    Store m_store;
    Truth m_truth;
    const char* m_expires = "";
    std::string m_by, m_old, m_standards[2];
    Record m_lastReading;
    int m_day = 0, m_inDay = 0, m_fault = 0;
};

}  // namespace

Truth writeContract(const std::string& path, int number, const Size& size, std::uint64_t seed)
{
    return Writer(path, number, size, seed).write();
}

}  // namespace programme
