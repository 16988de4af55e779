/**
 * Which sequence of rinses, boils and stands leaves least alkali in the kernel, for the water, time and fuel one has.
 * Counts; never certifies: a stand and a test tell what is left.
 */
import { requireInRange, ValidRangeError } from '../errors.ts'
import { bathStep, drainedKernels, type Kernels, type RinseState } from './bath.ts'

export type BathKind = 'rinse' | 'boil' | 'stand'

export interface BathKindSetup {
  readonly minutes: number
  /** Of that kind at most. [count] Valid: 0 to 12. */
  readonly mostCount: number
  readonly diffusivityM2PerS: number
}

/**
 * Diffusion of alkali in a hulled kernel: cold and at the boil, out of a band from 2e-10 to 1.5e-9 m2/s.
 * @source rinse-worked (gelled starch, 0.1 to 0.4 of free solution; two to three times more at the boil)
 */
export const KERNEL_DIFFUSIVITY_M2_PER_S = {
  cold: { low: 2e-10, middle: 3e-10, high: 5e-10 },
  boil: { low: 8e-10, middle: 1.2e-9, high: 1.5e-9 },
} as const

/** Radius of a sphere as large as a hulled, swollen flint kernel. [m]  @source ordonez-2012 (8.2 to 8.6 mm dry), swollen */
export const KERNEL_RADIUS_M = 0.0048

export interface RinseQuestion {
  readonly kernels: Kernels
  /** For the whole wash. [L] Valid: 0.01 to 1e5. */
  readonly waterL: number
  /** [min] Valid: 1 to 10 080. */
  readonly timeMin: number
  /** Least water that covers the kernels. [L] Valid: 0.01 to 1e5. */
  readonly leastBathL: number
  readonly kinds: Readonly<Record<BathKind, BathKindSetup>>
}

export interface PlannedBath {
  readonly kind: BathKind
  readonly freshL: number
  readonly minutes: number
  /** What is left in the kernel and in the water that is poured away. [share of what the cook left] */
  readonly kernelMean: number
  readonly bath: number
}

export interface RinsePlan {
  readonly baths: readonly PlannedBath[]
  readonly waterL: number
  readonly minutes: number
  readonly boilsCount: number
  readonly kernelMean: number
  readonly bath: number
}

const MOST_BATHS = 8
const KINDS: readonly BathKind[] = ['rinse', 'boil', 'stand']

/**
 * The sequence that leaves least in the kernel. Every order of rinse, boil and stand is tried, up to eight baths, with
 * the water split evenly among them: the best split for the liquor itself, and close to it for the kernel.
 *
 * @param onTried told after all plans of so many baths were tried, of how many at most; for a screen that waits. [count]
 * @returns null when there is no water or time for a single bath.
 * @throws {ValidRangeError} outside the ranges named at RinseQuestion.
 * @source crank-1975
 */
export function leastAlkaliPlan(
  question: RinseQuestion,
  onTried?: (bathsCount: number, ofCount: number) => void,
): RinsePlan | null {
  checkQuestion(question)
  const { kernels, waterL, timeMin, leastBathL, kinds } = question
  const mostBaths = Math.min(MOST_BATHS, Math.floor(waterL / leastBathL + 1e-9))
  let best: RinsePlan | null = null
  for (let bathsCount = 1; bathsCount <= mostBaths; bathsCount++) {
    const freshL = waterL / bathsCount
    const steps = KINDS.map((kind) =>
      kinds[kind].mostCount === 0 ? null : bathStep(kernels, { freshL, ...kinds[kind] }),
    )
    const left = KINDS.map((kind) => kinds[kind].mostCount)
    const taken: PlannedBath[] = []
    const search = (state: RinseState, minutesLeft: number): void => {
      const last = taken.at(-1)
      if (taken.length === bathsCount && last) {
        if (best && last.kernelMean >= best.kernelMean - 1e-12) return
        best = {
          baths: [...taken],
          waterL,
          minutes: timeMin - minutesLeft,
          boilsCount: taken.filter(({ kind }) => kind === 'boil').length,
          kernelMean: last.kernelMean,
          bath: last.bath,
        }
        return
      }
      for (const [at, kind] of KINDS.entries()) {
        const step = steps[at]
        const { minutes } = kinds[kind]
        if (!step || left[at] === 0 || minutes > minutesLeft) continue
        // The last bath of a sequence that does not beat the best is not worked out in full.
        if (best && taken.length === bathsCount - 1 && step.kernelMeanAfter(state) >= best.kernelMean - 1e-12) continue
        const after = step.apply(state)
        left[at]! -= 1
        taken.push({ kind, freshL, minutes, kernelMean: after.kernelMean, bath: after.bath })
        search(after.state, minutesLeft - minutes)
        taken.pop()
        left[at]! += 1
      }
    }
    search(drainedKernels(), timeMin)
    onTried?.(bathsCount, mostBaths)
  }
  return best
}

/**
 * A given sequence, bath by bath. [share of what the cook left]
 *
 * @throws {ValidRangeError} outside the ranges of `bathStep`.
 * @source crank-1975
 */
export function followBaths(
  kernels: Kernels,
  baths: readonly {
    readonly kind: BathKind
    readonly freshL: number
    readonly minutes: number
    readonly diffusivityM2PerS: number
  }[],
): readonly PlannedBath[] {
  let state = drainedKernels()
  return baths.map((bath) => {
    const after = bathStep(kernels, bath).apply(state)
    state = after.state
    return {
      kind: bath.kind,
      freshL: bath.freshL,
      minutes: bath.minutes,
      kernelMean: after.kernelMean,
      bath: after.bath,
    }
  })
}

/**
 * Strength that kernel and clinging liquor come to when left to stand: what a test after a stand sees, and a running
 * rinse does not. [share of what the cook left]
 *
 * @source none: mass balance
 */
export function afterStandingFraction(kernels: Kernels, kernelMeanShare: number, bathShare: number): number {
  const { kernelWaterL, clingingL } = kernels
  return (kernelMeanShare * kernelWaterL + bathShare * clingingL) / (kernelWaterL + clingingL)
}

function checkQuestion({ waterL, timeMin, leastBathL, kinds }: RinseQuestion): void {
  const rule = (min: number, max: number, unit: string) => ({ min, max, unit, source: 'project-rule' })
  requireInRange('waterL', waterL, rule(0.01, 1e5, 'L'))
  requireInRange('timeMin', timeMin, rule(1, 10_080, 'min'))
  requireInRange('leastBathL', leastBathL, rule(0.01, 1e5, 'L'))
  for (const kind of KINDS) {
    const { mostCount } = kinds[kind]
    requireInRange(`${kind}.mostCount`, mostCount, rule(0, 12, 'count'))
    if (!Number.isInteger(mostCount))
      throw new ValidRangeError(`${kind}.mostCount`, mostCount, rule(0, 12, 'whole count'))
  }
}
