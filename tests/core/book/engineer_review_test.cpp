#include "core/book/sample_book.h"

#include "book/engineer_review.h"
#include "book/state_query.h"

#include <QtTest>

using namespace sample;
using groundcount::Length;

namespace {

constexpr int kEngineer = 40;

/// A lot with one lift that asks for four tests, and what the engineer says of it.
class Job {
public:
    explicit Job(const char* name = "sample.fieldbook", unsigned char device = 7) : store(Store::open(bench.at(name), OpenMode::Create, key(device)).value())
    {
        auto entries = setup();
        entries.push_back(entry("person", kEngineer, {{"name", "E. Sample"}, {"role", "engineer"}}));
        if (!store.sealAll(entries))
            qFatal("setup");
    }

    void test(int number, const char* result, int retestOf = 0, Store* other = nullptr)
    {
        const int subject = 1000 + number;
        second += 100;
        Body site = siteBody(std::to_string(number));
        site["grid_north_usft"] = std::to_string(7012345 + (retestOf ? retestOf : number) * 100);
        if (retestOf) {
            site["purpose"] = "retest";
            site["retest_of"] = id(1000 + retestOf);
        }
        Store& into = other ? *other : store;
        const std::string begun = seal(into, entry("test-site", subject, site, second)).hash;
        if (*result)
            seal(into, entry("verdict", subject, verdictBody(result, begun), second + 60));
    }

    ReviewLine review(int subject, ReviewWord said, const char* note = "")
    {
        second += 100;
        Entry e = entry("review", subject, reviewBody(store, said, note).value(), second);
        e.by = id(kEngineer);
        seal(store, e);
        return reviews(store).value().back();
    }

    ReviewedLot lot()
    {
        const StateQuery query(store);
        lots = query.lots().value();
        lifts = query.lifts("").value();
        tests = query.tests({}).value();
        return reviewedLots(store, {lots, lifts, tests, 0.3048, Length::feet(10)}, "").value().front();
    }

    static Record seal(Store& into, const Entry& e)
    {
        auto sealed = into.seal(e);
        if (!sealed)
            qFatal("%s", sealed.error().what.c_str());
        return *sealed;
    }

    Bench bench;
    Store store;
    std::vector<LotRow> lots;
    std::vector<LiftRow> lifts;
    std::vector<TestRow> tests;
    int second = 100;
};

PersonRow engineer()
{
    PersonRow person;
    person.name = "E. Sample";
    person.role = "engineer";
    return person;
}

}  // namespace

class EngineerReviewTest : public QObject {
    Q_OBJECT
private slots:
    void aLotWithoutReviewStandsByItsCounts()
    {
        Job job;
        QCOMPARE(job.lot().standing, Standing::Empty);
        job.test(1, "pass");
        QCOMPARE(job.lot().standing, Standing::Underway);
        QCOMPARE(job.lot().reason, std::string("3 tests are owed."));
        job.test(2, "fail");
        QCOMPARE(job.lot().standing, Standing::FailureOpen);
        QCOMPARE(job.lot().reason, std::string("1 failure is open, 2 tests are owed."));
        job.test(3, "pass", 2);
        job.test(4, "pass");
        job.test(5, "provisional");
        QCOMPARE(job.lot().standing, Standing::Underway);
        QCOMPARE(job.lot().reason, std::string("1 test is not finished."));
        job.test(6, "");
        QCOMPARE(job.lot().tally.unfinished, 2);
    }

    void aLotIsReadyWhenNothingStandsAgainstIt()
    {
        Job job;
        for (int i = 1; i <= 4; ++i)
            job.test(i, "pass");
        const auto lot = job.lot();
        QCOMPARE(lot.standing, Standing::Ready);
        QCOMPARE(lot.reason, std::string("All 4 tests made, no failure open."));
        QVERIFY(mayReview(engineer(), "lot 7", lot.tally, ReviewWord::Accepted, ""));
    }

    void acceptingIsRefusedWhileSomethingIsOpen()
    {
        Job job;
        job.test(1, "fail");
        const auto tally = job.lot().tally;
        const auto plain = mayReview(engineer(), "lot 7", tally, ReviewWord::Accepted, "");
        QVERIFY(!plain);
        QCOMPARE(plain.error().what, std::string("The lot 7 cannot be accepted as it stands: 1 failure is open, 3 tests are owed. Return it, or accept it with an exception and its reason."));
        QVERIFY(!mayReview(engineer(), "lot 7", tally, ReviewWord::AcceptedWithException, "  "));
        QVERIFY(!mayReview(engineer(), "lot 7", tally, ReviewWord::Returned, ""));
        QVERIFY(mayReview(engineer(), "lot 7", tally, ReviewWord::AcceptedWithException, "covered by the rework order"));
        PersonRow technician;
        technician.name = "A. Sample";
        technician.role = "technician";
        QVERIFY(!mayReview(technician, "lot 7", tally, ReviewWord::Returned, "wet"));
    }

    void anAcceptedLiftStandsUntilSomethingIsSealedAboutIt()
    {
        Job job;
        for (int i = 1; i <= 4; ++i)
            job.test(i, "pass");
        const auto said = job.review(kLift, ReviewWord::Accepted);
        QCOMPARE(said.seen.size(), std::size_t(1));
        auto lot = job.lot();
        QCOMPARE(lot.lifts.front().standing, Standing::Accepted);
        QCOMPARE(lot.standing, Standing::Accepted);
        QCOMPARE(lot.reason, std::string("Every lift is accepted."));
        QVERIFY(lot.changes.empty());
        job.test(5, "fail");
        lot = job.lot();
        QCOMPARE(lot.lifts.front().standing, Standing::Changed);
        QCOMPARE(lot.standing, Standing::Changed);
        QCOMPARE(lot.changes.size(), std::size_t(2));
        QCOMPARE(lot.changes.back().kind, std::string("verdict"));
        QCOMPARE(lot.changes.back().test, std::string("5"));
        QCOMPARE(lot.changes.back().byName, std::string("A. Sample"));
        job.review(kLift, ReviewWord::Returned, "test 5 failed");
        lot = job.lot();
        QCOMPARE(lot.standing, Standing::Returned);
        QVERIFY(lot.changes.empty());
        QCOMPARE(lot.reason, std::string("Lift 2: Returned by E. Sample on 2026-06-09: test 5 failed."));
    }

    void aLotsReviewSpeaksForItsLifts()
    {
        Job job;
        job.test(1, "pass");
        job.review(kLot, ReviewWord::AcceptedWithException, "short lift");
        auto lot = job.lot();
        QCOMPARE(lot.standing, Standing::AcceptedWithException);
        QCOMPARE(lot.lifts.front().standing, Standing::AcceptedWithException);
        // an amended requirement is a change of the lot itself
        const auto lots = job.store.records({.subject = id(kLot), .kind = "lot"}).value();
        Body body = lots.front().body;
        body["minimum_pct"] = "90";
        Job::seal(job.store, amend(lots.front(), body, job.second + 200));
        lot = job.lot();
        QCOMPARE(lot.standing, Standing::Changed);
        QCOMPARE(lot.changes.size(), std::size_t(1));
        QVERIFY(lot.changes.front().test.empty());
        QCOMPARE(lot.changes.front().reason, std::string("typing error"));
    }

    void recordsThatCameFromAnotherDeviceAreNewWhateverTheirClock()
    {
        Job job;
        for (int i = 1; i <= 4; ++i)
            job.test(i, "pass");
        QVERIFY(job.store.handOver(job.bench.at("other.fieldbook")));
        Store other = Store::open(job.bench.at("other.fieldbook"), OpenMode::ReadWrite, key(9)).value();
        job.test(5, "pass", 0, &other);  // sealed before the review, on a phone that the reviewer's book had not met
        job.second += 1000;
        job.review(kLift, ReviewWord::Accepted);
        QVERIFY(job.lot().changes.empty());
        QVERIFY(job.store.mergeFrom(other));
        const auto lot = job.lot();
        QCOMPARE(lot.standing, Standing::Changed);
        QCOMPARE(lot.changes.size(), std::size_t(2));
        // the other copy, which gets the review afterwards, says the same
        QVERIFY(other.mergeFrom(job.store));
        const StateQuery query(other);
        const auto lots = query.lots().value();
        const auto lifts = query.lifts("").value();
        const auto tests = query.tests({}).value();
        QCOMPARE(reviewedLots(other, {lots, lifts, tests, 0.3048, Length::feet(10)}, "").value().front().changes.size(), std::size_t(2));
    }

    void aReviewWithoutWhatWasSeenGoesByItsTime()
    {
        Job job;
        job.test(1, "pass");
        job.second += 200;
        Entry old = entry("review", kLift, {{"word", "accepted with exception"}, {"note", "older book"}}, job.second);
        old.by = id(kEngineer);
        Job::seal(job.store, old);
        QVERIFY(job.lot().changes.empty());
        job.test(2, "pass");
        QCOMPARE(job.lot().changes.size(), std::size_t(2));
    }

    void anAmendedReviewGivesWay()
    {
        Job job;
        job.test(1, "pass");
        job.review(kLot, ReviewWord::Returned, "wrong lot");
        const auto said = job.store.records({.subject = id(kLot), .kind = "review"}).value().front();
        Job::seal(job.store, amend(said, {{"word", "accepted with exception"}, {"note", "one test is enough here"}}, job.second + 100, "meant lot 8"));
        const auto all = reviews(job.store).value();
        QCOMPARE(all.size(), std::size_t(1));
        QCOMPARE(all.front().word, ReviewWord::AcceptedWithException);
        QCOMPARE(job.lot().standing, Standing::AcceptedWithException);
    }

    void aReviewOfOneTestIsKeptApart()
    {
        Job job;
        job.test(1, "pass");
        job.review(1001, ReviewWord::Accepted);
        const auto lot = job.lot();
        QCOMPARE(lot.standing, Standing::Underway);
        QCOMPARE(lot.tests.size(), std::size_t(1));
        QCOMPARE(lot.tests.front().subject, id(1001));
    }
};

QTEST_GUILESS_MAIN(EngineerReviewTest)
#include "engineer_review_test.moc"
