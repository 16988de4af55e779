/**
 * Thermal properties of a food from its composition by mass.
 * Conductivity depends on how the parts lie: parallel to the flow is the upper bound, in series the lower.
 */
import { requireInRange, type ValidRange } from '../errors.ts'
import { componentProperties, FOOD_COMPONENTS, type FoodComponent } from './components.ts'

/** Mass fractions; what is not named is none. Together 1 within half a percent, since tables print rounded figures. */
export type Composition = { readonly [component in FoodComponent]?: number }

export interface FoodProperties {
  readonly densityKgPerM3: number
  readonly specificHeatKJPerKgK: number
  /** Parts side by side along the flow: upper bound. [W/(m K)] */
  readonly conductivityParallelWPerMK: number
  /** Parts one behind the other: lower bound. [W/(m K)] */
  readonly conductivitySeriesWPerMK: number
  /** With the parallel conductivity, alpha = k / (rho cp). [m2/s] */
  readonly diffusivityParallelM2PerS: number
  /** With the series conductivity. [m2/s] */
  readonly diffusivitySeriesM2PerS: number
}

/** Drained canned hominy. From memory, not re-read: no source prints it for home-made hominy. [mass fractions] */
export const DRAINED_HOMINY = {
  water: 0.825,
  protein: 0.015,
  fat: 0.009,
  carbohydrate: 0.118,
  fibre: 0.025,
  ash: 0.008,
} as const satisfies Composition

const MASS_FRACTION: ValidRange = { min: 0, max: 1, unit: 'of the mass', source: 'project-rule' }
const TOTAL_FRACTION: ValidRange = { min: 0.995, max: 1.005, unit: 'of the mass, all parts', source: 'project-rule' }

/**
 * Density, specific heat, conductivity and diffusivity of a food.
 *
 * rho = 1 / sum(X/rho); cp = sum X cp; volume shares v = (X/rho) rho; k parallel = sum v k, k series = 1 / sum(v/k);
 * alpha = k / (1000 rho cp). Drained hominy at 115.6 °C: 1008.61 kg/m3, 3.80795 kJ/(kg K), 0.637 W/(m K), 1.659e-7 m2/s.
 *
 * @param composition mass fractions X, together 0.995 to 1.005; used as given, not scaled.
 * @param temperatureC [°C] Valid: 0 to 150.
 * @throws {ValidRangeError} outside those ranges.
 * @source ashrae-refrigeration-2006-ch9
 */
export function foodProperties(composition: Composition, temperatureC: number): FoodProperties {
  let totalFraction = 0
  let volumeM3PerKg = 0
  let specificHeatKJPerKgK = 0
  const parts: { readonly volume: number; readonly k: number }[] = []
  for (const component of FOOD_COMPONENTS) {
    const X = composition[component] ?? 0
    requireInRange(component, X, MASS_FRACTION)
    const part = componentProperties(component, temperatureC)
    totalFraction += X
    volumeM3PerKg += X / part.densityKgPerM3
    specificHeatKJPerKgK += X * part.specificHeatKJPerKgK
    parts.push({ volume: X / part.densityKgPerM3, k: part.conductivityWPerMK })
  }
  requireInRange('composition', totalFraction, TOTAL_FRACTION)

  const densityKgPerM3 = 1 / volumeM3PerKg
  const parallel = parts.reduce((sum, { volume, k }) => sum + volume * densityKgPerM3 * k, 0)
  const series = 1 / parts.reduce((sum, { volume, k }) => sum + (volume * densityKgPerM3) / k, 0)
  const heatJPerM3K = 1000 * densityKgPerM3 * specificHeatKJPerKgK
  return {
    densityKgPerM3,
    specificHeatKJPerKgK,
    conductivityParallelWPerMK: parallel,
    conductivitySeriesWPerMK: series,
    diffusivityParallelM2PerS: parallel / heatJPerM3K,
    diffusivitySeriesM2PerS: series / heatJPerM3K,
  }
}
