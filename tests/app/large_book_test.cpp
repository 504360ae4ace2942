// Every page on a book of ten thousand tests: it loads, says nothing on the error stream, and shows what it must.
#include "app/kit_bench.h"
#include "programme/contract.h"

#include <QStandardPaths>

namespace {

QStringList complaints;

void listen(QtMsgType type, const QMessageLogContext&, const QString& text)
{
    if (type == QtWarningMsg || type == QtCriticalMsg)
        complaints << text;
}

}  // namespace

class LargeBookTest : public QObject {
    Q_OBJECT

    QTemporaryDir m_folder;
    QString m_book;

private slots:
    void initTestCase()
    {
        QStandardPaths::setTestModeEnabled(true);
        m_book = m_folder.filePath(QStringLiteral("contract.fieldbook"));
        const auto truth = programme::writeContract(m_book.toStdString(), 1, {14, 6, 120, 97}, 20261126);
        QVERIFY2(truth.tests.size() >= 10'000, qPrintable(QString::number(truth.tests.size())));
        m_lot = QString::fromStdString(truth.lots.front());
        m_test = QString::fromStdString(truth.tests.back().number);
    }

    void everyPageLoads_data()
    {
        QTest::addColumn<QString>("open");
        QTest::addColumn<QString>("page");
        for (const auto& [open, page] : {std::pair{"", "dayPage"}, {"lot:%1", "lotsPage"}, {"lot:%1/review", "reviewPage"}, {"lot:%1/figures", "figuresPage"}, {"lot:%1/tests", "lotsPage"},
                                         {"coverage", "mapPage"}, {"hand-over", "lotsPage"}, {"test:%2/6", "testPage"}, {"record:%2", "recordPage"}, {"kit:counts", "standardCountsPage"}})
            QTest::addRow("%s", *open ? open : "day") << QString::fromLatin1(open) << QString::fromLatin1(page);
    }
    void everyPageLoads()
    {
        QFETCH(QString, open);
        QFETCH(QString, page);
        complaints.clear();
        const auto before = qInstallMessageHandler(listen);
        KitApp app(m_book);
        const bool started = app.start({412, 915}, open.contains('%') ? open.replace("%1", m_lot).replace("%2", m_test) : open, "2026-07-01T10:00:00-05:00");
        const bool found = started && app.waitFor(page);
        QTest::qWait(100);
        qInstallMessageHandler(before);
        QVERIFY(started);
        QVERIFY2(found, qPrintable(page));
        QVERIFY2(complaints.isEmpty(), qPrintable(complaints.join('\n')));
        QVERIFY(app.session().snapshot().tests.size() >= 10'000);
    }

private:
    QString m_lot, m_test;
};

QTEST_MAIN(LargeBookTest)
#include "large_book_test.moc"
