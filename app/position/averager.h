#pragma once

#include "position/fix.h"
#include "position/fix_watch.h"

#include "method/error.h"

#include <vector>

namespace groundcount::position {

/// How the radius of the circle round a mean place was found.
enum class CircleFormula {
    FromReceiver, ///< 2DRMS = 2 sqrt(mean sigmaNorth^2 + mean sigmaEast^2), sigmas as the receiver states them (GST)
    FromSpread    ///< 2DRMS = 2 sqrt(s_north^2 + s_east^2), s the sample standard deviations of the fixes; blind to what shifts them all
};
QString circleFormulaWord(CircleFormula formula);

/// The mean of fixes taken while held still.
struct Average {
    double latitude = 0;
    double longitude = 0;
    std::optional<double> heightEllipsoid; ///< mean, only if every fix has one
    int count = 0;
    double spreadNorthM = 0; ///< sample standard deviation, n - 1; 0 for one fix
    double spreadEastM = 0;
    /// The larger of the two formulas where both can be had. Not divided by sqrt(n): errors of a receiver last for minutes, so that fixes a second
    /// apart are hardly independent. Empty when neither can be had (one fix without sigmas).
    std::optional<double> radiusM;
    CircleFormula formula = CircleFormula::FromReceiver;
    int quality = 0;
    QString qualityWord;
    std::vector<Offset> scatter; ///< each fix from the mean
    QByteArrayList raw;          ///< the sentences of every fix in the mean
};

/// Collects fixes until the person moves on.
class Averager {
public:
    /// @param stillRadiusM a fix further than this plus three DRMS from the mean so far means that the receiver was moved: begins anew
    explicit Averager(double stillRadiusM) : m_stillRadiusM(stillRadiusM) {}

    /// Takes a fix. A change of quality or a move begins a new mean with this fix.
    /// @error Refused: not acceptable as a test's place (simulated, estimated, typed by hand, no fix), jumped, frozen.
    Result<void> add(const Fix& fix);
    void restart() { m_fixes.clear(); }
    int count() const { return static_cast<int>(m_fixes.size()); }
    std::optional<Average> average() const;

private:
    double m_stillRadiusM;
    std::vector<Fix> m_fixes;
};

}  // namespace groundcount::position
