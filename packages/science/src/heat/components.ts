/**
 * Thermal properties of what food is made of: water, protein, fat, carbohydrate, fibre and ash, by temperature.
 * Leaves out: ice, gas in pores, and how parts are mixed (mixture.ts).
 */
import { requireInRange, type ValidRange } from '../errors.ts'

export const FOOD_COMPONENTS = ['water', 'protein', 'fat', 'carbohydrate', 'fibre', 'ash'] as const
export type FoodComponent = (typeof FOOD_COMPONENTS)[number]

export interface ThermalProperties {
  /** k. [W/(m K)] */
  readonly conductivityWPerMK: number
  /** rho. [kg/m3] */
  readonly densityKgPerM3: number
  /** cp. [kJ/(kg K)] */
  readonly specificHeatKJPerKgK: number
  /** alpha, as fitted by the source: near, but not exactly, k / (rho cp). [m2/s] */
  readonly diffusivityM2PerS: number
}

/** Constant, linear and square coefficient in T [°C]. */
type Parabola = readonly [number, number, number]

interface Fits {
  readonly k: Parabola
  readonly rho: Parabola
  readonly cp: Parabola
  readonly alpha: Parabola
}

/**
 * Misprints in circulation are not used: 4.1289 for the lead of water's cp, -2.7604e-3 for the slope of fat's k,
 * 0.013874 for the slope of carbohydrate's k.
 */
const FITS: { readonly [component in FoodComponent]: Fits } = {
  water: {
    k: [0.57109, 1.7625e-3, -6.7036e-6],
    rho: [997.18, 3.1439e-3, -3.7574e-3],
    cp: [4.1762, -9.0864e-5, 5.4731e-6],
    alpha: [1.3168e-7, 6.2477e-10, -2.4022e-12],
  },
  protein: {
    k: [0.17881, 1.1958e-3, -2.7178e-6],
    rho: [1329.9, -0.5184, 0],
    cp: [2.0082, 1.2089e-3, -1.3129e-6],
    alpha: [6.8714e-8, 4.7578e-10, -1.4646e-12],
  },
  fat: {
    k: [0.18071, -2.7604e-4, -1.7749e-7],
    rho: [925.59, -0.41757, 0],
    cp: [1.9842, 1.4733e-3, -4.8008e-6],
    alpha: [9.8777e-8, -1.2569e-10, -3.8286e-14],
  },
  carbohydrate: {
    k: [0.20141, 1.3874e-3, -4.3312e-6],
    rho: [1599.1, -0.31046, 0],
    cp: [1.5488, 1.9625e-3, -5.9399e-6],
    alpha: [8.0842e-8, 5.3052e-10, -2.3218e-12],
  },
  fibre: {
    k: [0.18331, 1.2497e-3, -3.1683e-6],
    rho: [1311.5, -0.36589, 0],
    cp: [1.8459, 1.8306e-3, -4.6509e-6],
    alpha: [7.3976e-8, 5.1902e-10, -2.2202e-12],
  },
  ash: {
    k: [0.32962, 1.4011e-3, -2.9069e-6],
    rho: [2423.8, -0.28063, 0],
    cp: [1.0926, 1.8896e-3, -3.6817e-6],
    alpha: [1.2461e-7, 3.7321e-10, -1.2244e-12],
  },
}

export const FOOD_PROPERTY_TEMPERATURE_C: ValidRange = { min: 0, max: 150, unit: '°C', source: 'choi-okos-1986' }

/**
 * Properties of one component of food.
 *
 * Water at 100 °C: 0.680304 W/(m K), 959.920 kg/m3, 4.22184 kJ/(kg K), 1.70135e-7 m2/s.
 *
 * @param temperatureC T. [°C] Valid: 0 to 150; the fits below freezing are left out.
 * @throws {ValidRangeError} outside that range.
 * @source choi-okos-1986 as tabulated in ashrae-refrigeration-2006-ch9
 */
export function componentProperties(component: FoodComponent, temperatureC: number): ThermalProperties {
  requireInRange('temperatureC', temperatureC, FOOD_PROPERTY_TEMPERATURE_C)
  const at = ([a, b, c]: Parabola) => a + (b + c * temperatureC) * temperatureC
  const { k, rho, cp, alpha } = FITS[component]
  return {
    conductivityWPerMK: at(k),
    densityKgPerM3: at(rho),
    specificHeatKJPerKgK: at(cp),
    diffusivityM2PerS: at(alpha),
  }
}
