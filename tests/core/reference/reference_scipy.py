"""Every value of `groundcount_values distributions` again by SciPy: reference_scipy.py PROGRAM. Exit 77 with the reason when SciPy is missing."""
import math
import subprocess
import sys
from decimal import ROUND_HALF_EVEN, Decimal

try:
    import numpy as np
    from scipy import integrate, stats
except ImportError as missing:
    print(f"Skipped: {missing}; Debian packages python3-numpy and python3-scipy.")
    sys.exit(77)


def percent_within(q, n):
    a = n / 2 - 1
    # The lot's quality index has a symmetric beta law; SciPy's own distribution, not the incomplete beta function.
    return 100 * stats.beta.cdf(q, a, a, loc=-(n - 1) / math.sqrt(n), scale=2 * (n - 1) / math.sqrt(n))


def quality_index(percent, n):
    a = n / 2 - 1
    return stats.beta.ppf(percent / 100, a, a, loc=-(n - 1) / math.sqrt(n), scale=2 * (n - 1) / math.sqrt(n))


def student_upper(upper, df):
    """SciPy 1.10's inverse stops near 1e-9 (of 2 degrees of freedom its 0.01 is 6.96455672, exactly 6.96455673); one Newton
    step with its own distribution sharpens it."""
    t = stats.t.isf(upper, df)
    return t + (stats.t.sf(t, df) - upper) / stats.t.pdf(t, df)


def outlier(n, upper):
    t = student_upper(upper, n - 2)
    return (n - 1) / math.sqrt(n) * math.sqrt(t * t / (n - 2 + t * t))


def band(n, probability):
    return math.sqrt(stats.chi2.ppf(probability, n - 1) / (n - 1))


def chance_outside(n, low, high):
    df = n - 1
    return stats.chi2.cdf(df * low * low, df) + stats.chi2.sf(df * high * high, df)


def range_moments(n):
    """Mean and deviation of the range from the joint law of the two extremes, on a grid of SciPy's normal law."""
    x = np.linspace(-9, 9, 1801)
    phi, cdf = stats.norm.pdf(x), stats.norm.cdf(x)
    # E max and the second moments by the laws of the extremes; the mixed moment by the double integral.
    mean = 2 * integrate.simpson(x * n * cdf ** (n - 1) * phi, x=x)
    square = 2 * integrate.simpson(x * x * n * cdf ** (n - 1) * phi, x=x)
    between = np.clip(cdf[None, :] - cdf[:, None], 0, None) ** (n - 2) if n > 2 else np.triu(np.ones((x.size, x.size)))
    mixed = n * (n - 1) * between * phi[:, None] * phi[None, :] * x[:, None] * x[None, :]
    if n == 2:
        return mean, math.sqrt(square - mean * mean)  # the two extremes of two: E(min max) = (E x)^2 = 0
    product = integrate.simpson(integrate.simpson(np.triu(mixed), x=x, axis=1), x=x)
    return mean, math.sqrt(square - 2 * product - mean * mean)


MOMENTS = {}


def moments(n):
    return MOMENTS.setdefault(n, range_moments(int(n)))


def spread(limit, *x):
    return np.std(x, ddof=1)


def decimal_places(value, places):
    return float(Decimal(f"{value:.9f}").quantize(Decimal(1).scaleb(-places), rounding=ROUND_HALF_EVEN))


def lot_percent_chain(limit, *x):
    mean, sd = decimal_places(np.mean(x), 1), decimal_places(spread(limit, *x), 2)
    return percent_within(decimal_places((mean - limit) / sd, 2), len(x))


SECOND_WAY = {
    "programme_mean": lambda limit, *x: np.mean(x),
    "programme_sd": spread,
    "programme_pwl": lambda limit, *x: percent_within((np.mean(x) - limit) / spread(limit, *x), len(x)),
    "programme_pwl_chain": lot_percent_chain,
    "programme_outlier": lambda limit, *x: np.max(np.abs(stats.zscore(x, ddof=1))),
    "programme_last_moving_mean": lambda limit, *x: np.convolve(x, np.full(4, 0.25), "valid")[-1],
    "programme_chart_upper": lambda limit, *x: np.mean(x) + 2.66 * np.mean(np.abs(np.diff(x))),
    "percent_within": percent_within,
    "quality_index": quality_index,
    "normal_index": lambda percent: stats.norm.ppf(percent / 100),
    "student_upper": student_upper,
    "student_two_sided": lambda t, df: 2 * stats.t.sf(abs(t), df),
    "fisher_upper": stats.f.isf,
    "fisher_cdf": stats.f.cdf,
    "normal_cdf": stats.norm.cdf,
    "stability_low": lambda n, confidence: band(n, (1 - confidence) / 2),
    "stability_high": lambda n, confidence: band(n, 1 - (1 - confidence) / 2),
    "chance_outside": chance_outside,
    "outlier_one": lambda n, alpha: outlier(n, alpha / n),
    "outlier_two": lambda n, alpha: outlier(n, alpha / (2 * n)),
    "chart_d2": lambda n: moments(n)[0],
    "chart_d3": lambda n: moments(n)[1],
}
# Relative to the value, or absolute where it is below 1e-3: both sides work in double precision; the grid of the range is coarser.
TOLERANCE = {name: 1e-9 for name in SECOND_WAY} | {"chart_d2": 1e-8, "chart_d3": 1e-5}
FEWEST_ROWS = 2000

rows = [line.split("\t") for line in subprocess.run([sys.argv[1], "distributions"], check=True, capture_output=True, text=True).stdout.splitlines()]
worst = {}
failures = []
for name, *numbers in rows:
    *arguments, ours = map(float, numbers)
    theirs = float(SECOND_WAY[name](*arguments))
    difference = abs(ours - theirs) / max(abs(theirs), 1e-3)
    worst[name] = max(worst.get(name, (0, 0))[0], difference), worst.get(name, (0, 0))[1] + 1
    if not difference <= TOLERANCE[name]:
        failures.append(f"{name}{tuple(arguments)}: core {ours!r}, SciPy {theirs!r}")
for name, (difference, count) in worst.items():
    print(f"{name}: {count} values, largest difference {difference:.1e}, allowed {TOLERANCE[name]:.0e}")
for failure in failures[:20]:
    print(failure)
missing = sorted(set(SECOND_WAY) - set(worst))
if missing or len(rows) < FEWEST_ROWS:
    print(f"{len(rows)} values, at least {FEWEST_ROWS} expected; without a value: {missing}")
    sys.exit(1)
print(f"{len(rows)} values, {len(failures)} differ")
sys.exit(1 if failures else 0)
