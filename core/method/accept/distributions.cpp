#include "method/accept/distributions.h"

#include <algorithm>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/special_functions/beta.hpp>
#include <boost/math/tools/toms748_solve.hpp>
#include <cmath>
#include <cstdint>
#include <limits>

namespace groundcount::method {
namespace {

namespace bm = boost::math;
namespace bp = boost::math::policies;

// Core throws nothing: every complaint of Boost becomes NaN or infinity.
using Quiet = bp::policy<bp::domain_error<bp::ignore_error>, bp::pole_error<bp::ignore_error>, bp::overflow_error<bp::ignore_error>,
                         bp::evaluation_error<bp::ignore_error>, bp::rounding_error<bp::ignore_error>, bp::indeterminate_result_error<bp::ignore_error>>;
using Student = bm::students_t_distribution<double, Quiet>;
using Normal = bm::normal_distribution<double, Quiet>;

}  // namespace

double incompleteBeta(double a, double b, double z)
{
    return bm::ibeta(a, b, z, Quiet());
}

double incompleteBetaInverse(double a, double b, double p)
{
    if (!(p >= 0) || !(p <= 1))
        return std::numeric_limits<double>::quiet_NaN();
    if (p == 0 || p == 1)
        return p;
    if (a == b && p == 0.5)
        return 0.5;
    // ibeta_inv of Boost 1.74 throws for some equal a and b whatever the policy; a bracketed root of ibeta does not.
    std::uintmax_t iterations = 200;
    const auto bracket = bm::tools::toms748_solve([=](double z) { return incompleteBeta(a, b, z) - p; }, 0.0, 1.0, -p, 1 - p,
                                                  bm::tools::eps_tolerance<double>(52), iterations, Quiet());
    return (bracket.first + bracket.second) / 2;
}

double studentUpper(double upper, double degreesOfFreedom)
{
    // t^2 = v (1 - x)/x with x the lower beta point of the two-sided chance; x keeps its digits where t is large.
    const double x = incompleteBetaInverse(degreesOfFreedom / 2, 0.5, 2 * upper);
    return std::sqrt(degreesOfFreedom * (1 - x) / x);
}

double studentTwoSidedP(double t, double degreesOfFreedom)
{
    return 2 * bm::cdf(bm::complement(Student(degreesOfFreedom), std::abs(t)));
}

double fisherUpper(double upper, double numeratorDf, double denominatorDf)
{
    // The complement of the beta variable keeps its digits where F is large.
    const double rest = incompleteBetaInverse(denominatorDf / 2, numeratorDf / 2, upper);
    return denominatorDf * (1 - rest) / (numeratorDf * rest);
}

double fisherCdf(double f, double numeratorDf, double denominatorDf)
{
    return incompleteBeta(numeratorDf / 2, denominatorDf / 2, numeratorDf * f / (numeratorDf * f + denominatorDf));
}

double normalCdf(double z)
{
    return bm::cdf(Normal(), z);
}

double normalQuantile(double p)
{
    return bm::quantile(Normal(), p);
}

Result<Spread> lotSpread(std::span<const double> values)
{
    auto spread = spreadOf(values);
    if (spread && std::all_of(values.begin(), values.end(), [&](double v) { return v == values.front(); }))
        return Spread{values.front(), 0};
    return spread;
}

}  // namespace groundcount::method
