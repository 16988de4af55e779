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

mixed = [(k, n, a, b, float(stats.betabinom.sf(k - 1, n, a, b))) for a, b in [(46.5, 4.5), (9.5, 1.5), (0.5, 0.5), (360.5, 40.5)]
         for n, k in [(10, 7), (50, 40), (300, 240), (327, 240), (400, 240), (1000, 800)]]
write("statistics/binomial.beta-tail.csv", ["k", "n", "a", "b", "atLeastFraction"], mixed, "betabinom.sf", "1e-9 relative",
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
