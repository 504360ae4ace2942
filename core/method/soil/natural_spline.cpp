#include "method/soil/natural_spline.h"

#include "method/sentence.h"

#include <Eigen/Dense>
#include <algorithm>

namespace groundcount::method {

Result<NaturalSpline> NaturalSpline::through(std::span<const double> x, std::span<const double> y)
{
    if (x.size() != y.size() || x.size() < 3)
        return refusedValue("Number of points of a spline", static_cast<double>(std::min(x.size(), y.size())), "",
                            "at least 3, as many densities as water contents");
    for (std::size_t i = 0; i < x.size(); ++i)
        if (!std::isfinite(x[i]) || !std::isfinite(y[i]) || (i > 0 && !(x[i] > x[i - 1])))
            return refusedValue("Water content of a point", x[i], " %", "above the one before, with a density");
    NaturalSpline spline;
    spline.m_x.assign(x.begin(), x.end());
    spline.m_y.assign(y.begin(), y.end());
    const auto n = static_cast<Eigen::Index>(x.size());
    Eigen::MatrixXd system = Eigen::MatrixXd::Identity(n, n);
    Eigen::VectorXd right = Eigen::VectorXd::Zero(n);
    for (Eigen::Index i = 1; i + 1 < n; ++i) {
        const auto k = static_cast<std::size_t>(i);
        const double before = x[k] - x[k - 1];
        const double after = x[k + 1] - x[k];
        system(i, i - 1) = before;
        system(i, i) = 2.0 * (before + after);
        system(i, i + 1) = after;
        right(i) = 6.0 * ((y[k + 1] - y[k]) / after - (y[k] - y[k - 1]) / before);
    }
    const Eigen::VectorXd bend = system.partialPivLu().solve(right);
    spline.m_bend.assign(bend.data(), bend.data() + bend.size());
    return spline;
}

double NaturalSpline::at(double x) const
{
    std::size_t k = 0;
    while (k + 2 < m_x.size() && x > m_x[k + 1])
        ++k;
    const double h = m_x[k + 1] - m_x[k];
    const double a = (m_x[k + 1] - x) / h;
    const double b = (x - m_x[k]) / h;
    return a * m_y[k] + b * m_y[k + 1] + ((a * a * a - a) * m_bend[k] + (b * b * b - b) * m_bend[k + 1]) * h * h / 6.0;
}

Vertex NaturalSpline::highest() const
{
    std::vector<double> places = m_x;
    for (std::size_t k = 0; k + 1 < m_x.size(); ++k) {
        // dy/dx = p s^2 + q s + r with s = x - x_k: the two places where it may turn.
        const double h = m_x[k + 1] - m_x[k];
        const double p = (m_bend[k + 1] - m_bend[k]) / (2.0 * h);
        const double q = m_bend[k];
        const double r = (m_y[k + 1] - m_y[k]) / h - h * (2.0 * m_bend[k] + m_bend[k + 1]) / 6.0;
        const double root = std::sqrt(std::max(0.0, q * q - 4.0 * p * r));
        // The form r/(...) stays exact when p is nearly 0 and the derivative a straight line.
        for (const double sign : {1.0, -1.0}) {
            const double s = -2.0 * r / (q + sign * root);
            if (s > 0 && s < h)
                places.push_back(m_x[k] + s);
        }
    }
    Vertex best{m_x.front(), m_y.front()};
    for (const double place : places)
        if (const double value = at(place); value > best.y)
            best = {place, value};
    return best;
}

}  // namespace groundcount::method
