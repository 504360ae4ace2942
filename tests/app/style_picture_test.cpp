#include "gis/layer_style.h"
#include "map/symbol_paint.h"

#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QStandardPaths>
#include <QtTest>

using namespace groundcount;

namespace {

constexpr int kScale = 10;  // px to a grid unit
constexpr int kSide = 29 * kScale;

QImage empty()
{
    QImage image(kSide, kSide, QImage::Format_RGB32);
    image.fill(Qt::magenta);  // what no symbol covers
    return image;
}

/// A symbol of the hand-over, drawn by a program that knows nothing of the app.
QImage handedOver(const std::string& svg)
{
    QProcess convert;
    convert.start("rsvg-convert", {"-w", QString::number(kSide), "-h", QString::number(kSide)});
    convert.write(svg.data(), static_cast<qint64>(svg.size()));
    convert.closeWriteChannel();
    if (!convert.waitForFinished(30000) || convert.exitCode() != 0)
        return {};
    QImage image = empty();
    QPainter painter(&image);
    painter.drawImage(0, 0, QImage::fromData(convert.readAllStandardOutput(), "PNG"));
    return image;
}

QImage ofTheApp(map::PointState state)
{
    QImage image = empty();
    QPainter painter(&image);
    map::paintState(painter, state, QRectF(2.5 * kScale, 2.5 * kScale, 24 * kScale, 24 * kScale), {}, map::Ground::Drawn);
    return image;
}

int apart(QRgb a, QRgb b)
{
    return std::abs(qRed(a) - qRed(b)) + std::abs(qGreen(a) - qGreen(b)) + std::abs(qBlue(a) - qBlue(b));
}

/// Whether `image` has this colour within 0.2 grid units of a place: that far the chords of a stroked circle may stray.
bool hasNearby(const QImage& image, int x, int y, QRgb colour)
{
    constexpr int kReach = 2;
    for (int v = std::max(0, y - kReach); v <= std::min(kSide - 1, y + kReach); ++v)
        for (int u = std::max(0, x - kReach); u <= std::min(kSide - 1, x + kReach); ++u)
            if (apart(image.pixel(u, v), colour) <= 60)
                return true;
    return false;
}

/// Share of pixels of either picture whose colour the other one has nowhere near.
double difference(const QImage& a, const QImage& b)
{
    int different = 0;
    for (int y = 0; y < kSide; ++y)
        for (int x = 0; x < kSide; ++x)
            different += hasNearby(a, x, y, b.pixel(x, y)) && hasNearby(b, x, y, a.pixel(x, y)) ? 0 : 1;
    return static_cast<double>(different) / (kSide * kSide);
}

}  // namespace

/// The owner's GIS shows the symbols of the app.
class StylePictureTest : public QObject {
    Q_OBJECT
private slots:
    void initTestCase()
    {
        if (QStandardPaths::findExecutable("rsvg-convert").isEmpty())
            QSKIP("rsvg-convert is missing: Debian package librsvg2-bin");
    }
    void handsOverTheSymbolsOfTheMap_data()
    {
        QTest::addColumn<QString>("word");
        QTest::addColumn<int>("state");
        for (const auto& [word, state] : {std::pair{"pass", map::PointState::Pass}, {"fail", map::PointState::Fail}, {"waiting", map::PointState::Waiting},
                                          {"open", map::PointState::Waiting}, {"information only", map::PointState::InformationOnly},
                                          {"void", map::PointState::Void}, {"owed", map::PointState::Owed}})
            QTest::newRow(word) << word << static_cast<int>(state);
    }
    void handsOverTheSymbolsOfTheMap()
    {
        QFETCH(QString, word);
        QFETCH(int, state);
        const QImage theirs = handedOver(gis::stateSymbol(word.toStdString()));
        const QImage ours = ofTheApp(static_cast<map::PointState>(state));
        QCOMPARE(theirs.size(), QSize(kSide, kSide));
        const double share = difference(theirs, ours);
        QVERIFY2(share < 0.01, qPrintable(QString("%1 of the picture").arg(share)));
        // A test that could not tell two states apart would prove nothing.
        for (int other = 0; other < map::kPointStateCount; ++other)
            if (other != state)
                QVERIFY(difference(theirs, ofTheApp(static_cast<map::PointState>(other))) > 0.05);
    }
};

QTEST_MAIN(StylePictureTest)
#include "style_picture_test.moc"
