#include "method/site/moisture_sample.h"

#include <array>
#include <string>

namespace groundcount::method {
namespace {

constexpr Length mm(double v)
{
    return Length::metres(v / 1000.0);
}

// Sieve openings: No. 40 0.425, No. 10 2, No. 4 4.75 mm (from memory, common practice, no source).
constexpr std::array kD2216One = {MoistureSampleRow{mm(2), 20}, MoistureSampleRow{mm(4.75), 20}, MoistureSampleRow{mm(9.5), 50},
                                  MoistureSampleRow{mm(19), 250}, MoistureSampleRow{mm(37.5), 1000}, MoistureSampleRow{mm(75), 5000}};
constexpr std::array kD2216Tenth = {MoistureSampleRow{mm(2), 20}, MoistureSampleRow{mm(4.75), 100}, MoistureSampleRow{mm(9.5), 500},
                                    MoistureSampleRow{mm(19), 2500}, MoistureSampleRow{mm(37.5), 10000}, MoistureSampleRow{mm(75), 50000}};
constexpr std::array kT265 = {MoistureSampleRow{mm(0.425), 10}, MoistureSampleRow{mm(4.75), 100}, MoistureSampleRow{mm(12.5), 300},
                              MoistureSampleRow{mm(25), 500}, MoistureSampleRow{mm(50), 1000}};
constexpr std::array kT255 = {MoistureSampleRow{mm(4.75), 500}, MoistureSampleRow{mm(9.5), 1500}, MoistureSampleRow{mm(12.5), 2000},
                              MoistureSampleRow{mm(19), 3000}, MoistureSampleRow{mm(25), 4000}, MoistureSampleRow{mm(37.5), 6000},
                              MoistureSampleRow{mm(50), 8000}, MoistureSampleRow{mm(75), 13000}};

// A sieve called 3 in. has 75 mm openings but 76.2 mm are 3 in.: 2 % lets both names meet the same row.
constexpr double kNominalSieve = 1.02;

}  // namespace

std::span<const MoistureSampleRow> moistureSampleRows(MoistureSampleRule rule)
{
    switch (rule) {
    case MoistureSampleRule::D2216ToOnePercent:
        return kD2216One;
    case MoistureSampleRule::D2216ToTenthPercent:
        return kD2216Tenth;
    case MoistureSampleRule::T265:
        return kT265;
    case MoistureSampleRule::T255:
        break;
    }
    return kT255;
}

Result<double> leastMoistureSampleG(MoistureSampleRule rule, Length largestParticle)
{
    const auto rows = moistureSampleRows(rule);
    if (largestParticle.metres() > 0)
        for (const MoistureSampleRow& row : rows)
            if (largestParticle.metres() <= row.largestParticle.metres() * kNominalSieve)
                return row.leastMassG;
    return refused("The largest particle must be above 0 and at most " + std::to_string(rows.back().largestParticle.metres() * 1000)
                   + " mm for this procedure; it is " + std::to_string(largestParticle.metres() * 1000) + ".");
}

}  // namespace groundcount::method
