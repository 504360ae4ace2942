#include "gis/alignment_reader.h"

#include <QtTest>
#include <cmath>
#include <numbers>

using namespace groundcount;

namespace {

constexpr const char* kBody = R"({"name": "Levee crest", "unit": "ftUS", "begin_station": "1000.00", "begin_north": "2247404.25",
 "begin_east": "6561666.667", "begin_azimuth_deg": "90", "elements": [{"kind": "line", "length": "400"},
 {"kind": "curve", "radius": "900", "turn": "right", "length": "706.858347"}, {"kind": "line", "length": "250.5"}],
 "equations": [{"back": "1200", "ahead": "1300.5"}], "drawn_by": "left alone"})";

std::string with(const char* before, const char* after)
{
    const QString changed = QString(kBody).replace(before, after);
    return changed == kBody ? "the text to change is not there" : changed.toStdString();
}

QString refusal(const std::string& body)
{
    const auto line = gis::alignmentFrom(body);
    return line ? QString("accepted") : QString::fromStdString(line.error().what);
}

}  // namespace

class AlignmentReaderTest : public QObject {
    Q_OBJECT
private slots:
    void readsLineCurveAndEquation()
    {
        const auto line = gis::alignmentFrom(kBody);
        QVERIFY2(line, qPrintable(refusal(kBody)));
        QVERIFY(std::abs(line->lengthFt() - (400 + 706.858347 + 250.5)) < 1e-9);
        // 400 east; an arc of 45 degrees at R 900 to the right gains R sin 45 east and loses R (1 - cos 45) north; then south-east.
        const double half = std::numbers::sqrt2 / 2;
        const auto end = line->at(method::Station{1300.5 + 200 + 706.858347 + 250.5, 1}, 0);
        QVERIFY(end);
        QVERIFY(std::abs(end->eastFt - (6561666.667 + 400 + 900 * half + 250.5 * half)) < 1e-4);
        QVERIFY(std::abs(end->northFt - (2247404.25 - 900 * (1 - half) - 250.5 * half)) < 1e-4);
    }
    void turnsLeftWhenTold()
    {
        const auto line = gis::alignmentFrom(with("right", "left"));
        QVERIFY(line);
        QVERIFY(std::abs(*line->azimuthDeg(method::Station{2450, 1}) - 45) < 1e-6);
    }
    void refusesBrokenBodiesInOneSentence_data()
    {
        QTest::addColumn<QString>("before");
        QTest::addColumn<QString>("after");
        QTest::addColumn<QString>("what");
        const auto row = [](const char* before, const char* after, const char* what) { QTest::newRow(what) << before << after << what; };
        row("ftUS", "chains", "The alignment must have unit ft or ftUS or m; it is \"chains\".");
        row("\"begin_station\": \"1000.00\",", "", "The alignment needs the number \"begin_station\".");
        row("\"2247404.25\"", "\"NaN\"", "\"begin_north\"");
        row("\"2247404.25\"", "null", "\"begin_north\" must be a decimal number");
        row("\"400\"", "\"0\"", "The alignment's elements 1 must have a length above 0; it is 0.000000.");
        row("\"900\"", "\"-900\"", "The alignment's elements 2 must have a radius above 0; it is -900.000000.");
        row("\"turn\": \"right\",", "", "The alignment's elements 2 needs the text \"turn\".");
        row("right", "straight", "must have turn left or right; it is \"straight\"");
        row("\"curve\"", "\"spiral\"", "must have kind line or curve; it is \"spiral\"");
        row("\"elements\"", "\"pieces\"", "at least one tangent or arc");
        row("\"706.858347\"", "\"6000\"", "less than 360 degrees");
        row("\"back\": \"1200\"", "\"back\": \"900\"", "equation");
        row("{\"name\"", "{\"name", "must be a JSON object");
        row(kBody, "[1, 2]", "The alignment must be a JSON object.");
        row(kBody, "", "The alignment must be a JSON object.");
    }
    void refusesBrokenBodiesInOneSentence()
    {
        QFETCH(QString, before);
        QFETCH(QString, after);
        QFETCH(QString, what);
        const QString body = QString(kBody).replace(before, after);
        QVERIFY(body != kBody);
        QVERIFY2(refusal(body.toStdString()).contains(what), qPrintable(refusal(body.toStdString())));
    }
};

QTEST_GUILESS_MAIN(AlignmentReaderTest)
#include "alignment_reader_test.moc"
