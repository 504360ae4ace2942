// The page of the map, pixel by pixel, against the pictures in tests/app/goldens: the demo and ten thousand tests, in each theme, on the software
// renderer, which draws the same everywhere. GROUNDCOUNT_WRITE_GOLDENS=FOLDER writes the pictures that are seen; look at them before they are kept.
#include "app/command_bench.h"
#include "app/running_app.h"
#include "programme/contract.h"

#include <QImage>
#include <QStandardPaths>

using namespace groundcount;

namespace {

// Fonts lie in the program, and amd64 and arm64 were seen to draw the same; other versions of FreeType may place a grey pixel beside.
constexpr int kLeastDifference = 24;      // of 255, in one channel
constexpr double kMostPixelsPct = 0.02;  // 65 pixels: a quarter of a symbol

QString goldenOf(const QString& name)
{
    return QStringLiteral(GROUNDCOUNT_SOURCE_DIR "/tests/app/goldens/") + name;
}

bool differs(QRgb a, QRgb b)
{
    return std::max({std::abs(qRed(a) - qRed(b)), std::abs(qGreen(a) - qGreen(b)), std::abs(qBlue(a) - qBlue(b))}) > kLeastDifference;
}

int differing(const QImage& a, const QImage& b)
{
    int count = 0;
    for (int y = 0; y < a.height(); ++y)
        for (int x = 0; x < a.width(); ++x)
            count += differs(a.pixel(x, y), b.pixel(x, y)) ? 1 : 0;
    return count;
}

bool isSettled(const QQuickWindow& window)
{
    const auto all = window.findChildren<QObject*>();
    return std::none_of(all.begin(), all.end(), [](QObject* one) {
        const auto* item = qobject_cast<QQuickItem*>(one);
        const QVariant settled = item && item->isVisible() && item->width() > 0 && item->height() > 0 ? one->property("settled") : QVariant();
        return one->property("reading").toBool() || (settled.isValid() && !settled.toBool());
    });
}

}  // namespace

class MapGoldenTest : public QObject {
    Q_OBJECT

    Bench m_bench;

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        const auto played = m_bench.play(QStringLiteral("demo.fieldbook"));
        QVERIFY2(played.code == 0, played.err.constData());
        const auto truth = programme::writeContract(m_bench.path(QStringLiteral("many.fieldbook")).toStdString(), 1, {14, 6, 120, 97}, 20261127);
        QVERIFY(truth.tests.size() >= 10'000);
    }

    void thePageIsAsItWas_data()
    {
        QTest::addColumn<QString>("book");
        QTest::addColumn<QString>("theme");
        for (const char* book : {"demo", "many"})
            for (const char* theme : {"day", "sun", "dusk"})
                QTest::addRow("%s, %s", book, theme) << QString::fromLatin1(book) << QString::fromLatin1(theme);
    }
    void thePageIsAsItWas()
    {
        QFETCH(QString, book);
        QFETCH(QString, theme);
        ui::StartOptions options;
        options.book = m_bench.path(book + QStringLiteral(".fieldbook"));
        options.place = QStringLiteral("map");
        options.theme = theme;
        options.language = QStringLiteral("en");
        options.text = QStringLiteral("100");
        options.size = {390, 844};
        options.at = QDateTime::fromString(QStringLiteral("2026-06-09T14:12:00-05:00"), Qt::ISODate);
        RunningApp app;
        QVERIFY(app.start(options));
        QVERIFY(app.waitFor("groundMap"));
        int quiet = 0;
        QVERIFY(QTest::qWaitFor([&] {
            app.window()->update();
            quiet = isSettled(*app.window()) ? quiet + 1 : 0;
            return quiet > 20;
        }, 20'000));
        const QImage seen = app.window()->grabWindow().convertToFormat(QImage::Format_RGB32);
        const QString name = QStringLiteral("map-%1-%2.png").arg(book, theme);
        if (const QString folder = qEnvironmentVariable("GROUNDCOUNT_WRITE_GOLDENS"); !folder.isEmpty()) {
            QVERIFY(seen.save(folder + '/' + name));
            return;
        }
        const QImage golden = QImage(goldenOf(name)).convertToFormat(QImage::Format_RGB32);
        QVERIFY2(!golden.isNull(), qPrintable(goldenOf(name) + " is missing"));
        QCOMPARE(seen.size(), golden.size());
        const int many = differing(seen, golden);
        if (100.0 * many > kMostPixelsPct * seen.width() * seen.height()) {
            const QString kept = QDir::current().filePath(name);
            seen.save(kept);
            QFAIL(qPrintable(QStringLiteral("%1 pixels differ from %2; what was seen: %3").arg(many).arg(goldenOf(name), kept)));
        }
    }

    /// The mark of the failures in one cluster, taken out of the picture, is more than what is allowed.
    void aSymbolThatIsNotThereIsSeen()
    {
        const QImage golden = QImage(goldenOf(QStringLiteral("map-many-day.png"))).convertToFormat(QImage::Format_RGB32);
        QVERIFY(!golden.isNull());
        QImage without = golden;
        for (int y = 0; y < golden.height() / 3; ++y)
            for (int x = 0; x < golden.width(); ++x)
                if (const QRgb p = golden.pixel(x, y); qRed(p) - qGreen(p) > 80 && qRed(p) - qBlue(p) > 80)
                    without.setPixel(x, y, qRgb(250, 248, 240));
        QVERIFY(100.0 * differing(golden, without) > kMostPixelsPct * golden.width() * golden.height());
    }
};

QTEST_MAIN(MapGoldenTest)
#include "map_golden_test.moc"
