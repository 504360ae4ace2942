#include "view/figure_text.h"

#include "method/decimal.h"
#include "method/site/station.h"

#include <QDateTime>
#include <QLocale>
#include <cmath>

namespace groundcount::view {
namespace {

const QChar kMinus(0x2212);

}  // namespace

QString figureText(double value, int places)
{
    if (std::isnan(value))
        return {};
    QString text = QString::fromStdString(reportedText(value, places, TieRule::HalfEven));
    const auto point = text.indexOf('.');
    const auto whole = point < 0 ? text.size() : point;
    const auto first = text.startsWith('-') ? 1 : 0;
    for (auto at = whole - 3; at > first; at -= 3)
        text.insert(at, ',');
    if (first)
        text[0] = kMinus;
    return text;
}

QString signedText(double value, int places)
{
    const QString text = figureText(value, places);
    const bool zero = text.count('0') + text.count('.') == text.size();
    return text.startsWith(kMinus) || text.isEmpty() || zero ? text : '+' + text;
}

QString shownDecimal(const std::string& decimal)
{
    QString text = QString::fromStdString(decimal);
    if (text.startsWith('-'))
        text[0] = kMinus;
    return text;
}

QString offsetText(double rightFt)
{
    const QString figure = figureText(std::fabs(rightFt), 0);
    return figure == "0" ? figure : figure + (rightFt > 0 ? QStringLiteral(" Rt") : QStringLiteral(" Lt"));
}

QString stationOffsetText(const std::optional<double>& stationFt, const std::optional<double>& offsetRightFt)
{
    if (!stationFt)
        return {};
    const QString station = QString::fromStdString(method::stationText(*stationFt, 100.0, 0));
    return offsetRightFt ? station + ", " + offsetText(*offsetRightFt) : station;
}

QString compassWord(double bearingDeg)
{
    static const char* const words[] = {"N", "NE", "E", "SE", "S", "SW", "W", "NW"};
    const auto octant = static_cast<int>(std::lround(std::fmod(bearingDeg + 360.0, 360.0) / 45.0)) % 8;
    return QString::fromLatin1(words[octant]);
}

QString localText(const std::string& utc, int offsetMinutes, const QString& format)
{
    const QDateTime time = QDateTime::fromString(QString::fromStdString(utc), Qt::ISODateWithMs);
    if (!time.isValid())
        return {};
    // The language that was chosen on the device; every language here writes figures the same, so only words differ.
    return QLocale().toString(time.toOffsetFromUtc(offsetMinutes * 60), format);
}

}  // namespace groundcount::view
