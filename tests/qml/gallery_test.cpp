// Every gallery page in every size and theme: what the walk finds must obey the design's measures.
// With GROUNDCOUNT_GALLERY=FOLDER the same run writes each page as a PNG (tests/qml/gallery/render.sh).
#include "qml/gallery_walk.h"

#include <QAccessible>
#include <QDir>
#include <QFontInfo>
#include <QImage>

class GalleryTest : public QObject {
    Q_OBJECT

private slots:
    void initTestCase()
    {
        const auto family = groundcount::view::loadFonts();
        QVERIFY2(family.has_value(), family ? "" : family.error().what.c_str());
        QCOMPARE(QFontInfo(QGuiApplication::font()).family(), QStringLiteral("Lato"));
    }

    void pagesObeyTheMeasures_data()
    {
        QTest::addColumn<QString>("page");
        QTest::addColumn<QSize>("size");
        QTest::addColumn<QString>("theme");
        for (const QString& page : gallery::pages()) {
            for (const QSize size : {QSize(360, 640), QSize(412, 915), QSize(1280, 800)}) {
                for (const char* theme : {"day", "sun", "dusk"}) {
                    const QString tag = QStringLiteral("%1-%2x%3-%4").arg(page).arg(size.width()).arg(size.height()).arg(QLatin1String(theme));
                    QTest::newRow(qPrintable(tag)) << page << size << QString::fromLatin1(theme);
                }
            }
        }
    }

    void pagesObeyTheMeasures()
    {
        QFETCH(QString, page);
        QFETCH(QSize, size);
        QFETCH(QString, theme);
        const auto view = gallery::show(page, size, theme);
        QVERIFY(view);
        const QImage picture = view->grabWindow();
        QVERIFY(!picture.isNull());

        int texts = 0;
        for (QQuickItem* item : gallery::items(view->rootObject())) {
            if (gallery::isControl(item)) {
                checkControl(item);
            }
            if (item->inherits("QQuickText") && !item->property("text").toString().isEmpty()) {
                ++texts;
                checkText(item, size.width());
            }
        }
        QVERIFY2(page == QStringLiteral("Symbols") || texts > 5, "the page shows hardly any text");
        const QByteArray folder = qgetenv("GROUNDCOUNT_GALLERY");
        if (!folder.isEmpty()) {
            QVERIFY(picture.save(QDir(QString::fromLocal8Bit(folder)).filePath(QString::fromLatin1(QTest::currentDataTag()) + QStringLiteral(".png"))));
        }
    }

private:
    static void checkControl(QQuickItem* item)
    {
        const QByteArray who = item->objectName().toUtf8() + " of " + item->metaObject()->className();
        QVERIFY2(!item->objectName().isEmpty(), who);
        QVERIFY2(item->width() >= 48 && item->height() >= 48, who + " is under 48");
        QAccessibleInterface* face = QAccessible::queryAccessibleInterface(item);
        QVERIFY2(face != nullptr, who + " has no accessible face");
        QVERIFY2(!face->text(QAccessible::Name).trimmed().isEmpty(), who + " has no accessible name");
        for (QQuickItem* part : gallery::items(item)) {
            QVERIFY2(!part->property("truncated").toBool(), who + " cuts its words off");
        }
        QVERIFY2(face->role() != QAccessible::NoRole && face->role() != QAccessible::Client, who + " has no role");
    }

    static void checkText(QQuickItem* item, int windowWidth)
    {
        const QString text = item->property("text").toString();
        const int pixels = item->property("font").value<QFont>().pixelSize();
        const bool unit = item->property("font").value<QFont>().pixelSize() == 14;
        QVERIFY2(pixels >= 16 || unit, qPrintable(text + QStringLiteral(" is set in %1 px").arg(pixels)));
        const QRectF box = item->mapRectToScene(QRectF(0, 0, item->property("contentWidth").toReal(), item->height()));
        QVERIFY2(box.left() >= -0.5 && box.right() <= windowWidth + 0.5, qPrintable(text + QStringLiteral(" leaves the window")));
    }
};

QTEST_MAIN(GalleryTest)
#include "gallery_test.moc"
