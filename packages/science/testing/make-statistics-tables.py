"""Makes the tables of reference values beside the statistics tests, with SciPy 1.17.1 and mpmath 1.3.0.

Run once, by hand, in any environment that has both; the project itself needs neither.
    python3 packages/science/testing/make-statistics-tables.py
"""
import math
import pathlib

import mpmath
import numpy as np
from scipy import optimize, stats

HERE = pathlib.Path(__file__).parent.parent / "src"
mpmath.mp.dps = 40


def write(path, columns, rows, note, tolerance, **headers):
    lines = ["# source: scipy-1-17 " + note, "# kind: worked", "# printed-to: 15 significant digits",
             "# tolerance: " + tolerance]
    lines += [f"# {name}: {value}" for name, value in headers.items()]
    lines.append(",".join(columns))
    lines += [",".join(repr(float(cell)) if not float(cell).is_integer() else str(int(cell)) for cell in row) for row in rows]
    (HERE / path).write_text("\n".join(lines) + "\n")
    print(path, len(rows))


def mp_ncdf(z):
    return float(mpmath.ncdf(mpmath.mpf(z)))


normal = [(z, mp_ncdf(z)) for z in [-30, -20, -12, -8, -6, -5, *np.round(np.arange(-4, 4.01, 0.25), 2), 5, 6, 8]]
write("statistics/normal.cdf.csv", ["z", "belowFraction"], normal, "mpmath ncdf, 40 digits", "1e-13 relative")

shares = [1e-12, 1e-9, 1e-6, 1e-4, 0.001, 0.01, 0.025, 0.05, 0.1, 0.2, 0.3, 0.4, 0.45, 0.499, 0.5, 0.501, 0.6, 0.75, 0.8,
          0.85, 0.9, 0.95, 0.975, 0.99, 0.999, 0.9999, 0.999999]
write("statistics/normal.quantile.csv", ["belowFraction", "z"], [(p, stats.norm.ppf(p)) for p in shares],
      "norm.ppf", "1e-12 absolute")

logs = [(x, float(mpmath.loggamma(mpmath.mpf(x)))) for x in
        (1e-6, 0.001, 0.1, 0.25, 0.5, 0.75, 1.25, 1.5, 1.75, 2.5, 3, 4.5, 7, 10.5, 11.9, 12, 12.1, 20.5, 46.5, 100, 360.5, 1001,
         5000.5, 100001, 1e7)]
write("statistics/gamma.log.csv", ["x", "lnGamma"], logs, "mpmath loggamma, 40 digits", "1e-13 relative, 2e-14 absolute where the logarithm passes 0")

shapes = [(0.5, 0.5), (0.5, 10.5), (1, 1), (1, 30), (2, 3), (5, 0.5), (10.5, 0.5), (46.5, 4.5), (9.5, 1.5), (90, 11), (200, 200),
          (360.5, 40.5), (3, 1000), (5000, 500), (20000, 3000)]
beta_rows = []
for a, b in shapes:
    for q in (1e-6, 0.001, 0.025, 0.25, 0.5, 0.8, 0.975, 0.999):
        x = float(stats.beta.ppf(q, a, b))
        if not 0 < x < 1:
            continue
        beta_rows.append((a, b, x, float(mpmath.betainc(a, b, 0, x, regularized=True))))
write("statistics/beta.cdf.csv", ["a", "b", "x", "belowFraction"], beta_rows, "points of beta.ppf, value by mpmath betainc",
      "1e-10 relative", checks="belowFraction")
quantiles = [(a, b, q, float(stats.beta.ppf(q, a, b))) for a, b in shapes for q in (0.001, 0.025, 0.1, 0.5, 0.9, 0.975, 0.999)]
write("statistics/beta.quantile.csv", ["a", "b", "belowFraction", "x"], quantiles, "beta.ppf", "1e-10 relative", checks="x")

tails = [(k, n, p, float(stats.binom.sf(k - 1, n, p))) for n in (1, 5, 10, 25, 50, 100, 400, 1000, 5000)
         for p in (0.02, 0.3, 0.5, 0.736, 0.9, 0.98) for k in sorted({1, max(1, round(n * p * 0.8)), max(1, round(n * p)), n})
         if stats.binom.sf(k - 1, n, p) > 1e-200]
write("statistics/binomial.tail.csv", ["k", "n", "p", "atLeastFraction"], tails, "binom.sf", "1e-10 relative",
      checks="atLeastFraction")



def mp_betabinom_from(k, n, a, b):
    chance = lambda j: mpmath.binomial(n, j) * mpmath.beta(j + a, n - j + b) / mpmath.beta(a, b)
    return float(sum(chance(j) for j in range(k, n + 1)))


mixed = [(k, n, a, b, mp_betabinom_from(k, n, a, b))
         for a, b in [(46.5, 4.5), (9.5, 1.5), (0.5, 0.5), (360.5, 40.5), (1, 1), (25.5, 25.5), (0.5, 20.5)]
         for n, k in [(1, 1), (10, 7), (25, 25), (50, 40), (50, 5), (300, 240), (327, 240), (400, 240), (400, 399), (1000, 800)]
         if mp_betabinom_from(k, n, a, b) > 1e-200]
write("statistics/binomial.beta-tail.csv", ["k", "n", "a", "b", "atLeastFraction"], mixed, "mpmath sums, 40 digits", "1e-9 relative",
      checks="atLeastFraction")

limits = []
for n in (1, 4, 10, 20, 25, 50, 100, 200, 400, 1000, 10000):
    for x in sorted({0, 1, n // 2, round(n * 0.85), round(n * 0.92), n - 1, n}):
        if not 0 <= x <= n:
            continue
        for c in (0.8, 0.95, 0.99):
            test = stats.binomtest(x, n)
            exact, score = test.proportion_ci(c, "exact"), test.proportion_ci(c, "wilson")
            limits.append((x, n, c, exact.low, exact.high, score.low, score.high))
write("statistics/intervals.grid.csv", ["foundCount", "ofCount", "confidenceFraction", "exactLow", "exactHigh", "wilsonLow",
      "wilsonHigh"], limits, "binomtest.proportion_ci", "1e-9 absolute", checks="exactLow, exactHigh, wilsonLow, wilsonHigh")


differences = []
for first in [(56, 70), (46, 50), (10, 10), (0, 20), (9, 10), (360, 400), (1, 1), (495, 500)]:
    for second in [(48, 80), (40, 50), (0, 10), (20, 20), (23, 25), (340, 400), (0, 1), (470, 500)]:
        for c in (0.8, 0.95, 0.99):
            one, two = (stats.binomtest(*t).proportion_ci(c, "wilson") for t in (first, second))
            p, q = first[0] / first[1], second[0] / second[1]
            differences.append((*first, *second, c, p - q - math.sqrt((p - one.low) ** 2 + (two.high - q) ** 2),
                                p - q + math.sqrt((one.high - p) ** 2 + (q - two.low) ** 2)))
write("statistics/difference.grid.csv", ["firstFound", "firstOf", "secondFound", "secondOf", "confidenceFraction", "low", "high"],
      differences, "Wilson limits of binomtest.proportion_ci, joined as method 10 joins them", "1e-9 absolute",
      checks="low, high")


def exact_width(n, p, c):
    x = n * p
    low = 0 if x == 0 else stats.beta.ppf((1 - c) / 2, x, n - x + 1)
    high = 1 if x == n else stats.beta.ppf((1 + c) / 2, x + 1, n - x)
    return high - low


sizes = []
for p in (0.5, 0.8, 0.9, 0.95, 1):
    for width in (0.05, 0.1, 0.12, 0.2, 0.3):
        for c in (0.8, 0.95):
            sizes.append((p, width, c, next(n for n in range(1, 20000) if exact_width(n, p, c) <= width)))
write("statistics/intervals.test-size.csv", ["likelyFraction", "widthFraction", "confidenceFraction", "testCount"], sizes,
      "beta.ppf, counted up from 1", "exact", checks="testCount")
