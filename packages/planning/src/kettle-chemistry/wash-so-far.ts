/**
 * The wash as it was done at one pot, against what was meant: water, minutes and boils used, and what by the same count
 * is still inside. Then the strip after a stand. Counts what is left; never says it is done.
 */
import {
  afterStandingFraction,
  type BathKind,
  followBaths,
  KERNEL_DIFFUSIVITY_M2_PER_S,
  type Reckoned,
  type Sentence,
} from '@crib/science'
import type { PotWalk, WalkStep } from '../batch/kettle-walk.ts'
import type { Stage } from '../batch/stages.ts'
import { say } from '../shared/say.ts'
import { valuesOf } from './fields.ts'
import { BATH_MIN, washKernels } from './rinse-wash.ts'

export interface WashSoFar {
  readonly bathsCount: number
  readonly waterL: Reckoned
  readonly minutes: Reckoned
  readonly boilsCount: Reckoned
  /** Alkali still in the kernel, of what the cook left; absent before the first bath with its water written down. */
  readonly kernelFraction?: Reckoned
  /** Strength of the last water at its end, and of water the kernels have stood in. */
  readonly bathFraction?: Reckoned
  readonly afterStandingFraction?: Reckoned
  /** Baths told without their water: not counted in what is left. */
  readonly withoutWaterCount: number
}

const SOURCES = ['crank-1975', 'rinse-worked'] as const
const BATHS: Partial<Record<Stage['kind'], BathKind>> = {
  'hot-rinse': 'rinse',
  'cold-rinse': 'rinse',
  rub: 'rinse',
  scrub: 'rinse',
  skim: 'rinse',
  're-boil': 'boil',
}

/** @param dryCornKg in that pot. [kg] */
export function washSoFar(walk: Pick<PotWalk, 'steps'>, dryCornKg: number): WashSoFar {
  const done = walk.steps.filter((step) => step.stage.kind in BATHS && step.doneAtMs !== undefined)
  const wet = done.filter(({ stage, waterL }) => stage.waterToCornRatio > 0 || waterL !== undefined)
  const told = wet.filter(({ waterL }) => waterL !== undefined && waterL > 0)
  const kernels = washKernels({ dryCornKg })
  const baths = told.map((step) => ({ kind: kindOf(step), freshL: step.waterL!, minutes: minutesOf(step) }))
  const leftAt = (end: 'low' | 'middle' | 'high') =>
    followBaths(
      kernels,
      baths.map((bath) => ({
        ...bath,
        diffusivityM2PerS: KERNEL_DIFFUSIVITY_M2_PER_S[bath.kind === 'boil' ? 'boil' : 'cold'][end],
      })),
    ).at(-1)
  const value = valuesOf({ dryCornKg, baths }, SOURCES)
  const own = { basis: 'own-record', sourceKeys: [] } as const
  const sum = (of: (step: WalkStep) => number) => wet.reduce((all, step) => all + of(step), 0)
  const middle = leftAt('middle')
  return {
    bathsCount: wet.length,
    waterL: value(
      'waterL',
      sum(({ waterL = 0 }) => waterL),
      'L',
      0.1,
      own,
    ),
    minutes: value('minutes', sum(minutesOf), 'Min', 1, own),
    boilsCount: value('boilsCount', wet.filter((step) => kindOf(step) === 'boil').length, 'Count', 1, own),
    withoutWaterCount: wet.length - told.length,
    ...(middle && {
      // Slower diffusion leaves more.
      kernelFraction: value(
        'kernelFraction',
        { value: middle.kernelMean, low: leftAt('high')!.kernelMean, high: leftAt('low')!.kernelMean },
        'Fraction',
        0.01,
      ),
      bathFraction: value('bathFraction', middle.bath, 'Fraction', 0.001),
      afterStandingFraction: value(
        'afterStandingFraction',
        afterStandingFraction(kernels, middle.kernelMean, middle.bath),
        'Fraction',
        0.01,
      ),
    }),
  }
}

function kindOf({ stage }: WalkStep): BathKind {
  return BATHS[stage.kind] ?? 'rinse'
}

/** As told by the clock, else the usual minutes of its kind. [min] */
function minutesOf(step: WalkStep): number {
  const { begunAtMs, doneAtMs } = step
  const clocked = begunAtMs !== undefined && doneAtMs !== undefined ? (doneAtMs - begunAtMs) / 60_000 : 0
  return clocked > 0 ? clocked : BATH_MIN[kindOf(step)]
}

/** Hominy in print. [pH]  @source fraser-lackey-2004 */
const HOMINY_PH = { low: 6.8, high: 8 } as const

/** What a strip after a stand, or in crushed kernels, says: whether alkali still comes out. Never that none does. */
export function readStandTest(stripPH: number): readonly Sentence[] {
  const pH = Number(stripPH.toFixed(1))
  return [
    say(stripPH > HOMINY_PH.high ? 'kettle:stand-above' : 'kettle:stand-within', { pH, ...HOMINY_PH }),
    say('kettle:stand-strip-is-coarse'),
  ]
}
