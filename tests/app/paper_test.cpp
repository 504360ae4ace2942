#include "paper/code_mark.h"
#include "paper/pages.h"
#include "paper/paper_ink.h"
#include "paper/sheets.h"

#include "book/state_query.h"

#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QTemporaryDir>
#include <QtTest>

using namespace groundcount;

namespace {

/// The invented day of the demo, played once by groundbook beside this test.
QString groundbook()
{
    return QCoreApplication::applicationDirPath() + "/../app/command/groundbook";
}

struct Ran {
    int status = -1;
    QString out, error;
};

Ran run(const QString& program, const QStringList& arguments)
{
    QProcess process;
    process.start(program, arguments);
    if (!process.waitForFinished(60000))
        return {};
    return {process.exitCode(), QString::fromUtf8(process.readAllStandardOutput()), QString::fromUtf8(process.readAllStandardError())};
}

}  // namespace

/// Sheets as PDF, read back by pdftotext and pdffonts of poppler (general-purpose tools).
class PaperTest : public QObject {
    Q_OBJECT

private:
    QTemporaryDir m_folder;
    QString m_book;

    QString textOf(const QStringList& what)
    {
        const QString pdf = m_folder.filePath("sheet.pdf");
        const Ran made = run(groundbook(), QStringList{"sheet", m_book} + what + QStringList{"--to", pdf});
        if (made.status != 0)
            return made.error;
        return run("pdftotext", {"-layout", pdf, "-"}).out;
    }

private slots:
    void initTestCase()
    {
        m_book = m_folder.filePath("day.fieldbook");
        const Ran played = run(groundbook(), {"play", m_book, GROUNDCOUNT_SOURCE_DIR "/demo/scenario.json", "--key", m_folder.filePath("key")});
        QVERIFY2(played.status == 0, qPrintable(played.error));
        QVERIFY(paper::loadPaperFonts());
    }

    void writesTheSheetsOfADay_data()
    {
        QTest::addColumn<QStringList>("what");
        QTest::addColumn<QStringList>("words");
        QTest::newRow("test") << QStringList{"test", "26"} << QStringList{"Density test 26", "Verdict: FAIL", "109.1 lb/ft³ (1748 kg/m³)", "Gauge 07, 21904", "2109 / 2846", "density low, too wet", "Page 1 of"};
        QTest::newRow("day") << QStringList{"day", "2026-06-09"} << QStringList{"Density tests of the day", "R. Okafor", "44+82.9 9.0 Rt", "retest", "waits for the oven", "Project engineer"};
        QTest::newRow("lot") << QStringList{"lot", "N-4"} << QStringList{"Lot N-4", "at least 95 %", "26A", "50+00.0 to 56+00.0"};
        QTest::newRow("review") << QStringList{"review", "N-4"} << QStringList{"Review of lot N-4", "Whole lot", "Lift 7", "Open failures", "No review is sealed", "Project engineer"};
        QTest::newRow("counts") << QStringList{"counts", "Gauge 07"} << QStringList{"Standard counts", "2898", "2026-06-09 06:48"};
        QTest::newRow("custody") << QStringList{"custody", "Gauge 07"} << QStringList{"Gauge custody", "signed out", "field office", "radiation safety officer"};
        QTest::newRow("reference") << QStringList{"reference", "P-12"} << QStringList{"Reference test P-12", "118.6", "12.8", "112.9"};
    }

    void writesTheSheetsOfADay()
    {
        QFETCH(QStringList, what);
        QFETCH(QStringList, words);
        const QString text = textOf(what);
        for (const QString& word : words)
            QVERIFY2(text.contains(word), qPrintable("missing: " + word + "\n" + text));
    }

    void embedsEveryFont()
    {
        textOf({"test", "24"});
        const QString fonts = run("pdffonts", {m_folder.filePath("sheet.pdf")}).out;
        const QStringList lines = fonts.split('\n', Qt::SkipEmptyParts).mid(2);
        QVERIFY(lines.size() >= 2);
        for (const QString& line : lines)
            QVERIFY2(line.contains(QRegularExpression("Lato.* yes (yes|no) +(yes|no)")), qPrintable(line));
    }

    void findsTheRecordOfAPrintedCode()
    {
        const QString text = textOf({"test", "26"});
        const auto code = QRegularExpression("Record ((?:[0-9a-f]{4} ){3}[0-9a-f]{4})").match(text).captured(1);
        QVERIFY2(!code.isEmpty(), qPrintable(text));
        const Ran found = run(groundbook(), {"sheet", m_book, "code", code});
        QCOMPARE(found.status, 0);
        QVERIFY2(found.out.contains("verdict, sealed 2026-06-09"), qPrintable(found.out));
        const Ran none = run(groundbook(), {"sheet", m_book, "code", "0123456789abcdef"});
        QCOMPARE(none.status, 1);
        QVERIFY(none.error.contains("No record of this book begins with 0123456789abcdef"));
    }

    void refusesWhatTheBookDoesNotHave()
    {
        QVERIFY(textOf({"test", "999"}).endsWith("The book has no test \"999\".\n"));
        QVERIFY(textOf({"day", "2026-13-01"}).endsWith("A day is written as 2026-06-09; it is \"2026-13-01\".\n"));
        QVERIFY(textOf({"day", "2020-01-01"}).endsWith("The book has no test of 2020-01-01.\n"));
    }

    void repeatsTheHeadOfALongTableAndCountsPages()
    {
        paper::Document document;
        document.title = "Long";
        paper::Table table{{{"First", 1}, {"Second", 2, paper::Align::Right}}, {}, {}};
        for (int i = 0; i < 200; ++i)
            table.rows.push_back({QString::number(i), QString("row %1").arg(i)});
        document.blocks.push_back(table);
        const QString pdf = m_folder.filePath("long.pdf");
        QVERIFY(paper::writePdf(document, paper::Format::A4, pdf).has_value());
        const QString text = run("pdftotext", {"-layout", pdf, "-"}).out;
        const int pages = paper::Pages(document, paper::Format::A4).count();
        QVERIFY(pages > 3);
        QCOMPARE(text.count("Second"), pages);
        QCOMPARE(text.count("Page "), pages);
        for (const char* row : {"row 0", "row 57", "row 199"})
            QVERIFY(text.contains(row));
        QVERIFY(!paper::writePdf(document, paper::Format::A4, m_folder.filePath("no/such/folder.pdf")).has_value());
    }

    void drawsACodeThatAReaderReads()
    {
        const QString hash = QString("0123456789abcdef").repeated(4);
        QImage image(330, 330, QImage::Format_RGB32);
        image.fill(Qt::white);
        QPainter painter(&image);
        paper::drawCode(painter, hash, QRectF(30, 30, 270, 270));
        painter.end();
        const QString file = m_folder.filePath("code.png");
        QVERIFY(image.save(file));
        QCOMPARE(run("zbarimg", {"-q", "--raw", file}).out.trimmed(), hash);
        QCOMPARE(paper::shortCode(hash), QString("0123 4567 89ab cdef"));
    }
};

QTEST_MAIN(PaperTest)
#include "paper_test.moc"
