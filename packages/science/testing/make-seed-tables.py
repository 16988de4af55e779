"""Makes the tables of reference values for seed: ageing by tests, reserve over a belief, off-type trends.

Written apart from the TypeScript, with NumPy and SciPy 1.17.1; run once, by hand:
    python3 packages/science/testing/make-seed-tables.py
"""
import pathlib

import numpy as np
from scipy import integrate, optimize, stats

HERE = pathlib.Path(__file__).parent.parent / "src/seed"
RATE_SD = np.log(2.5) / stats.norm.ppf(0.95)


def write(path, columns, rows, note, tolerance, checks, digits="6 significant digits"):
    lines = [f"# source: scipy-1-17 {note}", "# kind: worked", f"# printed-to: {digits}", f"# tolerance: {tolerance}",
             f"# checks: {checks}", ",".join(columns)]
    lines += [",".join(f"{cell:.6g}" for cell in row) for row in rows]
    (HERE / path).write_text("\n".join(lines) + "\n")
    print(path, len(rows))


def posterior(tests):
    """Fine grid over start (probits) and log rate; Jeffreys' prior on the start, as a density of its probit."""
    z = np.linspace(-5, 12, 3401)[:, None]
    e = np.linspace(-3.5, 3.5, 701)[None, :] * RATE_SD
    logw = stats.norm.logpdf(z) - 0.5 * (stats.norm.logcdf(z) + stats.norm.logsf(z)) + stats.norm.logpdf(e / RATE_SD)
    for lost, x, n in tests:
        at = z - lost * np.exp(e)
        logw = logw + x * stats.norm.logcdf(at) + (n - x) * stats.norm.logsf(at)
    w = np.exp(logw - logw.max())
    return z, e, w / w.sum()


def summary(values, w):
    order = np.argsort(values, axis=None)
    v, c = values.ravel()[order], np.cumsum(w.ravel()[order])
    return float((values * w).sum()), float(v[np.searchsorted(c, 0.05)]), float(v[np.searchsorted(c, 0.95)])


rows = []
for first, second, ahead in [((0, 46, 50), None, 0), ((0, 46, 50), None, 0.5), ((0, 46, 50), (0.4, 44, 50), 0.8),
                             ((0, 98, 100), (0.5, 60, 100), 1.0), ((0, 49, 50), (1.0, 48, 50), 2.0), ((0.3, 380, 400), None, 0.6)]:
    tests = [first] + ([second] if second else [])
    z, e, w = posterior(tests)
    p = stats.norm.cdf(z - ahead * np.exp(e))
    mean, low, high = summary(p, w)
    b = second or (0, 0, 0)
    rows.append((*first, *b, ahead, mean, low, high))
write("lot-ageing.posterior.csv",
      ["lost1", "sprouted1", "tested1", "lost2", "sprouted2", "tested2", "aheadProbits", "meanFraction", "lowFraction", "highFraction"],
      rows, "Bayes' rule on a fine grid", "0.004, the width of a bin of the thinned belief at its ends", "meanFraction, lowFraction, highFraction")


def reached(need, n, x, of, survival):
    f = lambda p: stats.binom.sf(need - 1, n, p * survival) * stats.beta.pdf(p, x + 0.5, of - x + 0.5)
    spread = stats.beta.ppf([1e-9, 0.5, 1 - 1e-9], x + 0.5, of - x + 0.5)
    return sum(integrate.quad(f, a, b, epsabs=1e-10, limit=400)[0] for a, b in zip(spread, spread[1:]))


def fewest(need, x, of, survival, confidence):
    low, high = need, 40 * need
    while high - low > 1:
        middle = (low + high) // 2
        low, high = (low, middle) if reached(need, middle, x, of, survival) >= confidence else (middle, high)
    return high


reserve = [(need, x, of, s, c, fewest(need, x, of, s, c)) for need, x, of, s, c in
           [(240, 46, 50, 0.8, 0.95), (240, 92, 100, 0.8, 0.95), (240, 10, 10, 0.8, 0.95), (240, 9, 10, 0.8, 0.9),
            (100, 45, 50, 1, 0.95), (500, 360, 400, 0.7, 0.99), (20, 17, 20, 1, 0.8)]]
write("reserve-by-belief.reference.csv",
      ["plantsNeededCount", "sproutedCount", "testedCount", "survivalFraction", "confidenceFraction", "kernelsCount"], reserve,
      "beta density and binomial tail, by quadrature", "0.3 %, the thinning of the belief to 200 points", "kernelsCount")


def firth(counts):
    year, off, of = (np.array(c, float) for c in zip(*counts))
    x = year - (year.min() + year.max()) / 2
    def minus(b):
        p = 1 / (1 + np.exp(-(b[0] + b[1] * x)))
        w = of * p * (1 - p)
        det = w.sum() * (w * x * x).sum() - (w * x).sum() ** 2
        return -(stats.binom.logpmf(off, of, p).sum() + 0.5 * np.log(det))
    best = optimize.minimize(minus, [-3, 0], method="Nelder-Mead", options=dict(xatol=1e-11, fatol=1e-13, maxiter=20000)).x
    p = 1 / (1 + np.exp(-(best[0] + best[1] * x)))
    w = of * p * (1 - p)
    det = w.sum() * (w * x * x).sum() - (w * x).sum() ** 2
    half = stats.norm.ppf(0.975) * np.sqrt(w.sum() / det)
    return float(np.exp(best[1])), float(np.exp(best[1] - half)), float(np.exp(best[1] + half))


SERIES = {1: [(2020, 3, 200), (2021, 4, 200), (2022, 9, 240), (2023, 11, 220), (2024, 15, 200)],
          2: [(2022, 0, 100), (2023, 0, 120), (2024, 0, 100)],
          3: [(2022, 0, 100), (2023, 2, 120), (2024, 5, 100)],
          4: [(2018, 12, 300), (2021, 6, 300), (2024, 2, 280)],
          5: [(2023, 4, 100), (2024, 4, 100)]}
write("off-type-trend.reference.csv", ["series", "oddsRatioPerYear", "low", "high"],
      [(name, *firth(counts)) for name, counts in SERIES.items()],
      "penalised likelihood of firth-1993 climbed by Nelder-Mead", "1e-5 relative", "oddsRatioPerYear, low, high")
