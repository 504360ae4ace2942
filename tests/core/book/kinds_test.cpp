#include "book/kinds.h"

#include "book/canonical.h"

#include <QFile>
#include <QRegularExpression>
#include <QtTest>

using namespace groundcount::book;

namespace {

const std::string kId = "11111111-2222-4333-8444-555555555555";
const std::string kHash(64, 'a');

/// One lawful body per kind.
std::map<std::string, Body> lawful()
{
    return {
        {"job", {{"name", "Sample Job"}, {"density_unit", "lb/ft3"}}},
        {"crs", {{"epsg", 2277}, {"name", "State plane"}, {"unit", "ftUS"}}},
        {"rule-set", {{"rules", Body::object()}}},
        {"person", {{"name", "A. Technician"}, {"role", "technician"}}},
        {"retired-key", {{"device", kHash}, {"last", 12}, {"why", "phone lost"}}},
        {"gauge", {{"name", "G-1"}, {"serial", "0001"}, {"prescale", "16"}}},
        {"calibration", {{"gauge", kId}, {"on", "2026-01-05"}, {"expires", "2027-01-05"},
                         {"curves", Body::array({{{"depth_in", "8"}, {"mode", "direct"}, {"a", "9.7"}, {"b_per_lb_ft3", "0.0185"}, {"c", "-0.06"}}})},
                         {"water", {{"e", "0.02"}, {"slope_per_lb_ft3", "0.011"}}}}},
        {"leak-test", {{"gauge", kId}, {"on", "2026-01-05"}, {"result", "no leak"}}},
        {"custody", {{"event", "signed out"}, {"barriers", 2}, {"badge", true}}},
        {"standard-count", {{"gauge", kId}, {"density_count", "2850"}, {"moisture_count", "684.5"},
                            {"density_before", Body::array({"2848"})}, {"moisture_before", Body::array()}, {"accepted", true}}},
        {"stability-test", {{"gauge", kId}, {"density_counts", Body::array({"2850", "2861"})}, {"moisture_counts", Body::array({"684", "690"})}, {"seconds", 60},
                            {"low", "0.75"}, {"high", "1.25"}, {"density_ratio", "0.98"}, {"moisture_ratio", "1.10"}, {"passed", true}}},
        {"material", {{"name", "Clay"}}},
        {"proctor", {{"name", "P-1"}, {"material", kId}, {"standard", "T 99"}, {"max_dry_density_lb_ft3", "112.4"},
                     {"optimum_pct", "14.2"}, {"peak_by", "curve"}}},
        {"offset", {{"gauge", kId}, {"offset_kind", "trench"}, {"on", "2026-06-09"},
                    {"moisture_standard_in_trench", "715"}, {"moisture_standard_outside", "684"}}},
        {"alignment", {{"name", "A"}, {"unit", "ft"}, {"begin_station", "1000"}, {"begin_north", "1"}, {"begin_east", "2"},
                       {"begin_azimuth_deg", "45"}, {"elements", Body::array({{{"kind", "line"}, {"length", "500"}}})}}},
        {"lot", {{"name", "Lot 1"}, {"material", kId}, {"proctor", kId}, {"minimum_pct", "95"}, {"tests_per_lift", 4},
                 {"window", {{"kind", "points"}, {"low", "-2"}, {"high", "2"}}}}},
        {"lift", {{"lot", kId}, {"number", 3}}},
        {"draw", {{"lot", kId}, {"lift", kId}, {"generator", "g"}, {"seed", "s"}, {"policy", "p"},
                  {"sites", Body::array({{{"number", 1}, {"r_along", "0.5"}, {"r_across", "0.5"}, {"station", "1050"},
                                          {"offset_ft", "-3"}, {"grid_north_usft", "1"}, {"grid_east_usft", "2"}}})},
                  {"rejected", Body::array()}}},
        {"obstacle", {{"name", "Wall"}, {"obstacle_kind", "wall"}, {"grid_north_m", "1"}, {"grid_east_m", "2"}}},
        {"test-site", {{"number", "26"}, {"gauge", kId}, {"lot", kId}, {"lift", kId}, {"purpose", "random"},
                       {"latitude_deg", "32.9"}, {"longitude_deg", "-96.9"}, {"grid_north_usft", "1"}, {"grid_east_usft", "2"}}},
        {"clearance", {{"hazards", Body::array({{{"hazard", "people"}, {"known_by", "eye"}, {"required_ft", "15"}, {"answer", "clear"}}})}}},
        {"seating", {{"surface", "smooth"}, {"rocks", false}, {"depth_in", "8"}}},
        {"reading", {{"number", 1}, {"mode", "direct"}, {"depth_in", "8"}, {"orientation", "along"}, {"seconds", 60},
                     {"density_count", 1800}, {"moisture_count", 120}, {"standard_count", kHash}}},
        {"sample", {{"waiting", ""}, {"total_mass_g", "3050"}, {"retained_mass_g", "410"}, {"sieve", "3/4 in."}}},
        {"verdict", {{"result", "pass"}, {"reasons", Body::array()}, {"figures", {{"percent_compaction", "95.8"}}},
                     {"rule_set", kHash}, {"core", "0.1.0"}, {"from", Body::array({kHash})}}},
        {"review", {{"word", "accepted"}}},
        {"photo", {{"blob", kHash}, {"media_type", "image/jpeg"}}},
        {"note", {{"text", "wet"}}},
        {"void", Body::object()},
    };
}

Body bodyOf(const char* kind)
{
    return lawful().at(kind);
}

}  // namespace

class KindsTest : public QObject {
    Q_OBJECT

private slots:
    void everyKindOfTheFormatPageIsRead();
    void everyRequiredKeyIsMissedByName();
    void everyKeyOfTheFormatPageIsKnown();
    void wrongValuesNameTheKey_data();
    void wrongValuesNameTheKey();
    void unknownKeysAndKindsPass();
    void twoUnitsOfOneKeyAreRefused();
    void aTestWithoutPositionMustSaySo();
};

void KindsTest::everyKindOfTheFormatPageIsRead()
{
    const auto bodies = lawful();
    for (const auto& [kind, body] : bodies) {
        QVERIFY2(kindShape(kind), kind.c_str());
        const auto read = checkBody(kind, body);
        QVERIFY2(read, read ? "" : read.error().what.c_str());
    }
    QCOMPARE(setupKinds().size() + groundKinds().size() + testKinds().size(), bodies.size());
}

void KindsTest::everyRequiredKeyIsMissedByName()
{
    int missed = 0;
    for (const auto& [kind, body] : lawful()) {
        for (const Key& key : kindShape(kind)->keys) {
            if (key.need == Need::May)
                continue;
            Body less = body;
            for (const char* ending : endings(key.unit))
                less.erase(std::string(key.name) + ending);
            const auto read = checkBody(kind, less);
            QVERIFY2(!read, (kind + " " + key.name).c_str());
            QVERIFY2(read.error().what.find(key.name) != std::string::npos, read.error().what.c_str());
            QVERIFY2(read.error().what.rfind(kind + ": ", 0) == 0, read.error().what.c_str());
            ++missed;
        }
    }
    QVERIFY(missed > 60);
}

void KindsTest::everyKeyOfTheFormatPageIsKnown()
{
    // docs/record-format.md and the shapes must tell the same story: every top-level key of a shape stands in its row.
    QFile page(GROUNDCOUNT_SOURCE_DIR "/docs/record-format.md");
    QVERIFY(page.open(QIODevice::ReadOnly));
    QMap<QString, QString> rows;
    for (const QString& line : QString::fromUtf8(page.readAll()).split('\n')) {
        const auto row = QRegularExpression("^\\| (`[a-z-]+`(?:, `[a-z-]+`)*) \\| [^|]+ \\| (.*) \\|$").match(line);
        if (row.hasMatch())
            for (const QString& kind : row.captured(1).split(", "))
                rows[QString(kind).remove('`')] = row.captured(2);
    }
    int keys = 0;
    for (const auto family : {setupKinds(), groundKinds(), testKinds()})
        for (const KindShape& shape : family) {
            QVERIFY2(rows.contains(shape.kind), shape.kind);
            for (const Key& key : shape.keys) {
                QVERIFY2(rows[shape.kind].contains(key.name), (std::string(shape.kind) + " " + key.name).c_str());
                ++keys;
            }
        }
    QVERIFY(keys > 100);
}

void KindsTest::wrongValuesNameTheKey_data()
{
    QTest::addColumn<QByteArray>("kind");
    QTest::addColumn<QByteArray>("pointer");
    QTest::addColumn<QByteArray>("value");
    QTest::addColumn<QByteArray>("says");
    const auto row = [](const char* kind, const char* pointer, const char* value, const char* says) {
        QTest::addRow("%s %s %s", kind, pointer, value) << QByteArray(kind) << QByteArray(pointer) << QByteArray(value) << QByteArray(says);
    };
    row("reading", "/density_count", "\"0\"", "reading: density_count must be a whole number above 0; it is \"0\".");
    row("reading", "/density_count", "0", "reading: density_count must be a whole number above 0; it is 0.");
    row("reading", "/density_count", "-5", "must be a whole number above 0; it is -5.");
    row("reading", "/density_count", "1.5", "density_count must be a whole number above 0; it is 1.5.");
    row("reading", "/density_count", "18446744073709551615", "density_count must be a whole number");
    row("reading", "/wet_density_lb_ft3", "\"121\"", "counts or a readout may stand, not both");
    row("reading", "/orientation", "\"turned\"", "orientation must be one of \"along\", \"turned 90\", \"turned 180\"; it is \"turned\".");
    row("proctor", "/max_dry_density_lb_ft3", "112.4", "max_dry_density_lb_ft3 must be a decimal number above 0 as text; it is 112.4.");
    row("proctor", "/max_dry_density_lb_ft3", "\"NaN\"", "above 0 as text; it is \"NaN\".");
    row("proctor", "/max_dry_density_lb_ft3", "\"0.0\"", "above 0 as text");
    row("proctor", "/points", "[{\"water_content_pct\":\"1\"}]", "proctor: points[0].one of dry_density_lb_ft3, dry_density_kg_m3");
    row("calibration", "/curves/0/a", "\"-1\"", "calibration: curves[0].a must be a decimal number above 0");
    row("calibration", "/curves", "[]", "curves must hold at least one depth");
    row("calibration", "/expires", "\"2025-01-05\"", "expires must not lie before on");
    row("calibration", "/on", "\"2026-13-05\"", "on must be a date YYYY-MM-DD");
    row("crs", "/epsg", "\"2277\"", "epsg must be a whole number above 0");
    row("lot", "/maximum_pct", "\"94.9\"", "maximum_pct must not lie below minimum_pct (95); it is \"94.9\".");
    row("lot", "/window", "{\"kind\":\"points\"}", "window needs low, high or both");
    row("lot", "/window", "{\"kind\":\"points\",\"low\":\"2\",\"high\":\"-2\"}", "window.high must not lie below window.low");
    row("offset", "/offset_kind", "\"density bias\"", "one of bias_lb_ft3, bias_kg_m3");
    row("offset", "/offset_kind", "\"moisture\"", "offset: variant must be one of");
    row("test-site", "/latitude_deg", "\"90.01\"", "latitude_deg must be within +-90");
    row("test-site", "/purpose", "\"retest\"", "retest_of must be a UUID");
    row("sample", "/other_method", "\"oven\"", "stand together");
    row("verdict", "/figures/dry_density_lb_ft3", "95.8", "figures.dry_density_lb_ft3 must be a decimal number as text");
    row("verdict", "/figures/unrounded", "{\"x\":\"inf\"}", "figures.unrounded.x must be a decimal number");
    row("alignment", "/elements/0/kind", "\"curve\"", "a curve needs radius and turn");
    row("note", "/text", "\"\"", "note: text must be text that is not empty");
    row("clearance", "/hazards/0/answer", "\"yes\"", "clearance: hazards[0].answer must be one of");
}

void KindsTest::wrongValuesNameTheKey()
{
    QFETCH(QByteArray, kind);
    QFETCH(QByteArray, pointer);
    QFETCH(QByteArray, value);
    QFETCH(QByteArray, says);
    Body body = bodyOf(kind);
    body[Body::json_pointer(pointer.toStdString())] = readJson(value.toStdString()).value();
    const auto read = checkBody(kind.toStdString(), body);
    QVERIFY(!read);
    QVERIFY2(QByteArray::fromStdString(read.error().what).contains(says), read.error().what.c_str());
}

void KindsTest::unknownKeysAndKindsPass()
{
    Body body = bodyOf("reading");
    body["temperature_deg_f"] = 88;
    QVERIFY(checkBody("reading", body));
    QVERIFY(checkBody("soil-photo-series", Body{{"anything", 1}}));
    QVERIFY(!checkBody("reading", Body::array()));
}

void KindsTest::twoUnitsOfOneKeyAreRefused()
{
    Body body = bodyOf("proctor");
    body["max_dry_density_kg_m3"] = "1800";
    const auto read = checkBody("proctor", body);
    QVERIFY(!read);
    QVERIFY(read.error().what.find("max_dry_density_lb_ft3 and max_dry_density_kg_m3 both do") != std::string::npos);
    QCOMPARE(withUnit(bodyOf("proctor"), "max_dry_density", Unit::Density).unit, std::string("lb_ft3"));
}

void KindsTest::aTestWithoutPositionMustSaySo()
{
    Body body = bodyOf("test-site");
    body.erase("latitude_deg");
    QVERIFY(!checkBody("test-site", body));
    body["position"] = "not recorded";
    QVERIFY(!checkBody("test-site", body));  // a random site without position proves nothing
    body["purpose"] = "directed";
    QVERIFY(checkBody("test-site", body));
}

QTEST_GUILESS_MAIN(KindsTest)
#include "kinds_test.moc"
