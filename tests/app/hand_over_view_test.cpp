#include "app/sample_book.h"
#include "view/hand_over_view.h"

#include "book/bundle.h"
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
    static void writeTo(HandOverView& page, const QUrl& target)
    {
        page.write(target);
        QVERIFY2(page.isRunning(), qPrintable(page.missing()));
        QTRY_VERIFY_WITH_TIMEOUT(!page.isRunning(), 20000);
    }
    /// A file of the owner's names. @return where it lies
    QUrl names(const QByteArray& json) const
    {
        QFile file(m_folder.filePath("names.json"));
        const bool there = file.open(QIODevice::WriteOnly) && file.write(json) == json.size();
        return there ? QUrl::fromLocalFile(file.fileName()) : QUrl();
    }
    QStringList files() const { return QDir(m_folder.path()).entryList(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot); }

private slots:
    void writesTheFileThatItPromises()
    {
        tests::SampleBook book;
        HandOverView page;
        page.setSession(&book.session());
        QVERIFY(page.missing().isEmpty() && !page.isRunning());
        QCOMPARE(page.contents()->count(), 8);
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
    void writesTheLayerThatIsChosen()
    {
        tests::SampleBook book;
        HandOverView page;
        page.setSession(&book.session());
        QVERIFY(!page.asksLayer());
        for (const auto& [form, ending] : {std::pair{1, "geojson"}, {2, "csv"}, {4, "kml"}}) {
            page.pickFormat(form);
            QVERIFY(page.asksLayer());
            page.pickLayer(1);
            page.pickLayer(70);
            QCOMPARE(page.contents()->rows().front().figure, QString("4"));
            const QString name = QString("drawn.") + ending;
            writeTo(page, at(name));
            QVERIFY2(page.done().contains(": 4 rows"), qPrintable(page.trouble() + page.done()));
            QVERIFY2(gis::checkLayers(m_folder.filePath(name).toStdString(), {{"", 4, QString(ending) == "csv" ? 0 : 4}}), ending);
        }
    }
    void makesAFolderOfShapefiles()
    {
        tests::SampleBook book;
        HandOverView page;
        page.setSession(&book.session());
        page.pickFormat(3);
        QVERIFY(page.ending().isEmpty() && page.suggested().toLocalFile().endsWith("-shapefile"));
        QCOMPARE(page.contents()->count(), 7);
        writeTo(page, at("shapes"));
        QVERIFY2(page.done().contains("7 layers"), qPrintable(page.trouble() + page.done()));
        QVERIFY(gis::checkLayers(m_folder.filePath("shapes/test_site_drawn.shp").toStdString(), {{"", 4, 4}}));
        writeTo(page, at("shapes"));
        QVERIFY2(page.trouble().startsWith("The folder to write must not exist yet"), qPrintable(page.trouble()));
    }
    void handsABundleToAnotherDevice()
    {
        tests::SampleBook book;
        HandOverView page;
        page.setSession(&book.session());
        page.pickFormat(5);
        QVERIFY(!page.asksColumns());
        const auto all = book.session().store().lastRow().value();
        QCOMPARE(page.contents()->rows().front().figure, QLocale().toString(all));
        writeTo(page, at("job"));
        QVERIFY2(page.done().contains("job.fieldbundle is written: "), qPrintable(page.trouble() + page.done()));
        writeTo(page, at("job.fieldbundle"));  // an older one is replaced
        QVERIFY2(page.trouble().isEmpty(), qPrintable(page.trouble()));
        auto fresh = book::Store::open(m_folder.filePath("other.fieldbook").toStdString(), book::OpenMode::Create);
        const auto taken = book::takeBundleFile(*fresh, m_folder.filePath("job.fieldbundle").toStdString(), [](std::size_t) { return true; });
        QVERIFY2(taken, taken ? "" : taken.error().what.c_str());
        QVERIFY(taken->whole && taken->taken == static_cast<std::size_t>(all) && taken->refused.empty());
    }
    void takesTheOwnersOwnNames()
    {
        tests::SampleBook book;
        HandOverView page;
        page.setSession(&book.session());
        page.takeColumns(names(R"({"layers": {"test_site_drawn": {"name": "SITES", "columns": {"site": "SITE_NO"}}}})"));
        if (!page.trouble().isEmpty())
            QFAIL(qPrintable(page.trouble()));
        QCOMPARE(page.columns(), QString("names.json"));
        page.takeColumns(names(R"({"layers": {"test_site_drawn": {"name": "SITES"}}})"));
        writeTo(page, at("named.gpkg"));
        QVERIFY2(gis::checkGeoPackage(m_folder.filePath("named.gpkg").toStdString(), {{"SITES", 4, 4}}), qPrintable(page.trouble()));
        page.takeColumns(names("{]"));
        QVERIFY(page.columns().isEmpty() && !page.trouble().isEmpty());
        page.takeColumns(at("nowhere.json"));
        QVERIFY2(page.trouble().contains("nowhere.json cannot be read"), qPrintable(page.trouble()));
        page.dropColumns();
        QVERIFY(page.trouble().isEmpty());
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
            QCOMPARE(page.progress(), QString("Stopping"));  // at once
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
