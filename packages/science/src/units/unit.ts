/**
 * Every unit the project knows: its suffix (as in names, SQL and JSON), what it measures, and its exact size in the
 * canonical unit of that measure. Converting happens at the edges only.
 */
export type Measure =
  | 'mass'
  | 'volume'
  | 'pressure'
  | 'length'
  | 'duration'
  | 'temperature'
  | 'proportion'
  | 'count'
  | 'clock'
  | 'area'
  | 'energy'
  | 'degree-days'
  | 'yield'
  | 'concentration'
  | 'equivalents'
  | 'alkalinity'
  | 'alkali-on-corn'
  | 'acidity'
  | 'temperature-difference'
  | 'conductivity'
  | 'density'
  | 'specific-heat'
  | 'diffusivity'

interface UnitDefinition {
  readonly measure: Measure
  /**
   * Size of one unit in the canonical unit of its measure: kg, L, kPa, m, min, fraction, count, minutes after midnight,
   * and the one unit named for each property of a material.
   */
  readonly size: number
  /** Added after scaling, for temperature alone. */
  readonly offset?: number
}

const LB_KG = 0.45359237 // exact, international avoirdupois pound
const US_GAL_L = 3.785411784 // exact, US liquid gallon
const DRY_QT_L = 1.101220942715 // exact, US dry quart (67.200625 cubic inches)
const FT_M = 0.3048 // exact, international foot
const PSI_KPA = 6.894757293168 // lbf/in2, from the exact pound, inch and standard gravity

export const UNITS = {
  Kg: { measure: 'mass', size: 1 },
  G: { measure: 'mass', size: 0.001 },
  Mg: { measure: 'mass', size: 1e-6 },
  Ug: { measure: 'mass', size: 1e-9 },
  Lb: { measure: 'mass', size: LB_KG },
  Oz: { measure: 'mass', size: LB_KG / 16 },
  L: { measure: 'volume', size: 1 },
  Ml: { measure: 'volume', size: 0.001 },
  LiquidGal: { measure: 'volume', size: US_GAL_L },
  LiquidQt: { measure: 'volume', size: US_GAL_L / 4 },
  LiquidPt: { measure: 'volume', size: US_GAL_L / 8 },
  Cup: { measure: 'volume', size: US_GAL_L / 16 },
  Tbsp: { measure: 'volume', size: US_GAL_L / 256 },
  Tsp: { measure: 'volume', size: US_GAL_L / 768 },
  DryQt: { measure: 'volume', size: DRY_QT_L },
  Bu: { measure: 'volume', size: 32 * DRY_QT_L },
  PsiGauge: { measure: 'pressure', size: PSI_KPA },
  /** The figure stamped on a canner weight. */
  LbWeight: { measure: 'pressure', size: PSI_KPA },
  KPaGauge: { measure: 'pressure', size: 1 },
  KPaAbs: { measure: 'pressure', size: 1 },
  M: { measure: 'length', size: 1 },
  Mm: { measure: 'length', size: 0.001 },
  Cm: { measure: 'length', size: 0.01 },
  In: { measure: 'length', size: FT_M / 12 },
  Ft: { measure: 'length', size: FT_M },
  Min: { measure: 'duration', size: 1 },
  S: { measure: 'duration', size: 1 / 60 },
  H: { measure: 'duration', size: 60 },
  Days: { measure: 'duration', size: 1440 },
  /** 365.25 days, as the seed-keeping literature counts. */
  Years: { measure: 'duration', size: 525_960 },
  C: { measure: 'temperature', size: 1, offset: 0 },
  F: { measure: 'temperature', size: 5 / 9, offset: -160 / 9 },
  Fraction: { measure: 'proportion', size: 1 },
  Count: { measure: 'count', size: 1 },
  /** Minutes after the local midnight that begins the day's work; 1500 is one in the morning of the next day. */
  ClockMin: { measure: 'clock', size: 1 },
  M2: { measure: 'area', size: 1 },
  /** Food energy. */
  Kcal: { measure: 'energy', size: 1 },
  Ft2: { measure: 'area', size: FT_M ** 2 },
  Acre: { measure: 'area', size: 43_560 * FT_M ** 2 },
  Ha: { measure: 'area', size: 10_000 },
  /** Growing degree-days, counted in either scale. */
  DegreeDaysC: { measure: 'degree-days', size: 1 },
  DegreeDaysF: { measure: 'degree-days', size: 5 / 9 },
  KgPerHa: { measure: 'yield', size: 1 },
  /** The trade's bushel of 56 lb, at whatever moisture is named beside it. */
  BuPerAcre: { measure: 'yield', size: (56 * LB_KG * 10_000) / (43_560 * FT_M ** 2) },
  MolPerL: { measure: 'concentration', size: 1 },
  /** Moles of strong acid that an alkali neutralises: what is in it, however weak it is. */
  Eq: { measure: 'equivalents', size: 1 },
  EqPerL: { measure: 'alkalinity', size: 1 },
  /** Equivalents on a kilogram of dry corn, or in a kilogram of an alkali. */
  EqPerKg: { measure: 'alkali-on-corn', size: 1 },
  PH: { measure: 'acidity', size: 1 },
  DeltaC: { measure: 'temperature-difference', size: 1 },
  DeltaF: { measure: 'temperature-difference', size: 5 / 9 },
  /** Properties of food and glass. */
  WPerMK: { measure: 'conductivity', size: 1 },
  KgPerM3: { measure: 'density', size: 1 },
  KJPerKgK: { measure: 'specific-heat', size: 1 },
  Mm2PerS: { measure: 'diffusivity', size: 1 },
} as const satisfies Record<string, UnitDefinition>

export type Unit = keyof typeof UNITS

export interface Quantity {
  readonly value: number
  readonly unit: Unit
}

/**
 * A quantity in another unit of the same measure.
 *
 * @throws {RangeError} when the two units measure different things, or gauge and absolute pressure would be mixed.
 */
export function convert(value: number, from: Unit, to: Unit): number {
  if (from === to) return value
  const a: UnitDefinition = UNITS[from]
  const b: UnitDefinition = UNITS[to]
  if (a.measure !== b.measure || isAbsolute(from) !== isAbsolute(to)) {
    throw new RangeError(`${from} cannot be expressed in ${to}`)
  }
  return (value * a.size + (a.offset ?? 0) - (b.offset ?? 0)) / b.size
}

function isAbsolute(unit: Unit): boolean {
  return unit === 'KPaAbs'
}
