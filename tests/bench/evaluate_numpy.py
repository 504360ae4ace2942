"""The same chain as evaluate_bench.cpp, vectorised in NumPy: the same guards, remarks, seven reported figures, verdict and uncertainty.
Prints tests per second of processor time, the best of the rounds, twice: all tests at once, and in blocks of 4096 that stay in the
cache (faster, and harder to write: every intermediate array is then reused)."""
import sys
import time
import numpy as np

n = 200_000
rng = np.random.default_rng(20260609)
density = np.round(rng.uniform(2200, 3400, n))
moisture = np.round(rng.uniform(110, 190, n))
retained = np.round(rng.uniform(200, 700, n))


def chain(density, moisture, retained):
    sound = (density > 0) & (density <= 1e6) & (moisture > 0) & (moisture <= 1e6)
    ratio = density / 2853.0
    shifted = ratio + 0.05
    sound &= (shifted > 0) & (shifted <= 12.0)
    wet = np.log(12.0 / shifted) / 0.019
    water_ratio = moisture / 671.0
    sound &= water_ratio >= 0.012
    water = (water_ratio - 0.012) / 0.0165
    sound &= (wet >= 20.0) & (wet <= 250.0) & (water >= 0) & (water < wet)
    outside_density = (wet < 90.0) | (wet > 160.0)
    outside_water = (water < 0.0) | (water > 30.0)
    dry = wet - water
    w = 100.0 * water / dry
    dry_total = 3200.0 / (1 + w / 100)
    dry_coarse = retained / 1.018
    sound &= (retained >= 0) & (retained <= 3200.0) & (dry_total > dry_coarse)
    pc = 100.0 * dry_coarse / dry_total
    sound &= pc <= 30.0
    correct = pc > 5.0
    maximum = np.where(correct, 100.0 / ((100 - pc) / 118.6 + pc / (2.62 * 62.4)), 118.6)
    optimum = np.where(correct, (12.8 * (100 - pc) + 1.8 * pc) / 100.0, 12.8)
    compaction = 100.0 * dry / maximum
    sound &= (np.abs(w) < 1e8) & (np.abs(compaction) < 1e8)
    reported = [np.round(figure, 1) for figure in (wet, water, dry, w, maximum, optimum, compaction)]
    w_reported, optimum_reported, compaction_reported = reported[3], reported[5], reported[6]
    low, high = optimum_reported - 2.0, optimum_reported + 2.0
    too_dry, too_wet, density_low = w_reported < low, w_reported > high, compaction_reported < 95.0
    passed = sound & ~(too_dry | too_wet | density_low)
    u_dry = dry * np.sqrt((0.5 / wet) ** 2 + (0.4 / (100 + w)) ** 2)
    u = 2 * compaction * np.sqrt((u_dry / dry) ** 2 + (0.9 / maximum) ** 2)
    return sound, outside_density, outside_water, reported, too_dry, too_wet, density_low, passed, u


def best(block):
    blocks = [slice(k, k + block) for k in range(0, n - block + 1, block)]
    fastest = 1e9
    for _ in range(5):
        start = time.process_time()
        repeats = 3
        for _ in range(repeats):
            for one in blocks:
                chain(density[one], moisture[one], retained[one])
        fastest = min(fastest, (time.process_time() - start) / (repeats * len(blocks) * block))
    return 1 / fastest


print(f"{best(n):.0f} {best(4096):.0f}", file=sys.stdout)
