/**
 * A wash for the water, time and fuel at hand, in words. Counts what is left; says nothing of done. Leaves out what the
 * kernel itself takes up.
 */
import {
  afterStandingFraction,
  followBaths,
  KERNEL_DIFFUSIVITY_M2_PER_S,
  KERNEL_RADIUS_M,
  type Kernels,
  leastAlkaliPlan,
  type RinsePlan,
  type Sentence,
  type Spread,
} from '@crib/science'
import { say } from '../shared/say.ts'

export interface WashInput {
  /** Dry corn that was cooked. [kg] */
  readonly dryCornKg: number
  readonly waterL: number
  readonly timeMin: number
  /** Boils that the fuel allows. [count] */
  readonly boilsCount: number
  /** Cooked kernels to dry ones, by weight. [1] */
  readonly cookedPerDry?: number
}

export interface Wash {
  readonly plan: RinsePlan
  /** Left in the kernel over the published band of diffusion. [share of what the cook left] */
  readonly kernelFraction: Spread
  /** The running rinse at the same moment, and after the kernels have stood. */
  readonly bathFraction: number
  readonly afterStandingFraction: number
  readonly kernels: Kernels
  readonly leastBathL: number
  readonly steps: readonly Sentence[]
}

/** Wet weight after the alkali cook, before the last one.  common practice, no source */
const COOKED_PER_DRY = 2
/** Water in such a kernel. [fraction]  common practice, no source */
const COOKED_WET_FRACTION = 0.6
/** Liquor that clings to a kilogram of drained kernels. [L/kg]  from memory, not re-read: 0.1 to 0.25 */
const CLINGING_L_PER_KG = 0.2
/** Water that covers a kilogram of cooked kernels. [L/kg]  common practice, no source */
const COVER_L_PER_KG = 1.2
/** Each bath of a kind. [min]  Boils as printed; common practice, no source for the others. @source nchfp-hominy-without-lye */
export const BATH_MIN = { rinse: 5, boil: 5, stand: 45 } as const

/** Least water that covers these kernels once. [L] */
export function coverL({
  dryCornKg,
  cookedPerDry = COOKED_PER_DRY,
}: Pick<WashInput, 'dryCornKg' | 'cookedPerDry'>): number {
  return dryCornKg * cookedPerDry * COVER_L_PER_KG
}

/** What holds alkali after the cook: the water in the kernels and what clings to them. */
export function washKernels({
  dryCornKg,
  cookedPerDry = COOKED_PER_DRY,
}: Pick<WashInput, 'dryCornKg' | 'cookedPerDry'>): Kernels {
  const cookedKg = dryCornKg * cookedPerDry
  return {
    radiusM: KERNEL_RADIUS_M,
    kernelWaterL: cookedKg * COOKED_WET_FRACTION,
    clingingL: cookedKg * CLINGING_L_PER_KG,
  }
}

/** @returns null when the water does not cover the kernels once, or there is no time for one bath. */
export function washPlan(input: WashInput, onTried?: (bathsCount: number, ofCount: number) => void): Wash | null {
  const { waterL, timeMin, boilsCount } = input
  const kernels = washKernels(input)
  const leastBathL = coverL(input)
  const { cold, boil } = KERNEL_DIFFUSIVITY_M2_PER_S
  const plan = leastAlkaliPlan(
    {
      kernels,
      waterL,
      timeMin,
      leastBathL,
      kinds: {
        rinse: { minutes: BATH_MIN.rinse, mostCount: 8, diffusivityM2PerS: cold.middle },
        boil: { minutes: BATH_MIN.boil, mostCount: boilsCount, diffusivityM2PerS: boil.middle },
        stand: { minutes: BATH_MIN.stand, mostCount: 8, diffusivityM2PerS: cold.middle },
      },
    },
    onTried,
  )
  if (!plan) return null
  const leftAt = (end: 'low' | 'high') =>
    followBaths(
      kernels,
      plan.baths.map((bath) => ({
        ...bath,
        diffusivityM2PerS: bath.kind === 'boil' ? boil[end] : cold[end],
      })),
    ).at(-1)!.kernelMean
  return {
    plan,
    // Slower diffusion leaves more.
    kernelFraction: { value: plan.kernelMean, low: leftAt('high'), high: leftAt('low') },
    bathFraction: plan.bath,
    afterStandingFraction: afterStandingFraction(kernels, plan.kernelMean, plan.bath),
    kernels,
    leastBathL,
    steps: plan.baths.map(({ kind, freshL, minutes, kernelMean }, index) =>
      say(`kettle:chem-bath-${kind}`, {
        number: index + 1,
        water: { value: Number(freshL.toFixed(1)), unit: 'L' },
        minutes: { value: minutes, unit: 'Min' },
        kernel: { value: Number(kernelMean.toFixed(2)), unit: 'Fraction' },
      }),
    ),
  }
}
