// Every page with the text at 150 %, in both languages: no text is elided, cut, painted over another or out of the window, and nothing stays English in Spanish.
#include "app/site_sample.h"
#include "app/text_faults.h"
#include "qml/gallery_walk.h"
#include "view/beside_work.h"
#include "view/ui_start.h"

#include <QQmlApplicationEngine>
#include <QQuickWindow>
#include <QRegularExpression>
#include <QStandardPaths>
#include <QXmlStreamReader>

namespace {

/// The English texts of the program whose Spanish differs, as patterns: "%1" stands for anything.
std::vector<QRegularExpression> englishTexts()
{
    QFile file(QStringLiteral(GROUNDCOUNT_SOURCE_DIR "/qml/language/groundcount_es.ts"));
    std::vector<QRegularExpression> patterns;
    if (!file.open(QIODevice::ReadOnly))
        return patterns;
    QXmlStreamReader reader(&file);
    QString source;
    while (!reader.atEnd()) {
        reader.readNext();
        if (!reader.isStartElement())
            continue;
        if (reader.name() == QLatin1String("source"))
            source = reader.readElementText();
        else if (reader.name() == QLatin1String("translation") && !source.contains(QLatin1String("%n"))) {
            const QString spanish = reader.readElementText(QXmlStreamReader::IncludeChildElements);
            QString letters = source;
            letters.remove(QRegularExpression(QStringLiteral("%\\d|[^A-Za-z]")));
            // A pattern of very few letters, or of one word and anything, would fit names and core's own sentences.
            const QStringList words = source.split(QRegularExpression(QStringLiteral("[^A-Za-z]+")));
            const bool isVague = source.contains('%') && std::count_if(words.begin(), words.end(), [](const QString& word) { return word.size() > 2; }) < 2;
            if (spanish != source && letters.size() > 3 && !isVague)
                patterns.emplace_back('^' + QRegularExpression::escape(source).replace(QRegularExpression(QStringLiteral("\\\\%\\d")), QStringLiteral(".+")) + '$');
        }
    }
    return patterns;
}

}  // namespace

class LargeTextTest : public QObject {
    Q_OBJECT

    Bench m_bench;
    std::vector<QRegularExpression> m_english;

    QStringList leftInEnglish(QQuickWindow* window) const
    {
        QStringList found;
        for (const QQuickItem* item : gallery::items(window->contentItem())) {
            const QString text = item->inherits("QQuickText") ? item->property("text").toString().trimmed() : QString();
            for (const auto& english : m_english)
                if (!text.isEmpty() && english.match(text).hasMatch())
                    found << QStringLiteral("in English: ") + text_faults::described(item) + ", pattern " + english.pattern();
        }
        return found;
    }

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        const auto played = m_bench.play(QStringLiteral("day.fieldbook"));
        QVERIFY2(played.code == 0, played.err.constData());
        groundcount::view::setForeignReader(Bench::program().toStdString());
        site_sample::plans(m_bench);
        site_sample::walls(m_bench);
        QDir::setCurrent(QFileInfo(m_bench.path(QStringLiteral("day.fieldbook"))).path());
        m_english = englishTexts();
        QVERIFY(m_english.size() > 700);
    }

    void noTextIsCut_data()
    {
        QTest::addColumn<QString>("open");
        QTest::addColumn<QString>("language");
        QTest::addColumn<QSize>("size");
        const QStringList pages{"day", "map", "lots", "kit", "screen", "new", "record:24", "coverage", "hand-over", "server", "publish",
                                "test:24/1", "test:24/2", "test:24/3", "test:24/4", "test:24/5", "test:24/6", "test:26/6",
                                "lot:N-4", "lot:N-4/review", "lot:N-4/figures", "lot:N-4/draw", "lot:N-4/profile", "lot:N-4/tests",
                                "paper:day", "paper:lot:N-4", "paper:review:N-4",
                                "kit:counts", "kit:stability", "kit:custody", "kit:gauge", "kit:material", "kit:person", "kit:rules",
                                "kit:offset", "kit:receiver", "kit:books", "kit:job", "kit:line", "kit:lot", "kit:lot:N-4", "kit:lift:N-4",
                                "kit:site-file", "kit:background",
                                "site-file:plans.geojson", "site-file:walls.dxf"};
        for (const QString& page : pages)
            for (const char* language : {"en", "es"})
                for (const QSize size : {QSize(360, 640), QSize(1280, 800)})
                    QTest::addRow("%s %s %dx%d", qPrintable(page), language, size.width(), size.height()) << page << QString(language) << size;
    }
    void noTextIsCut()
    {
        QTest::failOnWarning(QRegularExpression(QStringLiteral("Binding loop")));
        QFETCH(QString, open);
        QFETCH(QString, language);
        QFETCH(QSize, size);
        QQmlApplicationEngine engine;
        groundcount::ui::StartOptions o;
        o.book = m_bench.path(QStringLiteral("day.fieldbook"));
        o.size = size;
        o.text = QStringLiteral("150");
        o.language = language;
        o.at = QDateTime::fromString(QStringLiteral("2026-06-09T14:12:00-05:00"), Qt::ISODate);
        (QStringList{"day", "map", "lots", "kit"}.contains(open) ? o.place : o.open) = open;
        QVERIFY(groundcount::ui::start(engine, o));
        auto* window = qobject_cast<QQuickWindow*>(engine.rootObjects().constFirst());
        QVERIFY(QTest::qWaitForWindowExposed(window));
        const auto isReading = [&] {
            const auto all = window->findChildren<QObject*>();
            return std::any_of(all.begin(), all.end(), [](const QObject* one) { return one->property("reading").toBool(); });
        };
        QTRY_VERIFY_WITH_TIMEOUT(!isReading(), 20000);
        QTest::qWait(120);
        if (open.startsWith(QStringLiteral("kit:")) || open.startsWith(QStringLiteral("site-file:")))
            QVERIFY2(gallery::byName(window->contentItem(), QStringLiteral("kitSheet")) != nullptr
                         && gallery::byName(window->contentItem(), QStringLiteral("kitSheet"))->property("item").value<QObject*>() != nullptr,
                     "KitSheetLoader.qml knows no such sheet");
        const QString folder = qEnvironmentVariable("GROUNDCOUNT_SHOTS");
        if (!folder.isEmpty())
            window->grabWindow().save(QStringLiteral("%1/%2-%3-%4.png").arg(folder, QString(open).replace(':', '-').replace('/', '-'), language).arg(size.width()));
        const QStringList faults = text_faults::faultsOf(window) + (language == QStringLiteral("es") ? leftInEnglish(window) : QStringList());
        QVERIFY2(faults.isEmpty(), qPrintable('\n' + faults.join('\n')));
    }
};

QTEST_MAIN(LargeTextTest)
#include "large_text_test.moc"
