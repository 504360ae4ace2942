#pragma once

#include "book/keys.h"
#include "book/store.h"
#include "method/rules/rule_set.h"
#include "view/session.h"
#include "view/test_sheet.h"

#include <QDateTime>
#include <QString>
#include <QTemporaryDir>
#include <QtTest>

#include <memory>

namespace groundcount::tests {
namespace sample {


using book::Body;

inline constexpr double kNorth0 = 482000;
inline constexpr double kEast0 = 1204600;
inline constexpr double kStation0 = 5000;

inline std::string text(double value)
{
    return QString::number(value, 'f', 3).toStdString();
}

inline Body drawnSite(int number, double station, double offset)
{
    return {{"number", number}, {"r_along", "0.5"}, {"r_across", "0.5"}, {"station", text(station)}, {"offset_ft", text(offset)}, {"grid_north_usft", text(kNorth0 + station - kStation0)}, {"grid_east_usft", text(kEast0 + offset)}};
}

/// Seals set-up records one after the other; the first refusal ends the program, since no test means anything after it.
class Maker {
public:
    Maker(book::Store& store, std::string by, QDateTime at) : m_store(store), m_by(std::move(by)), m_at(std::move(at)) {}

    std::string seal(const char* kind, const std::string& subject, Body body)
    {
        book::Entry entry;
        entry.kind = kind;
        entry.subject = subject;
        entry.by = m_by;
        entry.at = m_at.toUTC().toString(Qt::ISODateWithMs).toStdString();
        entry.offsetMinutes = m_at.offsetFromUtc() / 60;
        entry.body = std::move(body);
        const auto record = m_store.seal(entry);
        if (!record)
            qFatal("sample book, %s: %s", kind, record.error().what.c_str());
        return record->hash;
    }

private:
    book::Store& m_store;
    std::string m_by;
    QDateTime m_at;
};

}  // namespace sample

/// An invented job in a field book of its own: a straight line north from station 50+00, lot N-4 with two lifts and four
/// drawn sites in the upper one, a gauge with two calibrated depths and the day's accepted standard count.
class SampleBook {
public:
    SampleBook();

    /// What differs from the plain book.
    struct Extras {
        bool trenchOffset = false;
        bool wall = false;          ///< 17 in. from station 53+38.3, 14.2 Rt
        bool standardCount = true;
    };
    explicit SampleBook(const Extras& extras);

    view::Session& session() { return *m_session; }
    /// Another session on the same file, as after the program was killed.
    std::unique_ptr<view::Session> reopened() const;
    void wait(int seconds);

    const std::string lot, lowerLift, lift, gauge;
    QString siteId(int number) const;

private:
    void make(const Extras& extras);
    std::unique_ptr<view::Session> openSession() const;

    QTemporaryDir m_folder;
    QDateTime m_now;
    std::string m_draw;
    std::unique_ptr<view::Session> m_session;
};

/// Steps of a test done as a person would, each sealed; a step that is refused fails the running test.
bool placeByTape(view::TestSheet& sheet, const QString& station, const QString& offset, int purpose);
bool clearByEye(view::TestSheet& sheet);
bool seatAtEightInches(view::TestSheet& sheet);
bool countReadout(view::TestSheet& sheet, SampleBook& book, const QString& wet, const QString& water);
bool digNothingCoarse(view::TestSheet& sheet);

/// Types the texts into the open entry and closes it.
bool typeEntry(view::TestSheet& sheet, const QStringList& texts);

inline SampleBook::SampleBook() : SampleBook(Extras{}) {}

inline SampleBook::SampleBook(const Extras& extras)
    : lot(book::newSubject()), lowerLift(book::newSubject()), lift(book::newSubject()), gauge(book::newSubject()),
      m_now(QDate(2026, 6, 9), QTime(10, 21), Qt::OffsetFromUTC, -5 * 3600)
{
    make(extras);
    m_session = openSession();
}

inline void SampleBook::make(const Extras& extras)
{
    const auto key = book::DeviceKey::loadOrMake(m_folder.filePath("device.key").toStdString());
    if (!key)
        qFatal("%s", key.error().what.c_str());
    auto store = book::Store::open(m_folder.filePath("sample.fieldbook").toStdString(), book::OpenMode::Create, *key);
    if (!store)
        qFatal("%s", store.error().what.c_str());
    const auto person = book::newSubject();
    const auto crs = book::newSubject();
    const auto rules = book::newSubject();
    const auto material = book::newSubject();
    const auto proctor = book::newSubject();
    sample::Maker maker(*store, person, m_now.addSecs(-3 * 3600));
    maker.seal("person", person, {{"name", "R. Example"}, {"role", "technician"}});
    maker.seal("crs", crs, {{"epsg", 6411}, {"name", "NAD83(2011) / Arkansas North (ftUS)"}, {"unit", "ftUS"}});
    maker.seal("rule-set", rules, {{"rules", book::Body::parse(method::toJson(method::neutralRules()))}});
    maker.seal("job", book::newSubject(), {{"name", "Sample embankment"}, {"density_unit", "lb/ft3"}, {"crs", crs}, {"rule_set", rules}});
    maker.seal("alignment", book::newSubject(), {{"name", "Line A"}, {"unit", "ftUS"}, {"begin_station", sample::text(sample::kStation0)}, {"begin_north", sample::text(sample::kNorth0)}, {"begin_east", sample::text(sample::kEast0)}, {"begin_azimuth_deg", "0"}, {"elements", {{{"kind", "line"}, {"length", "1200"}}}}});
    maker.seal("gauge", gauge, {{"name", "Gauge 07"}, {"serial", "0007"}, {"prescale", "1"}});
    const auto curve = [](const char* depth, const char* a) {
        return book::Body{{"depth_in", depth}, {"mode", "direct"}, {"a", a}, {"b_per_lb_ft3", "0.02"}, {"c", "0.05"}, {"range_low_lb_ft3", "70"}, {"range_high_lb_ft3", "170"}};
    };
    maker.seal("calibration", book::newSubject(), {{"gauge", gauge}, {"on", "2026-01-15"}, {"curves", book::Body::array({curve("6", "14"), curve("8", "12")})}, {"water", {{"e", "0.02"}, {"slope_per_lb_ft3", "0.0155"}}}});
    if (extras.standardCount)
        maker.seal("standard-count", book::newSubject(), {{"gauge", gauge}, {"density_count", "2800"}, {"moisture_count", "700"}, {"density_before", book::Body::array({"2805"})}, {"moisture_before", book::Body::array({"699"})}, {"accepted", true}});
    if (extras.trenchOffset)
        maker.seal("offset", book::newSubject(), {{"gauge", gauge}, {"offset_kind", "trench"}, {"on", "2026-06-09"}, {"expires", "2026-06-09"}, {"moisture_standard_in_trench", "720"}, {"moisture_standard_outside", "700"}});
    maker.seal("material", material, {{"name", "Silty clay"}});
    maker.seal("proctor", proctor, {{"name", "P-3"}, {"material", material}, {"standard", "T 99"}, {"max_dry_density_lb_ft3", "118.6"}, {"optimum_pct", "12.8"}, {"standard_uncertainty_lb_ft3", "0.8"}, {"coarse_gravity", "2.65"}, {"peak_by", "fit"}});
    maker.seal("lot", lot, {{"name", "N-4"}, {"material", material}, {"proctor", proctor}, {"begin_station", "5000"}, {"end_station", "5600"}, {"left_ft", "40"}, {"right_ft", "40"}, {"minimum_pct", "95"}, {"window", {{"kind", "points"}, {"low", "-2"}, {"high", "2"}}}, {"tests_per_lift", 4}, {"sublots", 4}});
    maker.seal("lift", lowerLift, {{"lot", lot}, {"number", 6}, {"thickness_in", "12"}});
    maker.seal("lift", lift, {{"lot", lot}, {"number", 7}, {"thickness_in", "12"}});
    m_draw = maker.seal("draw", book::newSubject(), {{"lot", lot}, {"lift", lift}, {"generator", "sample"}, {"seed", "1"}, {"policy", "shrink"}, {"sites", book::Body::array({sample::drawnSite(1, 5070, -20), sample::drawnSite(2, 5210, 8), sample::drawnSite(3, 5338, 14), sample::drawnSite(4, 5520, -5)})}, {"rejected", book::Body::array()}});
    if (extras.wall)
        maker.seal("obstacle", book::newSubject(), {{"name", "Drop inlet"}, {"obstacle_kind", "wall"}, {"grid_north_usft", sample::text(sample::kNorth0 + 338.3)}, {"grid_east_usft", sample::text(sample::kEast0 + 14.2 + 17.0 / 12)}, {"uncertainty_ft", "0.1"}});
}

inline std::unique_ptr<view::Session> SampleBook::openSession() const
{
    auto session = std::make_unique<view::Session>(nullptr);
    session->setClock(m_now);
    const auto opened = session->open(m_folder.filePath("sample.fieldbook"), m_folder.filePath("device.key"));
    if (!opened)
        qFatal("%s", opened.error().what.c_str());
    return session;
}

inline std::unique_ptr<view::Session> SampleBook::reopened() const
{
    return openSession();
}

inline void SampleBook::wait(int seconds)
{
    m_now = m_now.addSecs(seconds);
    m_session->setClock(m_now);
}

inline QString SampleBook::siteId(int number) const
{
    return QString::fromStdString(m_draw) + '/' + QString::number(number);
}

inline bool typeEntry(view::TestSheet& sheet, const QStringList& texts)
{
    auto* entry = sheet.entry();
    if (!entry || entry->fields().size() < texts.size())
        return false;
    for (int i = 0; i < texts.size(); ++i)
        entry->field(i)->type(texts[i]);
    entry->done();
    return sheet.entry() == nullptr;
}

inline bool placeByTape(view::TestSheet& sheet, const QString& station, const QString& offset, int purpose)
{
    sheet.place()->typePlace();
    if (!typeEntry(sheet, {station, offset}))
        return false;
    sheet.place()->pickPurpose(purpose);
    return sheet.seal();
}

inline bool clearByEye(view::TestSheet& sheet)
{
    for (auto* card : sheet.clear()->hazards())
        static_cast<view::HazardCard*>(card)->act(0);
    return sheet.seal();
}

inline bool seatAtEightInches(view::TestSheet& sheet)
{
    sheet.seat()->pickSurface(0);
    sheet.seat()->pickRock(0);
    sheet.seat()->pickDepth(1);
    sheet.seat()->typeHole();
    return typeEntry(sheet, {"10"}) && sheet.seal();
}

inline bool countReadout(view::TestSheet& sheet, SampleBook& book, const QString& wet, const QString& water)
{
    sheet.countStep()->start();
    book.wait(61);
    sheet.countStep()->tick();
    sheet.countStep()->pickForm(1);
    sheet.countStep()->enterReading();
    return typeEntry(sheet, {wet, water}) && sheet.seal();
}

inline bool digNothingCoarse(view::TestSheet& sheet)
{
    sheet.dig()->pickSample(0);
    return sheet.seal();
}

inline void sealed(view::Session& session, const char* kind, const std::string& subject, const book::Body& body)
{
    if (const auto record = session.seal(kind, subject, body); !record)
        qFatal("%s", record.error().what.c_str());
}

/// A second line, 1000 ft east of the first, that runs east; a lot along it.
inline std::string addRamp(view::Session& session)
{
    const auto line = book::newSubject(), lot = book::newSubject();
    sealed(session, "alignment", line, {{"name", "Ramp B"}, {"unit", "ftUS"}, {"begin_station", "5000"}, {"begin_north", sample::text(sample::kNorth0)},
                                        {"begin_east", sample::text(sample::kEast0 + 1000)}, {"begin_azimuth_deg", "90"},
                                        {"elements", {{{"kind", "line"}, {"length", "600"}}}}});
    sealed(session, "lot", lot, {{"name", "R-1"}, {"alignment", line}, {"material", session.snapshot().materials.front().id},
                                   {"proctor", session.snapshot().proctors.front().id}, {"begin_station", "5100"}, {"end_station", "5500"}, {"left_ft", "20"},
                                   {"right_ft", "20"}, {"minimum_pct", "95"}, {"tests_per_lift", 4}, {"sublots", 4}});
    sealed(session, "lift", book::newSubject(), {{"lot", lot}, {"number", 3}, {"thickness_in", "8"}});
    return line;
}

}  // namespace groundcount::tests
