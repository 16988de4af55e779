/** What a jar is made of and filled with beside the food, as layers a heat model can use. */

export interface Material {
  /** k. [W/(m K)] */
  readonly conductivityWPerMK: number
  /** rho cp. [J/(m3 K)] */
  readonly heatCapacityJPerM3K: number
}

export interface LowMidHigh {
  readonly low: number
  readonly mid: number
  readonly high: number
}

/**
 * Soda-lime container glass: sources print k 0.9 to 1.3 W/(m K), 2400 to 2520 kg/m3, 720 to 800 J/(kg K).
 * @source soda-lime-glass-sheets
 */
export const JAR_GLASS: Material = { conductivityWPerMK: 1.05, heatCapacityJPerM3K: 2460 * 760 }

/** As printed by the sources. [W/(m K)]  @source soda-lime-glass-sheets */
export const JAR_GLASS_CONDUCTIVITY_W_PER_M_K: LowMidHigh = { low: 0.9, mid: 1.05, high: 1.3 }

/**
 * Headspace in a jar under pressure: steam and air that carry heat by mixing and by condensing, worth about ten times
 * the conductivity of still moist air. Common practice, no source.
 */
export const JAR_HEADSPACE: Material = { conductivityWPerMK: 0.3, heatCapacityJPerM3K: 2500 }

/**
 * Diffusivity of hominy packed so tight that nothing moves. [m2/s]  No measured value was found; the bracket is that of
 * starchy neighbours.
 * @source food-diffusivity-table
 */
export const PACKED_HOMINY_DIFFUSIVITY_M2_PER_S: LowMidHigh = { low: 1.4e-7, mid: 1.5e-7, high: 1.6e-7 }

/** Inside radius and half height of the food in a jar. [m]  From memory, not re-read: reseller pages; measure your own. */
export interface JarSize {
  readonly radiusM: number
  readonly halfHeightM: number
}

export const JAR_SIZES = {
  pint: { radiusM: 0.0375, halfHeightM: 0.055 },
  quart: { radiusM: 0.0435, halfHeightM: 0.075 },
} as const satisfies { readonly [jar: string]: JarSize }
