#include "method/soil/parabola.h"

#include "method/sentence.h"

#include <Eigen/Dense>
#include <set>

namespace groundcount::method {

Result<Parabola> fitParabola(std::span<const double> x, std::span<const double> y)
{
    if (x.size() != y.size())
        return refused("There are " + std::to_string(x.size()) + " water contents and " + std::to_string(y.size()) +
                       " densities; the numbers must be equal.");
    for (const auto& values : {x, y})
        for (const double value : values)
            if (!std::isfinite(value))
                return refusedValue("A value of the points", value, "", "a finite number");
    if (const auto different = std::set<double>(x.begin(), x.end()).size(); different < 3)
        return refusedValue("Number of different water contents", static_cast<double>(different), "", "at least 3");
    // Centred on the mean: with x of 10 to 30 the powers of x alone would be nearly parallel.
    double centre = 0;
    for (const double value : x)
        centre += value / static_cast<double>(x.size());
    const auto rows = static_cast<Eigen::Index>(x.size());
    Eigen::MatrixXd powers(rows, 3);
    Eigen::VectorXd values(rows);
    for (Eigen::Index i = 0; i < rows; ++i) {
        const double u = x[static_cast<std::size_t>(i)] - centre;
        powers.row(i) << 1.0, u, u * u;
        values(i) = y[static_cast<std::size_t>(i)];
    }
    const Eigen::Vector3d c = powers.colPivHouseholderQr().solve(values);
    Parabola parabola;
    parabola.quadratic = c(2);
    parabola.linear = c(1) - 2.0 * c(2) * centre;
    parabola.intercept = c(0) - c(1) * centre + c(2) * centre * centre;
    const double total = (values.array() - values.mean()).square().sum();
    parabola.r2 = total > 0 ? 1.0 - (values - powers * c).squaredNorm() / total : 1.0;
    return parabola;
}

Result<Vertex> vertexOf(const Parabola& p)
{
    if (!(p.quadratic < 0) || !std::isfinite(p.linear) || !std::isfinite(p.intercept))
        return refusedValue("Quadratic coefficient of the parabola", p.quadratic, "",
                            "below 0; a parabola that opens upward has no highest point");
    return Vertex{-p.linear / (2.0 * p.quadratic), p.intercept - p.linear * p.linear / (4.0 * p.quadratic)};
}

}  // namespace groundcount::method
