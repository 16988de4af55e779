/**
 * How long food takes to freeze: Plank, who counts the latent heat alone, and Pham, who counts the cooling before and after.
 * Leaves out: bags that touch each other, air pockets, and a freezer that warms while it works; all of them take longer.
 */
import { requireInRange } from '../errors.ts'

export type FreezingShape = 'slab' | 'cylinder' | 'sphere'

/** Plank's P and R, for the full thickness of a slab or the diameter of a cylinder or sphere. */
const PLANK: { readonly [S in FreezingShape]: { readonly P: number; readonly R: number } } = {
  slab: { P: 1 / 2, R: 1 / 8 },
  cylinder: { P: 1 / 4, R: 1 / 16 },
  sphere: { P: 1 / 6, R: 1 / 24 },
}

export interface FreezingBody {
  readonly shape: FreezingShape
  /** Full thickness of a slab, diameter otherwise. [m] Valid: 0.001 to 1. */
  readonly thicknessM: number
  /** [kg/m3] Valid: 100 to 2000. */
  readonly densityKgPerM3: number
  /** Frozen food. [W/(m K)] Valid: 0.1 to 5. */
  readonly conductivityWPerMK: number
  /** Heat through the surface, wrapping included. [W/(m2 K)] Valid: 1 to 5000. */
  readonly surfaceWPerM2K: number
  /** Where the food begins to freeze. [°C] Valid: -10 to 0. */
  readonly freezingC: number
  /** The freezer's air or plate. [°C] Valid: -80 to below `freezingC`. */
  readonly mediumC: number
  /** Latent heat of the food's own water. [J/kg] Valid: 1e4 to 3.4e5. */
  readonly latentJPerKg: number
}

/**
 * Time to freeze through, food already at its freezing point. [h]
 *
 * t = (rho L/(Tf - Ta)) (P a/h + R a^2/k). A 7 cm ball, 1000 kg/m3, 250 kJ/kg, h 50, k 1.2, -1.25 in -15 °C: 2.04 h.
 *
 * @throws {ValidRangeError} outside the ranges of FreezingBody.
 * @source plank-1913 as in earle-unit-operations
 */
export function freezingHoursPlank1913(body: FreezingBody): number {
  requireBody(body)
  const { shape, thicknessM: a, densityKgPerM3, conductivityWPerMK: k, surfaceWPerM2K: h, latentJPerKg } = body
  const { P, R } = PLANK[shape]
  const seconds = ((densityKgPerM3 * latentJPerKg) / (body.freezingC - body.mediumC)) * ((P * a) / h + (R * a ** 2) / k)
  return seconds / 3600
}

export interface WarmBody extends FreezingBody {
  /** When it goes in. [°C] Valid: `freezingC` to 100. */
  readonly startC: number
  /** Wanted at the centre. [°C] Valid: above `mediumC`, below `freezingC`. */
  readonly centreC: number
  /** [J/(kg K)] Valid: 500 to 4500. */
  readonly heatUnfrozenJPerKgK: number
  /** [J/(kg K)] Valid: 500 to 4500. */
  readonly heatFrozenJPerKgK: number
}

/** Pham's E for the three plain shapes. */
const DIMENSIONS: { readonly [S in FreezingShape]: number } = { slab: 1, cylinder: 2, sphere: 3 }

/**
 * Time from the warm food to a cold centre. [h]
 *
 * Pham: t = (R/(E h)) (H1/T1 + H2/T2) (1 + Bi/2), R half the thickness, Bi = h R/k, Tfm = 1.8 + 0.263 Tc + 0.105 Ta,
 * H1 = rho cu (Ti - Tfm), H2 = rho (L + cf (Tfm - Tc)), T1 = (Ti + Tfm)/2 - Ta, T2 = Tfm - Ta. From memory, not re-read.
 *
 * @throws {ValidRangeError} outside the ranges of WarmBody.
 * @source pham-1986 from memory
 */
export function freezingHoursPham1986(body: WarmBody): number {
  requireBody(body)
  const source = 'pham-1986'
  requireInRange('startC', body.startC, { min: body.freezingC, max: 100, unit: '°C', source })
  requireInRange('centreC', body.centreC, { min: body.mediumC + 0.5, max: body.freezingC - 0.5, unit: '°C', source })
  for (const name of ['heatUnfrozenJPerKgK', 'heatFrozenJPerKgK'] as const)
    requireInRange(name, body[name], { min: 500, max: 4500, unit: 'J/(kg K)', source })
  const { densityKgPerM3: rho, surfaceWPerM2K: h, conductivityWPerMK: k, startC: Ti, centreC: Tc, mediumC: Ta } = body
  const R = body.thicknessM / 2
  const Tfm = 1.8 + 0.263 * Tc + 0.105 * Ta
  const H1 = rho * body.heatUnfrozenJPerKgK * (Ti - Tfm)
  const H2 = rho * (body.latentJPerKg + body.heatFrozenJPerKgK * (Tfm - Tc))
  const T1 = (Ti + Tfm) / 2 - Ta
  const T2 = Tfm - Ta
  const seconds = (R / (DIMENSIONS[body.shape] * h)) * (H1 / T1 + H2 / T2) * (1 + (h * R) / k / 2)
  return seconds / 3600
}

/**
 * Heat to take out of food from warm to frozen. [kJ/kg]
 *
 * cu (Ti - Tf) + L + cf (Tf - Tc). Sweet corn, 20 to -18 °C: 3.62 x 20.6 + 254 + 1.98 x 17.4 = 363.0 kJ/kg.
 *
 * @throws {ValidRangeError} outside the ranges of WarmBody.
 * @source ashrae-refrigeration-2006-ch9 sweet corn
 */
export function freezingHeatKJPerKg({
  startC,
  freezingC,
  centreC,
  latentJPerKg,
  heatUnfrozenJPerKgK,
  heatFrozenJPerKgK,
}: Omit<
  WarmBody,
  'shape' | 'thicknessM' | 'densityKgPerM3' | 'conductivityWPerMK' | 'surfaceWPerM2K' | 'mediumC'
>): number {
  const source = 'ashrae-refrigeration-2006-ch9'
  requireInRange('startC', startC, { min: freezingC, max: 100, unit: '°C', source })
  requireInRange('centreC', centreC, { min: -80, max: freezingC, unit: '°C', source })
  const joules = heatUnfrozenJPerKgK * (startC - freezingC) + latentJPerKg + heatFrozenJPerKgK * (freezingC - centreC)
  return joules / 1000
}

/**
 * Hominy to be frozen: sweet corn's heats, the nearest food with published ones, with the latent heat of its own water.
 *
 * @param wetFraction water of the drained hominy. [fraction] Valid: 0.5 to 0.9.
 * @throws {ValidRangeError} outside that range.
 * @source ashrae-refrigeration-2006-ch9 sweet corn; 334 kJ for each kg of water
 */
export function hominyHeats(wetFraction: number) {
  requireInRange('wetFraction', wetFraction, { min: 0.5, max: 0.9, unit: 'of total weight', source: 'project-rule' })
  return { freezingC: -0.6, latentJPerKg: 334e3 * wetFraction, heatUnfrozenJPerKgK: 3620, heatFrozenJPerKgK: 1980 }
}

function requireBody(body: FreezingBody): void {
  const source = 'plank-1913'
  requireInRange('thicknessM', body.thicknessM, { min: 0.001, max: 1, unit: 'm', source })
  requireInRange('densityKgPerM3', body.densityKgPerM3, { min: 100, max: 2000, unit: 'kg/m3', source })
  requireInRange('conductivityWPerMK', body.conductivityWPerMK, { min: 0.1, max: 5, unit: 'W/(m K)', source })
  requireInRange('surfaceWPerM2K', body.surfaceWPerM2K, { min: 1, max: 5000, unit: 'W/(m2 K)', source })
  requireInRange('freezingC', body.freezingC, { min: -10, max: 0, unit: '°C', source })
  requireInRange('mediumC', body.mediumC, { min: -80, max: body.freezingC - 0.5, unit: '°C', source })
  requireInRange('latentJPerKg', body.latentJPerKg, { min: 1e4, max: 3.4e5, unit: 'J/kg', source })
}
