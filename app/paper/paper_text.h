#pragma once

#include "book/state.h"
#include "paper/sheets.h"

#include <QCoreApplication>
#include <QString>

#include <optional>
#include <string>

namespace groundcount::paper {

/// Where the words of the sheets are translated.
class Words {
    Q_DECLARE_TR_FUNCTIONS(groundcount::paper::Words)
};

QString text(const std::string& utf8);
/// Decimal text as sealed, with U+2212 as minus; an en dash for nothing.
QString figure(const std::string& decimal);
/// "2026-06-09 14:12" by the clock where it was sealed.
QString localTime(const std::string& utc, int offsetMinutes);
QDate localDay(const std::string& utc, int offsetMinutes);
/// "53+38.3"; empty for nothing.
QString stationText(const std::optional<double>& stationFt);
/// "14.2 Rt".
QString offsetText(const std::optional<double>& offsetFt);
QString stateWord(book::TestState state);
QString purposeWord(book::TestPurpose purpose);
/// "95", "95 to 102", "at most 102".
QString requiredText(const book::TestRow& test);
/// "10.8 to 14.8".
QString windowText(const book::TestRow& test);
/// "lb/ft³" or "kg/m³".
QString densityUnit(const book::JobRow& job);
/// Title, job, book and foot of a sheet.
Document headed(const Source& source, const book::JobRow& job, const QString& title, const QString& subtitle);
/// The line that stands on every sheet about what a verdict is not.
Paragraph governs();

}  // namespace groundcount::paper
