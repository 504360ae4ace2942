#pragma once

#include "method/error.h"

#include <optional>
#include <span>

namespace groundcount::method {

/// Result of comparing today's standard count with the mean of earlier ones.
struct PercentCheck {
    double mean = 0;              ///< Navg, counts
    double deviationPercent = 0;  ///< 100 (N - Navg)/Navg, signed
    bool isAccepted = false;
};

/// What to do with fewer than k earlier counts. To use the calibration count instead, pass it as the only earlier one.
enum class FewCounts { AverageThem, Refuse };

/// How many earlier counts make the mean.
struct Averaging {
    int count = 4;                              ///< k, at least 1; the last k are used
    FewCounts ifFewer = FewCounts::AverageThem;
};

/// Percent rule: 100 abs(N - Navg) <= p Navg, Navg = mean of the last k counts, limit inclusive.
/// @param earlier counts, oldest first, each above 0 @param today N, above 0 @param limitPercent p, above 0
/// @error Refused for no earlier count, fewer than k where the setting says so, a count not above 0, p not above 0.
/// @source [QCFORM-2011] for 1 % density and 2 % moisture; k = 4 and the fallback [COMMON]
Result<PercentCheck> percentCheck(std::span<const double> earlier, double today, double limitPercent, Averaging averaging);

enum class TwoStepOutcome {
    AcceptFirst,   ///< first within p1 of the established count
    TakeSecond,    ///< first outside, no second count yet
    AcceptSecond,  ///< the two within p2 of each other, both within p3; the second becomes the established count [DESIGN]
    Fail
};

struct TwoStepLimits {
    double firstPercent = 0;        ///< p1
    double pairPercent = 0;         ///< p2, of the first count
    double establishedPercent = 0;  ///< p3
};

struct TwoStepCheck {
    double firstPercent = 0;               ///< 100 abs(first - established)/established
    std::optional<double> pairPercent;     ///< 100 abs(second - first)/first
    std::optional<double> secondPercent;   ///< 100 abs(second - established)/established
    TwoStepOutcome outcome = TwoStepOutcome::Fail;
};

/// Two-step percent rule, limits inclusive. @param established, first, second counts, above 0
/// @error Refused for a count or a limit not above 0. @source [IA-IM334]
Result<TwoStepCheck> twoStepCheck(double established, double first, std::optional<double> second,
                                  const TwoStepLimits& limits);

struct StatisticalCheck {
    double limitCounts = 0;   ///< z sqrt(No/F)
    double difference = 0;    ///< abs(Ns - No)
    bool isAccepted = false;
};

/// Statistical rule for single counts: abs(Ns - No) <= z sqrt(No/F), inclusive.
/// @param average No, above 0 @param today Ns, above 0 @param prescale F, above 0 @param z 1.96 (older 2.0), above 0
/// @error Refused otherwise. @source [D2922-TXT]
Result<StatisticalCheck> statisticalCheck(double average, double today, double prescale, double z);

struct DecayBand {
    double lower = 0;
    double upper = 0;
    bool isAccepted = false;
};

/// Band about the decayed calibration count: Nc f (1 - q) <= N <= Nc f (1 + q), f = exp(-ln2 t/T), inclusive.
/// @param calibrationCount Nc, above 0 @param elapsedDays t, at least 0 @param halfLifeDays T, above 0
/// @param tolerance q as a fraction, above 0 and below 1 (0.01 density, 0.02 moisture) @param today N, above 0
/// @error Refused otherwise. @source [D6938-TXT]
Result<DecayBand> decayBand(double calibrationCount, double elapsedDays, double halfLifeDays, double tolerance, double today);

}  // namespace groundcount::method
