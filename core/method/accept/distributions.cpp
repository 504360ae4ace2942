#include "method/accept/distributions.h"

#include <algorithm>

// GCC 12 takes the silent error policy below for a path that leaves a variable of Boost 1.74 unset.
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"
#include <boost/math/distributions/fisher_f.hpp>
#pragma GCC diagnostic pop

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <boost/math/special_functions/beta.hpp>
#include <cmath>

namespace groundcount::method {
namespace {

namespace bm = boost::math;
namespace bp = boost::math::policies;

// Core throws nothing: every complaint of Boost becomes NaN or infinity.
using Quiet = bp::policy<bp::domain_error<bp::ignore_error>, bp::pole_error<bp::ignore_error>, bp::overflow_error<bp::ignore_error>,
                         bp::evaluation_error<bp::ignore_error>, bp::rounding_error<bp::ignore_error>, bp::indeterminate_result_error<bp::ignore_error>>;
using Student = bm::students_t_distribution<double, Quiet>;
using Fisher = bm::fisher_f_distribution<double, Quiet>;
using Normal = bm::normal_distribution<double, Quiet>;

}  // namespace

double incompleteBeta(double a, double b, double z)
{
    return bm::ibeta(a, b, z, Quiet());
}

double incompleteBetaInverse(double a, double b, double p)
{
    return bm::ibeta_inv(a, b, p, Quiet());
}

double studentUpper(double upper, double degreesOfFreedom)
{
    return bm::quantile(bm::complement(Student(degreesOfFreedom), upper));
}

double studentTwoSidedP(double t, double degreesOfFreedom)
{
    return 2 * bm::cdf(bm::complement(Student(degreesOfFreedom), std::abs(t)));
}

double fisherUpper(double upper, double numeratorDf, double denominatorDf)
{
    return bm::quantile(bm::complement(Fisher(numeratorDf, denominatorDf), upper));
}

double fisherCdf(double f, double numeratorDf, double denominatorDf)
{
    return bm::cdf(Fisher(numeratorDf, denominatorDf), f);
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
