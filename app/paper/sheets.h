#pragma once

#include "paper/document.h"

#include "book/store.h"
#include "method/error.h"

#include <QDate>
#include <QString>

#include <string>

/// The sheets that are signed and handed over. Every figure stands as it was sealed, or is worked by core out of sealed
/// records; nothing is computed here. Fields as listed in docs/method.md, "Fields of reports".
namespace groundcount::paper {

/// The book a sheet speaks of, and what stands at its foot.
struct Source {
    const book::Store& store;
    QString bookName;
    QString made;  ///< "Made 2026-06-09 14:12 by Groundcount 0.1.0"
};

/// One test with its evidence and its arithmetic. @error Refused when the book has no such test
Result<Document> testSheet(const Source& source, const std::string& testId);

/// What one person, or everybody, tested on a local day, with the gauges' standard counts. @param person "" for everybody
/// @error Refused when the book has no test of that day
Result<Document> daySheet(const Source& source, const QDate& day, const std::string& person);

/// Every standard count of a gauge against the rule, oldest first, with its chart. @error Refused when there is no such gauge
Result<Document> standardCountLog(const Source& source, const std::string& gauge);

/// Who had the gauge, where and how it was kept. @error Refused when there is no such gauge
Result<Document> custodyLog(const Source& source, const std::string& gauge);

/// Compaction points, curve, zero-air-voids line and the peak that the tests are judged against.
/// @error Refused when there is no such reference test
Result<Document> proctorSheet(const Source& source, const std::string& proctor);

/// A lot: requirement, lifts, tests with their retests, what is owed, and where they stand. @error Refused when there is no such lot
Result<Document> lotSheet(const Source& source, const std::string& lot);

/// What was said of a lot and its lifts: where each part stands, open failures, every review and what came since.
/// @error Refused when there is no such lot
Result<Document> reviewSheet(const Source& source, const std::string& lot);

}  // namespace groundcount::paper
