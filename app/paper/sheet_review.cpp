#include "book/engineer_review.h"
#include "book/job_rules.h"
#include "book/lot_statistics.h"
#include "book/state_query.h"
#include "paper/paper_text.h"

#include <algorithm>

namespace groundcount::paper {
namespace {

QString standingWord(book::Standing standing)
{
    switch (standing) {
    case book::Standing::Empty: return Words::tr("nothing tested");
    case book::Standing::Underway: return Words::tr("under way");
    case book::Standing::FailureOpen: return Words::tr("failure open");
    case book::Standing::Ready: return Words::tr("ready for review");
    case book::Standing::Accepted: return Words::tr("accepted");
    case book::Standing::AcceptedWithException: return Words::tr("accepted with exception");
    case book::Standing::Returned: return Words::tr("returned");
    case book::Standing::Changed: break;
    }
    return Words::tr("changed since accepted");
}

QString reviewWord(book::ReviewWord word)
{
    return word == book::ReviewWord::Accepted ? Words::tr("accepted") : word == book::ReviewWord::Returned ? Words::tr("returned") : Words::tr("accepted with exception");
}

QString byName(const std::string& name)
{
    return name.empty() ? Words::tr("a person not in this book") : text(name);
}

QStringList partRow(const QString& name, book::Standing standing, const book::Tally& tally)
{
    return {name, standingWord(standing), QString::number(tally.required), QString::number(tally.made), QString::number(tally.unfinished), QString::number(tally.openFailures.size()), QString::number(tally.conflicts)};
}

/// The whole lot and each lift: where they stand and what they lack.
Table partsOf(const book::ReviewedLot& lot)
{
    Table table{{{Words::tr("Part"), 2}, {Words::tr("Stands"), 4}, {Words::tr("Needed"), 1.2, Align::Right}, {Words::tr("Made"), 1.2, Align::Right}, {Words::tr("Not finished"), 1.8, Align::Right},
                 {Words::tr("Open failures"), 2, Align::Right}, {Words::tr("Amended apart"), 2, Align::Right}},
                {partRow(Words::tr("Whole lot"), lot.standing, lot.tally)}, {}};
    for (const auto& lift : lot.lifts)
        table.rows.push_back(partRow(Words::tr("Lift %1").arg(lift.lift->number), lift.standing, lift.tally));
    return table;
}

Table failuresOf(const book::ReviewedLot& lot)
{
    Table table{{{Words::tr("Test"), 1}, {Words::tr("Lift"), 1}, {Words::tr("Station"), 1.5}, {Words::tr("Offset"), 1.5}, {Words::tr("Compaction %"), 1.8, Align::Right}, {Words::tr("Since"), 2.5}}, {}, Words::tr("No failure is open.")};
    for (const auto& lift : lot.lifts)
        for (const auto* test : lift.tally.openFailures)
            table.rows.push_back(QStringList{text(test->number), QString::number(lift.lift->number), stationText(test->stationFt), offsetText(test->offsetFt), figure(test->compactionPct), localTime(test->verdictAt, test->offsetMinutes)});
    return table;
}

/// Every review of the lot, its lifts and its tests that stands, oldest first. @param newest hash of the last one, left alone without any
Table reviewsOf(const std::vector<book::ReviewLine>& reviews, const book::ReviewedLot& lot, const std::vector<book::TestRow>& tests, QString& newest)
{
    Table table{{{Words::tr("When"), 2.4}, {Words::tr("Of"), 1.6}, {Words::tr("Word"), 2.4}, {Words::tr("By"), 2}, {Words::tr("Reason"), 4}, {Words::tr("Record"), 1.5}}, {}, Words::tr("No review is sealed.")};
    for (const auto& review : reviews) {
        QString of = review.subject == lot.lot->id ? Words::tr("Whole lot") : QString();
        for (const auto& lift : lot.lifts)
            if (lift.lift->id == review.subject)
                of = Words::tr("Lift %1").arg(lift.lift->number);
        const auto test = std::find_if(tests.begin(), tests.end(), [&](const auto& one) { return one.id == review.subject; });
        if (test != tests.end())
            of = Words::tr("Test %1").arg(text(test->number));
        if (of.isEmpty())
            continue;
        newest = text(review.hash);
        table.rows.push_back(QStringList{localTime(review.at, review.offsetMinutes), of, reviewWord(review.word), byName(review.byName), text(review.note), newest.left(8)});
    }
    return table;
}

Table changesOf(const book::ReviewedLot& lot)
{
    Table table{{{Words::tr("When"), 2.4}, {Words::tr("Of"), 2}, {Words::tr("By"), 2}, {Words::tr("Reason"), 5}, {Words::tr("Record"), 1.5}}, {}, Words::tr("Nothing came since.")};
    for (const auto& change : lot.changes)
        table.rows.push_back(QStringList{localTime(change.at, change.offsetMinutes), change.test.empty() ? Words::tr("Whole lot") : Words::tr("Test %1").arg(text(change.test)), byName(change.byName), text(change.reason), text(change.hash).left(8)});
    return table;
}

}  // namespace

Result<Document> reviewSheet(const Source& source, const std::string& id)
{
    const book::StateQuery query(source.store);
    const auto job = query.job();
    const auto lots = query.lots();
    const auto lifts = query.lifts(id);
    const auto tests = query.tests({.lot = id, .lift = {}, .person = {}});
    const auto rules = book::jobRules(source.store).and_then(book::statisticsRules);
    const auto sealedReviews = book::reviews(source.store);
    if (!job || !lots || !lifts || !tests || !rules || !sealedReviews)
        return tl::unexpected(!job ? job.error() : !lots ? lots.error() : !lifts ? lifts.error() : !tests ? tests.error() : !rules ? rules.error() : sealedReviews.error());
    const auto found = book::reviewedLots(source.store, {*lots, *lifts, *tests, job->metresPerGridUnit, rules->retestDistance}, id);
    if (!found)
        return tl::unexpected(found.error());
    if (found->empty())
        return refused("The book has no lot " + id + ".");
    const auto& lot = found->front();
    Document sheet = headed(source, *job, Words::tr("Review of lot %1").arg(text(lot.lot->name)), standingWord(lot.standing));
    sheet.code = text(lot.lot->hash);
    sheet.blocks.push_back(partsOf(lot));
    sheet.blocks.push_back(Heading{Words::tr("Open failures")});
    sheet.blocks.push_back(failuresOf(lot));
    sheet.blocks.push_back(Heading{Words::tr("Reviews")});
    sheet.blocks.push_back(reviewsOf(*sealedReviews, lot, *tests, sheet.code));
    sheet.blocks.push_back(Heading{Words::tr("Since the review")});
    sheet.blocks.push_back(changesOf(lot));
    sheet.blocks.push_back(Paragraph{Words::tr("A review speaks of what the reviewer's book held when it was sealed. It decides about the lot; it changes no test.")});
    sheet.blocks.push_back(governs());
    sheet.blocks.push_back(Signatures{{Words::tr("Project engineer")}});
    return sheet;
}

}  // namespace groundcount::paper
