#include "paper/paper_text.h"

#include "method/site/station.h"

#include <QDateTime>

#include <cmath>

namespace groundcount::paper {

QString text(const std::string& utf8)
{
    return QString::fromStdString(utf8);
}

QString figure(const std::string& decimal)
{
    return decimal.empty() ? QStringLiteral("–") : text(decimal).replace('-', QChar(0x2212));
}

namespace {

QDateTime local(const std::string& utc, int offsetMinutes)
{
    return QDateTime::fromString(text(utc), Qt::ISODateWithMs).toOffsetFromUtc(offsetMinutes * 60);
}

QString band(const std::string& low, const std::string& high)
{
    if (low.empty() && high.empty())
        return QStringLiteral("–");
    return high.empty() ? figure(low) : low.empty() ? Words::tr("at most %1").arg(figure(high)) : Words::tr("%1 to %2").arg(figure(low), figure(high));
}

}  // namespace

QString localTime(const std::string& utc, int offsetMinutes)
{
    return utc.empty() ? QString() : local(utc, offsetMinutes).toString(QStringLiteral("yyyy-MM-dd HH:mm"));
}

QDate localDay(const std::string& utc, int offsetMinutes)
{
    return local(utc, offsetMinutes).date();
}

QString stationText(const std::optional<double>& stationFt)
{
    return stationFt ? text(method::stationText(*stationFt, 100.0, 1)) : QString();
}

QString offsetText(const std::optional<double>& offsetFt)
{
    if (!offsetFt)
        return {};
    const QString side = *offsetFt < 0 ? Words::tr("Lt") : Words::tr("Rt");
    return QString::number(std::fabs(*offsetFt), 'f', 1) + ' ' + side;
}

QString stateWord(book::TestState state)
{
    switch (state) {
    case book::TestState::Open: return Words::tr("open");
    case book::TestState::Waiting: return Words::tr("provisional");
    case book::TestState::Pass: return Words::tr("pass");
    case book::TestState::Fail: return Words::tr("FAIL");
    case book::TestState::InformationOnly: return Words::tr("information only");
    case book::TestState::Void: return Words::tr("void");
    }
    return {};
}

QString purposeWord(book::TestPurpose purpose)
{
    switch (purpose) {
    case book::TestPurpose::Random: return Words::tr("random");
    case book::TestPurpose::Directed: return Words::tr("directed");
    case book::TestPurpose::Retest: return Words::tr("retest");
    }
    return {};
}

QString requiredText(const book::TestRow& test)
{
    return band(test.minimumPct, test.maximumPct);
}

QString windowText(const book::TestRow& test)
{
    return band(test.windowLowPct, test.windowHighPct);
}

QString densityUnit(const book::JobRow& job)
{
    return job.densityUnit == "kg/m3" ? QStringLiteral("kg/m³") : QStringLiteral("lb/ft³");
}

Document headed(const Source& source, const book::JobRow& job, const QString& title, const QString& subtitle)
{
    Document document;
    document.title = title;
    document.subtitle = subtitle;
    document.job = text(job.name) + (job.place.empty() ? QString() : QStringLiteral(", ") + text(job.place));
    document.book = source.bookName;
    document.made = source.made;
    return document;
}

Paragraph governs()
{
    return {Words::tr("A verdict says whether a figure meets the job's specification. The gauge's licence, local rules and the manufacturer's "
                      "instructions govern its use; a licensed professional decides about the work.")};
}

}  // namespace groundcount::paper
