"""
Water at 0.1 MPa by the python3-iapws package of Debian: density (IAPWS SR6-08), static dielectric constant (IAPWS R8-97)
and ionic product (IAPWS R11-07). Writes src/water/equilibria.iapws.csv beside the test that reads it.

Run by hand: python3 packages/science/testing/make-water-table.py
"""
from math import sqrt
from pathlib import Path

from iapws import __version__
from iapws._iapws import _Dielectric, _Kw, _Liquid

TABLE = Path(__file__).parent.parent / "src/water/equilibria.iapws.csv"

rows = []
for celsius in [0, 5, 10, 15, 20, 25, 30, 40, 50, 60, 70, 80, 90, 95, 100]:
    kelvin = celsius + 273.15
    density = _Liquid(kelvin)["rho"]
    dielectric = _Dielectric(density, kelvin)
    # Debye and Hueckel's limiting slope from these two, log10, molal: e^3 sqrt(2 pi N rho) / (ln 10 (4 pi eps k T)^1.5)
    slope = 1.8248e6 * sqrt(density / 1000) / (dielectric * kelvin) ** 1.5
    rows.append(f"{celsius},{slope:.5f},{_Kw(density, kelvin):.4f}")

TABLE.write_text(
    "# source: python3-iapws-1-5 by IAPWS SR6-08, R8-97 and R11-07\n"
    "# kind: worked\n"
    "# printed-to: 0.00001 A, 0.0001 pKw\n"
    "# tolerance: 0.6 % of A, 0.015 pKw: other formulations of the same water\n"
    "# checks: A, pKw\n"
    "temperatureC,A,pKw\n" + "\n".join(rows) + "\n",
    encoding="utf-8",
)
print(f"{len(rows)} rows by python3-iapws {__version__}")
