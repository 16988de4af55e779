/**
 * Equilibrium constants of water, carbonate, borate, calcium and magnesium from 0 to 100 °C, as log10, molal.
 * Leaves out activities (activity.ts) and the composition of a solution (solve.ts).
 */
import { requireInRange, type ValidRange } from '../errors.ts'

const ZERO_C_IN_K = 273.15 // exact
const R_KJ_PER_MOL_K = 0.008314462618 // exact since 2019
const T25_K = 298.15
const LN10 = Math.log(10)

/** The pots and sinks of this book; the functions of the sources reach at least as far, but for calcite. */
export const WATER_TEMPERATURE_C: ValidRange = { min: 0, max: 100, unit: '°C', source: 'plummer-busenberg-1982' }
/** Calcite was measured to 90 °C; above it no saturation is told. */
export const CALCITE_TEMPERATURE_C: ValidRange = { min: 0, max: 90, unit: '°C', source: 'plummer-busenberg-1982' }

/** Each is log10 K of the reaction named; `calcite` is null above 90 °C. */
export interface Equilibria {
  readonly temperatureC: number
  /** H2O = H+ + OH- */
  readonly water: number
  /** CO2(g) = CO2(aq) */
  readonly henryCO2: number
  /** CO2(aq) + H2O = H+ + HCO3- */
  readonly carbonic1: number
  /** HCO3- = H+ + CO3 2- */
  readonly carbonic2: number
  /** CaCO3(s) = Ca2+ + CO3 2- */
  readonly calcite: number | null
  /** Ca2+ + HCO3- = CaHCO3+ */
  readonly CaHCO3: number
  /** Ca2+ + CO3 2- = CaCO3(aq) */
  readonly CaCO3: number
  /** Ca2+ + OH- = CaOH+ */
  readonly CaOH: number
  /** Ca(OH)2(s) = Ca2+ + 2 OH- */
  readonly portlandite: number
  /** Mg2+ + HCO3- = MgHCO3+ */
  readonly MgHCO3: number
  /** Mg2+ + CO3 2- = MgCO3(aq) */
  readonly MgCO3: number
  /** Mg2+ + OH- = MgOH+ */
  readonly MgOH: number
  /** Mg(OH)2(s) = Mg2+ + 2 OH- */
  readonly brucite: number
  /** B(OH)3 = B(OH)4- + H+ */
  readonly boric: number
  /** CH3COOH = CH3COO- + H+ */
  readonly acetic: number
}

/** log10 K moved from 25 °C by a constant reaction heat. */
const vanTHoff = (log25: number, heatKJPerMol: number, T: number) =>
  log25 - (heatKJPerMol / (LN10 * R_KJ_PER_MOL_K)) * (1 / T - 1 / T25_K)

/** log10 of the ion product of water, molal; 25 °C: -13.995. Within 0.03 of two other standards at the boil. */
function logKWater(T: number): number {
  return 293.29227 + 0.1360833 * T - 10576.913 / T - 123.73158 * Math.log10(T) - 6.996455e-5 * T * T
}

/**
 * Every constant at a temperature. [log10, molal]
 *
 * Carbonate, calcite and calcium pairs: Plummer and Busenberg's functions. Water: the closed form of phreeqc.dat.
 * Calcium hydroxide: the Thermoddem V1.10 expression less 2 pKw, -5.177 at 25 °C. CaOH+ is kept as an association with
 * OH-, 1.22 at 25 °C: holding its hydrolysis constant fixed instead is wrong by twice in solubility at 0 °C. Magnesium,
 * borate and acetate: one constant and one reaction heat each, from memory.
 *
 * @param temperatureC [°C] Valid: 0 to 100. Calcite pairs were measured to 90 and are used to 100; calcite itself is not.
 * @throws {ValidRangeError} outside that range.
 * @source plummer-busenberg-1982; thermoddem-1-10; phreeqc-3
 */
export function equilibriaAt(temperatureC: number): Equilibria {
  requireInRange('temperatureC', temperatureC, WATER_TEMPERATURE_C)
  const T = temperatureC + ZERO_C_IN_K
  const logT = Math.log10(T)
  const water = logKWater(T)
  return {
    temperatureC,
    water,
    henryCO2: 108.3865 + 0.01985076 * T - 6919.53 / T - 40.45154 * logT + 669365 / T ** 2,
    carbonic1: -356.3094 - 0.06091964 * T + 21834.37 / T + 126.8339 * logT - 1684915 / T ** 2,
    carbonic2: -107.8871 - 0.03252849 * T + 5151.79 / T + 38.92561 * logT - 563713.9 / T ** 2,
    calcite: temperatureC <= CALCITE_TEMPERATURE_C.max ? -171.9065 - 0.077993 * T + 2839.319 / T + 71.595 * logT : null,
    CaHCO3: 1209.12 + 0.31294 * T - 34765.05 / T - 478.782 * logT,
    CaCO3: -1228.732 - 0.299444 * T + 35512.75 / T + 485.818 * logT,
    CaOH: vanTHoff(1.22, 5.6, T),
    portlandite: -284.92926 - 0.044710612 * T + 21380.115 / T + 104.20455 * logT - 754249.17 / T ** 2 + 2 * water,
    MgHCO3: vanTHoff(1.07, 3.3, T),
    MgCO3: vanTHoff(2.98, 11.35, T),
    // Hydrolysis -11.44 (66.7 kJ/mol) less that of water, -13.995 (55.8 kJ/mol).
    MgOH: vanTHoff(2.555, 10.9, T),
    // Dissolution in acid 16.84 (-113.4 kJ/mol) and twice the ion product of water.
    brucite: vanTHoff(16.84, -113.4, T) + 2 * water,
    boric: vanTHoff(-9.24, 13.49, T),
    acetic: vanTHoff(-4.756, -0.41, T),
  }
}
