"""Makes packages/science/src/heat/cylinder-series.scipy.csv: the centre and one other place of a pint-sized cylinder whose
surface follows straight lines, by numerical integration of Duhamel's integral. Needs SciPy (Debian: python3-scipy).
Run: python3 packages/science/testing/make-cylinder-table.py > packages/science/src/heat/cylinder-series.scipy.csv
"""
import numpy as np
from scipy.integrate import quad
from scipy.special import j0, j1, jn_zeros

R, L, ALPHA, INITIAL_C = 0.0375, 0.055, 1.5e-7, 60.0
HISTORY = [(0, 80), (5, 98), (15, 99), (20, 116), (80, 116), (110, 98), (120, 40)]  # minutes, C
B = jn_zeros(0, 400)
C = (np.arange(400) + 0.5) * np.pi
SIGN = np.where(np.arange(400) % 2 == 0, 1.0, -1.0)


def left(seconds, u, v):
    """Y at r = u R, x = v l for a surface that jumped `seconds` ago."""
    if seconds < 30:  # Fo below 0.004: nothing has come this far, to 1e-12
        return 1.0
    radial = np.sum(2 * j0(B * u) / (B * j1(B)) * np.exp(-B**2 * ALPHA * seconds / R**2))
    axial = np.sum(2 * SIGN / C * np.cos(C * v) * np.exp(-C**2 * ALPHA * seconds / L**2))
    return radial * axial


def temperature(minutes, u, v):
    total = INITIAL_C + (HISTORY[0][1] - INITIAL_C) * (1 - left(minutes * 60, u, v))
    for (t0, a), (t1, b) in zip(HISTORY, HISTORY[1:]):
        end = min(t1, minutes)
        if end <= t0:
            break
        slope = (b - a) / (t1 - t0)
        total += slope * quad(lambda s: 1 - left((minutes - s) * 60, u, v), t0, end, epsabs=1e-11, epsrel=1e-11, limit=500)[0]
    return total


print("# source: scipy-1-17 quad over Duhamel's integral; carslaw-jaeger-1959 for the series")
print("# kind: worked")
print("# note: made by packages/science/testing/make-cylinder-table.py; R 3.75 cm, l 5.5 cm, 1.5e-7 m2/s, from 60 C")
print("# printed-to: 1e-6 C")
print("# tolerance: 2e-6 C, the last printed digit and the integration")
print("timeMin,centreC,halfwayC")
for minutes in [1, 3, 6, 10, 15, 17, 20, 22.5, 30, 45, 60, 80, 81, 90, 110, 113, 120]:
    print(f"{minutes},{temperature(minutes, 0, 0):.6f},{temperature(minutes, 0.5, 0.5):.6f}")
