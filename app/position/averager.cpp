#include "position/averager.h"

#include "method/site/nmea.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>

namespace groundcount::position {
namespace {

constexpr std::size_t kMostFixes = 3600; // an hour at one a second; beyond that the oldest go

}  // namespace

QString circleFormulaWord(CircleFormula formula)
{
    switch (formula) {
    case CircleFormula::FromReceiver: return QCoreApplication::translate("Averager", "2DRMS from the receiver's own sigmas");
    case CircleFormula::FromSpread: return QCoreApplication::translate("Averager", "2DRMS from the spread of the fixes");
    }
    return {};
}

Result<void> Averager::add(const Fix& fix)
{
    if (const auto fit = method::acceptableAsTestPlace(fix.quality); !fit)
        return tl::unexpected(fit.error());
    if (fix.frozen)
        return refused("The receiver repeats one position; it is not taken into the mean.");
    if (fix.jumped)
        return refused("The position jumped; it is not taken into the mean.");
    if (!m_fixes.empty()) {
        const Average now = *average();
        const Offset away = offsetBetween(now.latitude, now.longitude, fix.latitude, fix.longitude);
        const double allowed = m_stillRadiusM + 3 * fix.drmsM().value_or(0);
        if (fix.quality != m_fixes.back().quality || std::hypot(away.northM, away.eastM) > allowed)
            m_fixes.clear();
    }
    if (m_fixes.size() == kMostFixes)
        m_fixes.erase(m_fixes.begin());
    m_fixes.push_back(fix);
    return {};
}

std::optional<Average> Averager::average() const
{
    if (m_fixes.empty())
        return std::nullopt;
    const Fix& first = m_fixes.front();
    const double n = static_cast<double>(m_fixes.size());
    double latitude = 0;
    double longitude = 0;
    double height = 0;
    double varianceNorth = 0;
    double varianceEast = 0;
    bool heights = true;
    bool sigmas = true;
    Average mean;
    for (const Fix& fix : m_fixes) {
        // Differences from the first fix keep the digits and cross the date line.
        latitude += fix.latitude - first.latitude;
        longitude += std::remainder(fix.longitude - first.longitude, 360.0);
        heights = heights && fix.heightEllipsoid.has_value();
        height += fix.heightEllipsoid.value_or(0);
        sigmas = sigmas && fix.drmsM().has_value();
        varianceNorth += std::pow(fix.sigmaNorthM.value_or(0), 2);
        varianceEast += std::pow(fix.sigmaEastM.value_or(0), 2);
        mean.raw += fix.raw;
    }
    mean.latitude = first.latitude + latitude / n;
    mean.longitude = std::remainder(first.longitude + longitude / n, 360.0);
    mean.count = static_cast<int>(m_fixes.size());
    mean.quality = first.quality;
    mean.qualityWord = first.qualityWord;
    if (heights)
        mean.heightEllipsoid = height / n;
    double north2 = 0;
    double east2 = 0;
    for (const Fix& fix : m_fixes) {
        mean.scatter.push_back(offsetBetween(mean.latitude, mean.longitude, fix.latitude, fix.longitude));
        north2 += std::pow(mean.scatter.back().northM, 2);
        east2 += std::pow(mean.scatter.back().eastM, 2);
    }
    if (mean.count > 1) {
        mean.spreadNorthM = std::sqrt(north2 / (n - 1));
        mean.spreadEastM = std::sqrt(east2 / (n - 1));
        mean.radiusM = 2 * std::hypot(mean.spreadNorthM, mean.spreadEastM);
        mean.formula = CircleFormula::FromSpread;
    }
    const double stated = 2 * std::sqrt((varianceNorth + varianceEast) / n);
    if (sigmas && stated >= mean.radiusM.value_or(0)) {
        mean.radiusM = stated;
        mean.formula = CircleFormula::FromReceiver;
    }
    return mean;
}

}  // namespace groundcount::position
