#include "app/sample_book.h"
#include "view/hand_over_view.h"

#include "book/store.h"
#include "gis/layer_check.h"

#include <QDir>
#include <QFile>
#include <QSignalSpy>
#include <QtTest>

using namespace groundcount;
using view::HandOverView;

/// The page that hands a book over: what it promises, the file, progress, stopping.
class HandOverViewTest : public QObject {
    Q_OBJECT
    QTemporaryDir m_folder;
    QUrl at(const QString& name) const { return QUrl::fromLocalFile(m_folder.filePath(name)); }
    QStringList files() const { return QDir(m_folder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot); }

private slots:
    void writesTheFileThatItPromises()
    {
        tests::SampleBook book;
        HandOverView page;
        page.setSession(&book.session());
        QVERIFY(page.missing().isEmpty() && !page.isRunning());
        QCOMPARE(page.contents()->count(), 6);
        QCOMPARE(page.contents()->rows()[1].figure, QString("4"));  // drawn sites of the sample job
        QVERIFY(page.suggested().toLocalFile().endsWith(".gpkg"));
        QSignalSpy told(&page, &HandOverView::progressChanged);
        page.write(at("owner.gpkg"));
        QVERIFY(page.isRunning() && !page.progress().isEmpty());
        page.write(at("second.gpkg"));  // one at a time
        page.pickFormat(1);
        QCOMPARE(page.formatIndex(), 0);
        QTRY_VERIFY_WITH_TIMEOUT(!page.isRunning(), 20000);
        QVERIFY2(page.trouble().isEmpty(), qPrintable(page.trouble()));
        QVERIFY(page.done().contains(m_folder.filePath("owner.gpkg")) && told.count() >= 2);
        QCOMPARE(files(), QStringList{"owner.gpkg"});
        QVERIFY(gis::checkGeoPackage(m_folder.filePath("owner.gpkg").toStdString(), {{"test_site_drawn", 4, 4}, {"alignment", 1, 1}}));
    }
    void writesTheTableUnderANameWithoutEnding()
    {
        tests::SampleBook book;
        HandOverView page;
        page.setSession(&book.session());
        page.pickFormat(2);
        QCOMPARE(page.ending(), QString("csv"));
        QCOMPARE(page.contents()->count(), 1);
        page.write(at("table"));
        QTRY_VERIFY_WITH_TIMEOUT(!page.isRunning(), 20000);
        QVERIFY2(QFile::exists(m_folder.filePath("table.csv")), qPrintable(page.trouble()));
        page.pickFormat(7);
        QCOMPARE(page.formatIndex(), 2);
    }
    void keepsTheOlderFileWhenItIsStopped()
    {
        tests::SampleBook book;
        QFile older(m_folder.filePath("owner.gpkg"));
        QVERIFY(older.open(QIODevice::ReadOnly));
        const QByteArray before = older.readAll();
        {
            HandOverView page;
            page.setSession(&book.session());
            page.write(at("owner.gpkg"));
            page.stop();
            QTRY_VERIFY_WITH_TIMEOUT(!page.isRunning(), 20000);
            QVERIFY2(page.trouble().startsWith("The export was stopped after"), qPrintable(page.trouble() + page.done()));
            page.write(at("owner.gpkg"));
        }  // a page that goes ends its work
        older.seek(0);
        QVERIFY(older.readAll() == before && files().filter(".part-").isEmpty());
    }
    void tellsWhyItCannot()
    {
        HandOverView page;
        QVERIFY(page.missing().contains("no book"));
        tests::SampleBook book;
        page.setSession(&book.session());
        page.write(QUrl::fromLocalFile("/nowhere/at/all/owner.gpkg"));
        QTRY_VERIFY_WITH_TIMEOUT(!page.isRunning(), 20000);
        QVERIFY2(page.trouble().startsWith("Cannot write beside /nowhere/at/all/owner.gpkg"), qPrintable(page.trouble()));
        page.write(QUrl("https://example.org/owner.gpkg"));  // no place on this device
        QTRY_VERIFY_WITH_TIMEOUT(!page.isRunning(), 20000);
        QVERIFY2(page.trouble().contains("must end in .gpkg"), qPrintable(page.trouble()));
    }
};

QTEST_MAIN(HandOverViewTest)
#include "hand_over_view_test.moc"
