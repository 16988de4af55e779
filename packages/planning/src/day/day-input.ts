/** What a day is laid out from: pot-loads with their stages, canners with their timings, loads, people and a clock. */
import type { Sentence } from '@crib/science'
import type { RoundOfLoads } from '../shared/canner-loads.ts'

export interface DayStage {
  readonly id: string
  readonly title: Sentence
  readonly minutes: number
  readonly needsHands: boolean
  /** Kernels may wait after it, in water, hot or chilled. */
  readonly canWaitAfter: boolean
  /** False for sorting dry kernels, which can be done while the pot is busy. */
  readonly usesPot: boolean
  /** The last cook in fresh water, left for tomorrow where the day is split. */
  readonly isHotPack: boolean
}

export interface DayPotLoad {
  readonly number: number
  readonly potName: string
  readonly stages: readonly DayStage[]
  /** Jars its hominy fills. */
  readonly jarCount: number
}

/** One load of one canner. [min] */
export interface LoadTimings {
  /** Filling jars for this load, before the canner is heated; 0 where reload holds it. */
  readonly fill: number
  readonly heat: number
  readonly vent: number
  readonly comeUp: number
  readonly process: number
  readonly coolToZero: number
  readonly lidWait: number
  readonly unload: number
  /** Before every load but the first of a canner. */
  readonly reload: number
}

export interface DayCanner {
  readonly name: string
  readonly timings: LoadTimings
}

export interface DayInput {
  /** One of the two; work is laid out forward or back from it. [ClockMin] */
  readonly clock: { readonly from: 'start' | 'finish'; readonly clockMin: number }
  readonly setUpMin: number
  readonly cleanUpMin: number
  /** Empty when the hominy is ready before the day. */
  readonly potLoads: readonly DayPotLoad[]
  readonly canners: readonly DayCanner[]
  readonly rounds: readonly RoundOfLoads[]
  /** Absent: hands are never short. */
  readonly peopleCount?: number
}

export const LOAD_STEPS = ['heat', 'vent', 'comeUp', 'process', 'coolToZero', 'lidWait', 'unload'] as const
