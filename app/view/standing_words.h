#pragma once

#include "book/engineer_review.h"
#include "book/review.h"
#include "gis/surface.h"
#include "view/mark.h"

#include <QString>

namespace groundcount::view {

/// Symbol and word of where a lot or lift stands.
Mark markOf(book::Standing standing);
QString wordOf(book::Standing standing);
/// What is unusual: "check overridden".
QString wordOf(book::Unusual kind);
/// What a record is about, in a sentence: "verdict".
QString recordWord(const std::string& kind);
/// "11,100 sq ft", or square metres for a metric grid.
QString surfaceText(gis::Surface surface, const book::JobRow& job);
/// Why, in the language of the screen: what is open and owed, or who said what when and how much came since.
QString reasonOf(const book::Tally& tally, const std::optional<book::ReviewLine>& review, int changes);
/// "Accepted by M. Lindqvist, Jun 9, 14:12".
QString reviewText(const book::ReviewLine& review);
/// "16 min", "5 h", "3 days" of two UTC times of records.
QString ageText(const std::string& since, const QString& untilUtc);

}  // namespace groundcount::view
