#include "view/standing_words.h"

#include "view/figure_text.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QMap>
#include <QStringList>

namespace groundcount::view {
namespace {

class StandingWords {
    Q_DECLARE_TR_FUNCTIONS(groundcount::view::StandingWords)
};

QString saidWord(book::ReviewWord word)
{
    switch (word) {
    case book::ReviewWord::Accepted: return StandingWords::tr("Accepted");
    case book::ReviewWord::Returned: return StandingWords::tr("Returned");
    case book::ReviewWord::AcceptedWithException: break;
    }
    return StandingWords::tr("Accepted with exception");
}

}  // namespace

QString wordOf(book::Unusual kind)
{
    switch (kind) {
    case book::Unusual::Overridden: return StandingWords::tr("check overridden");
    case book::Unusual::AmendedAfterVerdict: return StandingWords::tr("amended after the verdict");
    case book::Unusual::PapersExpired: return StandingWords::tr("papers expired");
    case book::Unusual::StandardCountOut: return StandingWords::tr("standard count out");
    case book::Unusual::ClearanceNotMet: return StandingWords::tr("clearance not met");
    case book::Unusual::PositionPoor: return StandingWords::tr("position poor");
    case book::Unusual::DuplicateReading: return StandingWords::tr("duplicate reading");
    case book::Unusual::ImpossibleTime: return StandingWords::tr("impossible time");
    case book::Unusual::SameCountsTwice: return StandingWords::tr("same counts twice");
    case book::Unusual::RetestElsewhere: break;
    }
    return StandingWords::tr("retest elsewhere");
}

QString recordWord(const std::string& kind)
{
    static const QMap<QString, const char*> kWords{{"test-site", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "place")}, {"clearance", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "clearances")},
        {"seating", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "seating")}, {"reading", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "reading")},
        {"sample", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "sample")}, {"verdict", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "verdict")},
        {"draw", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "random sites drawn")}, {"lot", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "requirement")},
        {"lift", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "lift")}, {"note", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "note")},
        {"photo", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "photo")}, {"void", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "taken out")},
        {"proctor", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "reference test")}, {"material", QT_TRANSLATE_NOOP("groundcount::view::StandingWords", "material")}};
    const auto word = kWords.find(QString::fromStdString(kind));
    return word == kWords.end() ? QString::fromStdString(kind) : StandingWords::tr(*word);
}

QString surfaceText(gis::Surface surface, const book::JobRow& job)
{
    return job.gridUnit == "m" ? StandingWords::tr("%1 m²").arg(figureText(surface.squareMetres(), 0)) : StandingWords::tr("%1 sq ft").arg(figureText(surface.squareFeet(), 0));
}

Mark markOf(book::Standing standing)
{
    switch (standing) {
    case book::Standing::Accepted: return Mark::Pass;
    case book::Standing::AcceptedWithException: return Mark::InformationOnly;
    case book::Standing::FailureOpen:
    case book::Standing::Returned: return Mark::Fail;
    case book::Standing::Ready:
    case book::Standing::Changed: return Mark::Waiting;
    case book::Standing::Empty:
    case book::Standing::Underway: break;
    }
    return Mark::Owed;
}

QString wordOf(book::Standing standing)
{
    switch (standing) {
    case book::Standing::Empty: return StandingWords::tr("nothing tested");
    case book::Standing::Underway: return StandingWords::tr("under way");
    case book::Standing::FailureOpen: return StandingWords::tr("failure open");
    case book::Standing::Ready: return StandingWords::tr("ready for review");
    case book::Standing::Accepted: return StandingWords::tr("accepted");
    case book::Standing::AcceptedWithException: return StandingWords::tr("accepted with exception");
    case book::Standing::Returned: return StandingWords::tr("returned");
    case book::Standing::Changed: break;
    }
    return StandingWords::tr("changed since accepted");
}

QString reviewText(const book::ReviewLine& review)
{
    return StandingWords::tr("%1 by %2, %3").arg(saidWord(review.word), review.byName.empty() ? StandingWords::tr("a person not in this book") : QString::fromStdString(review.byName),
                                  localText(review.at, review.offsetMinutes, QStringLiteral("MMM d, h:mm")));
}

QString reasonOf(const book::Tally& tally, const std::optional<book::ReviewLine>& review, int changes)
{
    if (review) {
        QStringList parts{reviewText(*review)};
        if (!review->note.empty())
            parts << QString::fromStdString(review->note);
        if (changes > 0)
            parts << StandingWords::tr("%n record(s) since", nullptr, changes);
        return parts.join(QStringLiteral("; "));
    }
    QStringList parts;
    if (!tally.openFailures.empty())
        parts << StandingWords::tr("%n failure(s) open", nullptr, static_cast<int>(tally.openFailures.size()));
    if (tally.owed() > 0)
        parts << StandingWords::tr("%n test(s) owed", nullptr, tally.owed());
    if (tally.unfinished > 0)
        parts << StandingWords::tr("%n test(s) not finished", nullptr, tally.unfinished);
    if (tally.conflicts > 0)
        parts << StandingWords::tr("%n test(s) amended twice apart", nullptr, tally.conflicts);
    if (tally.tests == 0 && parts.isEmpty())
        parts << StandingWords::tr("nothing is tested");
    return parts.isEmpty() ? StandingWords::tr("all %n test(s) made, no failure open", nullptr, tally.required) : parts.join(QStringLiteral(", "));
}

QString ageText(const std::string& since, const QString& untilUtc)
{
    const qint64 minutes = QDateTime::fromString(QString::fromStdString(since), Qt::ISODateWithMs).secsTo(QDateTime::fromString(untilUtc, Qt::ISODateWithMs)) / 60;
    return minutes < 120 ? StandingWords::tr("%1 min").arg(minutes) : minutes < 48 * 60 ? StandingWords::tr("%1 h").arg(minutes / 60) : StandingWords::tr("%1 days").arg(minutes / 1440);
}

}  // namespace groundcount::view
