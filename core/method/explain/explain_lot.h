#pragma once

#include "method/accept/frequency.h"
#include "method/accept/lot_forms.h"
#include "method/accept/pay.h"
#include "method/accept/pwl.h"
#include "method/explain/explain_steps.h"

/// The arithmetic of a lot as text. Each takes what the function took and what it gave.
namespace groundcount::method {

/// requiredTests(). @param required what it gave @param unitWord of the quantity, for example "ft"
/// @source [FDOT-120], [FP96-209]
std::vector<ExplainStep> explainFrequency(const FrequencyRule& rule, const Decimal& quantity, int required, const std::string& unitWord);

/// Which form of acceptance judged a lot, with its limits.
struct EveryForm {
    double minimum = 0;
};
struct BandForm {
    double minimum = 0;
    double maximum = 0;
};
struct MeanForm {
    double leastMean = 0;
    double minimum = 0;
    std::optional<MeanRounding> rounding;
};
struct MovingMeanForm {
    int window = 0;
    double minimum = 0;
    std::optional<MeanRounding> rounding;
};

/// judgeEvery(). @source [DESIGN]
std::vector<ExplainStep> explainLot(std::span<const double> results, const EveryForm& form, const LotResult& lot);
/// judgeBand(). @source [COPPELL]
std::vector<ExplainStep> explainLot(std::span<const double> results, const BandForm& form, const LotResult& lot);
/// judgeMeanAndMinimum(). @source [COMMON]
std::vector<ExplainStep> explainLot(std::span<const double> results, const MeanForm& form, const LotResult& lot);
/// judgeMovingMean(). @source [COMMON]
std::vector<ExplainStep> explainLot(std::span<const double> results, const MovingMeanForm& form, const LotResult& lot);

/// lotPwl() or lotPwlFromSummary(). @source [AQLSCHEMES], [WS-106], [P401-SLIDES]
std::vector<ExplainStep> explainPwl(const PwlLimits& limits, const PwlChain& chain, const LotPwl& lot);
/// payFactor(). @param factor what it gave. @source [FDOT-334], [FAA-P401]
std::vector<ExplainStep> explainPay(std::span<const PayStep> steps, double pwl, double factor);

}  // namespace groundcount::method
