"""Makes packages/science/src/numeric/sobol.scipy.csv. Needs SciPy (Debian: python3-scipy).
Run: python3 packages/science/testing/make-sobol-table.py > packages/science/src/numeric/sobol.scipy.csv
"""
from scipy.stats import qmc

points = qmc.Sobol(10, scramble=False).random(1024)
print("# source: scipy-1-17 qmc.Sobol, not scrambled; joe-kuo-2008")
print("# kind: worked")
print("# note: made by packages/science/testing/make-sobol-table.py")
print("# printed-to: exact binary fractions")
print("# tolerance: none")
print("index," + ",".join(f"d{d + 1}" for d in range(10)))
for index in [0, 1, 2, 3, 4, 5, 6, 7, 100, 511, 777, 1000, 1023]:
    print(f"{index}," + ",".join(repr(float(x)) for x in points[index]))
