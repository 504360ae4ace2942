#pragma once

#include "method/accept/evaluation_rules.h"
#include "method/accept/requirement.h"
#include "method/error.h"
#include "method/gauge/calibration.h"
#include "method/gauge/offsets.h"
#include "method/quantity.h"

#include <array>
#include <optional>

/// One test, from what was typed to a verdict. No allocation on the way unless something is refused; the arithmetic as
/// text is method/accept/explain.h.
namespace groundcount::method {

/// How the gauge gave its reading.
enum class ReadingForm {
    Counts,        ///< density and moisture counts, worked through the calibration
    WaterDensity,  ///< the gauge's own wet density and water density
    WaterContent   ///< the gauge's own wet density and water content
};

/// One position of the gauge over the hole.
struct ReadingInput {
    ReadingForm form = ReadingForm::Counts;
    double densityCount = 0;   ///< counts on the standard count's time base, > 0
    double moistureCount = 0;  ///< counts on the standard count's time base, > 0
    WetDensity wet;
    WaterDensity water;
    WaterContent content;
};

/// Standard counts on the reference block, in the trench and outside.
struct TrenchCounts {
    double inTrench = 0;
    double outside = 0;
};

/// What the gauge's papers and offsets bring. Only Counts readings need standards and curves.
struct GaugeInput {
    double densityStandard = 0;
    double moistureStandard = 0;
    std::optional<DensityCurve> densityCurve;  ///< of the test's depth; depths are never interpolated
    std::optional<WaterCurve> waterCurve;
    std::optional<TrenchCounts> trenchDensity;
    std::optional<TrenchCounts> trenchMoisture;
    double densityBiasKgPerM3 = 0;  ///< added to the wet density
    std::optional<MoistureCorrection> moistureCorrection;
};

/// The sieve that parts coarse from fine. @source [T99-SCOPE]
enum class SplitSieve { No4, ThreeQuarterInch };

/// The dug and sieved check sample, moist masses in one unit (shown as grams in messages).
struct SampleInput {
    double totalMass = 0;     ///< A: all of it that passes 3 in., > 0
    double retainedMass = 0;  ///< B: retained on the split sieve, 0 to A
    SplitSieve sieve = SplitSieve::ThreeQuarterInch;
};

/// The laboratory's reference for the fine fraction.
struct ReferenceInput {
    DryDensity maximum;
    WaterContent optimum;
    std::optional<DryDensity> maximumStandardUncertainty;
    std::optional<double> coarseGravity;  ///< bulk oven-dry specific gravity of the retained material
    std::optional<WaterContent> coarseWater;
    std::optional<double> solidsGravity;  ///< specific gravity of the solids, for the saturation remark only
};

/// What has still to come before the verdict is final.
enum class Awaiting { Nothing, Sample, Oven };
/// Whether a check of the test was overridden with a reason; an overridden test is information only.
enum class Standing { Regular, Overridden };

struct TestInput {
    std::array<ReadingInput, 2> readings;
    int readingCount = 1;
    GaugeInput gauge;
    std::optional<SampleInput> sample;
    std::optional<WaterContent> otherContent;  ///< oven, carbide or microwave, of the total material
    ReferenceInput reference;
    Requirement requirement;
    Awaiting awaiting = Awaiting::Nothing;
    Standing standing = Standing::Regular;
};

enum class Outcome { Pass, Fail, InformationOnly, Provisional };

/// Why a verdict is what it is, and what a person should look at.
enum class Reason {
    DensityLow, DensityHigh, TooDry, TooWet, AwaitsSample, AwaitsOven, CheckOverridden,
    OutsideDensityCurve, OutsideWaterCurve, LargeTrenchOffset, AboveSaturation
};

/// Up to kMost reasons in the order found.
class Reasons {
public:
    static constexpr int kMost = 11;
    void add(Reason r) { m_list[static_cast<std::size_t>(m_count++)] = r; }
    bool has(Reason r) const
    {
        for (const auto x : *this)
            if (x == r)
                return true;
        return false;
    }
    const Reason* begin() const { return m_list.data(); }
    const Reason* end() const { return m_list.data() + m_count; }
    int count() const { return m_count; }

private:
    std::array<Reason, kMost> m_list{};
    int m_count = 0;
};

/// One reading worked through counts, calibration and offsets.
struct ReadingResult {
    double densityRatio = 0;   ///< 0 when the reading was not given as counts
    double moistureCorrected = 0;  ///< moisture count after the trench offset
    double densityCorrected = 0;
    double moistureRatio = 0;
    WetDensity wetAsRead;      ///< before the density bias
    WetDensity wet;
    WaterDensity waterAsRead;  ///< before the moisture correction
    WaterDensity water;
};

/// Figures after the rounding chain, in the rule set's density unit and in percent.
struct Reported {
    double wet = 0, water = 0, dry = 0, contentPct = 0, maximum = 0, optimumPct = 0, compactionPct = 0;
};

struct Evaluation {
    std::array<ReadingResult, 2> readings;
    int readingCount = 0;
    WetDensity wet;
    WaterDensity water;
    WaterContent content;
    DryDensity dry;
    CoarsePart coarse;               ///< of the dry mass; 0 without a sample
    bool coarseCorrected = false;
    WaterContent coarseWater;        ///< the one used for the coarse part
    DryDensity maximum;              ///< after coarse-particle correction
    WaterContent optimum;            ///< after coarse-particle correction
    PercentCompaction compaction;    ///< unrounded chain, or from rounded figures as the rule set says
    Reported reported;
    std::optional<double> saturationPct;  ///< needs the solids' gravity; above 100 is reported, never clamped
    WindowBounds window;             ///< on the reported optimum
    Outcome outcome = Outcome::Provisional;
    bool densityMet = false;
    bool moistureMet = false;
    Reasons reasons;
    std::optional<double> expandedUncertaintyPct;  ///< k = 2, of percent compaction; needs the maximum's uncertainty
    double expandedContentPct = 0;                 ///< k = 2, of the water content
};

/// Works one test in the order of method section 13: trench offset on counts, count ratio, calibration, density bias,
/// moisture correction, second reading, dry density and water content, coarse-particle correction of the maximum and the
/// optimum, percent compaction, rounding chain, verdict, uncertainty beside it.
///
/// Verdict: InformationOnly when a check was overridden; else Provisional while something is awaited; else Fail when the
/// percent compaction or the water content is outside its inclusive bounds; else Pass.
/// @param input one or two readings of one form
/// @return figures, verdict and reasons
/// @error Refused by any guard on the way: the thing, its value, the allowed range
/// @source [D6938-TXT], [UFC-322020], [D4718-TXT], [COPPELL]
Result<Evaluation> evaluate(const TestInput& input, const EvaluationRules& rules);

/// "pass", "fail", "information only", "provisional".
const char* word(Outcome outcome);
/// "density low", "too wet" and so on.
const char* word(Reason reason);
/// True for a remark that does not make a test fail or wait.
bool isRemark(Reason reason);

}  // namespace groundcount::method
