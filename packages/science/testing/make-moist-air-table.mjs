/**
 * Makes packages/science/src/drying/moist-air.psychrolib.csv with the reference library `psychrolib` 1.1.1 (MIT), which is
 * no dependency of this project. Fetch it anywhere outside with `npm pack psychrolib@1.1.1`, unpack it, and run:
 * node packages/science/testing/make-moist-air-table.mjs /path/to/package/psychrolib.js > packages/science/src/drying/moist-air.psychrolib.csv
 */
import { createRequire } from 'node:module'

const psychrolib = createRequire(import.meta.url)(process.argv[2])
psychrolib.SetUnitSystem(psychrolib.SI)

const cases = []
for (const t of [-20, -5, 1, 5, 10, 20, 25, 30, 35, 40, 50, 60, 70, 90])
  for (const rh of [0.05, 0.2, 0.5, 0.7, 0.95]) for (const p of [101325, 84556]) cases.push([t, rh, p])

console.log(`# source: psychrolib-1-1-1 CalcPsychrometricsFromRelHum
# kind: worked
# printed-to: 10 significant digits
# tolerance: 1e-6 of the humidity ratio, pressure, enthalpy and volume; 0.002 °C, the library's own search width
# note: ${cases.length} states of air: temperature in °C, humidity as a fraction, pressure in kPa
# checks: humidityRatio, wetBulbC, dewPointC, vapourKPa, enthalpyKJPerKg, volumeM3PerKg
temperatureC,humidityFraction,pressureKPaAbs,humidityRatio,wetBulbC,dewPointC,vapourKPa,enthalpyKJPerKg,volumeM3PerKg`)
for (const [t, rh, p] of cases) {
  const [W, wetBulb, dewPoint, vapour, enthalpy, volume] = psychrolib.CalcPsychrometricsFromRelHum(t, rh, p)
  const numbers = [W, wetBulb, dewPoint, vapour / 1000, enthalpy / 1000, volume]
  console.log([t, rh, p / 1000, ...numbers.map((number) => Number(number.toPrecision(10)))].join())
}
