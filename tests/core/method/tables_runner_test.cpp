// The runner is part of groundcount_tables, which is a program and not a library; its two sources are compiled in here
// so that the judge of all reference rows is itself judged.
#include "core/tables/runner.cpp"
#include "core/tables/table.cpp"

#include <QTemporaryDir>
#include <QTest>

using namespace groundcount;
using namespace groundcount::tables;

namespace {

Result<Outcome> twice(const Row& row)
{
    const double x = row.number("x");
    if (!(x >= 0))
        return refused("x is below 0; it must be at least 0.");
    return Outcome{"ok", {{"want_y", 2 * x}, {"want_word", std::string("even")}, {"want_list", std::vector<double>{x, 2 * x}}}, {}};
}

Result<Outcome> silent(const Row&) { return refused(""); }

const std::vector<Topic> kTopics{{"twice", twice}, {"silent", silent}};
const char kHead[] = "# made up\nid\tx\twant_y\twant_word\twant_list\tresult\ttol\tmark\tsource\n";

}  // namespace

class TablesRunnerTest : public QObject {
    Q_OBJECT

    /// Exit code for one table with `rows` under `name`.
    int run(const std::string& rows, const std::string& name = "twice", const std::set<std::string>& notYet = {})
    {
        const QTemporaryDir folder;
        std::ofstream((folder.path().toStdString() + "/" + name + ".tsv")) << kHead << rows;
        return runFolder(folder.path().toStdString(), kTopics, notYet);
    }

private slots:
    void passesRightRows()
    {
        QCOMPARE(run("A\t1.5\t3.0\teven\t1.5 3\tok\t-\tcomputed\tOWN\n"), 0);
        QCOMPARE(run("A\t-1\t-\t-\t-\trefused\t-\tcomputed\tOWN\n"), 0);
        QCOMPARE(run("A\t-\t-\t-\t-\trefused\t-\tcomputed\tOWN\n"), 0);
        QCOMPARE(run("A\t1.5\t3.4\t-\t-\tok\twant_y=0.5;want_list=1\tcomputed\tOWN\n"), 0);
    }

    void failsWrongRows()
    {
        QCOMPARE(run("A\t1.5\t3.1\teven\t1.5 3\tok\t-\tcomputed\tOWN\n"), 1);
        QCOMPARE(run("A\t1.5\t3.0\todd\t1.5 3\tok\t-\tcomputed\tOWN\n"), 1);
        QCOMPARE(run("A\t1.5\t3.0\teven\t1.5\tok\t-\tcomputed\tOWN\n"), 1);
        QCOMPARE(run("A\t1.5\t3.0\teven\t1.5 4\tok\t-\tcomputed\tOWN\n"), 1);
        QCOMPARE(run("A\t1.5\t3.0\teven\t1.5 3\tfail\t-\tcomputed\tOWN\n"), 1);
        QCOMPARE(run("A\t1.5\t-\t-\t-\trefused\t-\tcomputed\tOWN\n"), 1);
        QCOMPARE(run("A\t-1\t-2\t-\t-\tok\t-\tcomputed\tOWN\n"), 1);
        QCOMPARE(run("A\tone\t-\t-\t-\trefused\t-\tcomputed\tOWN\n"), 1);  // a cell that cannot be read is no refusal
    }

    void failsBrokenTables()
    {
        QCOMPARE(run(""), 1);
        QCOMPARE(run("A\t1.5\n"), 1);
        QCOMPARE(run("A\t1.5\t3.0\teven\t1.5 3\tok\t-\tcomputed\tOWN\n", "unheard_of"), 1);
        QCOMPARE(run("A\t-\t-\t-\t-\trefused\t-\tcomputed\tOWN\n", "silent"), 1);
        const QTemporaryDir empty;
        QCOMPARE(runFolder(empty.path().toStdString(), kTopics, {}), 1);
        QCOMPARE(runFolder(empty.path().toStdString() + "/none", kTopics, {}), 1);
    }

    void aListOfMissingTopicsHidesNothingThatIsThere()
    {
        QCOMPARE(run("A\t1.5\t3.0\teven\t1.5 3\tok\t-\tcomputed\tOWN\n", "later", {"later"}), 1);  // nothing compared
        QCOMPARE(run("A\t1.5\t3.0\teven\t1.5 3\tok\t-\tcomputed\tOWN\n", "twice", {"twice"}), 1);
    }

    void toleranceIsHalfAUnitOfTheLastPrintedDigit()
    {
        QVERIFY(meets(3.05, "3.1", -1));
        QVERIFY(meets(3.15, "3.1", -1));
        QVERIFY(!meets(3.151, "3.1", -1));
        QVERIFY(!meets(3.101, "3.10", 0.0005));
        QVERIFY(meets(12399.6, "12400", -1));
        QVERIFY(!meets(12399.4, "12400", -1));
        QVERIFY(meets(0.00123, "1.2e-3", -1));
        QVERIFY(!meets(0.00126, "1.2e-3", -1));
        QVERIFY(!meets(std::nan(""), "3.1", -1));
        QVERIFY(!meets(3.1, "three", -1));
    }

    void thePrintedMistakeMustNotComeOut()
    {
        const QTemporaryDir folder;
        const auto file = folder.path().toStdString() + "/wrong.tsv";
        std::ofstream(file) << "id\tprinted\nA\t1.56\n";
        const Table table = Table::read(file);
        const auto rows = table.rows();
        QVERIFY(wrongBeside(rows[0], 1.575).objections.empty());
        QCOMPARE(wrongBeside(rows[0], 1.562).objections.size(), std::size_t{1});
    }
};

QTEST_GUILESS_MAIN(TablesRunnerTest)
#include "tables_runner_test.moc"
