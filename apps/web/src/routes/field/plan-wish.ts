/** What is typed on the plan of a field, and handed to the plan as it is. Leaves out every number of the plan itself. */
import type { SeedLotFact } from '@crib/journal'
import {
  type FieldPlanInput,
  type FieldYear,
  germinationOfTest,
  gPerThousandOfKernelsPerOz,
  standFractionOfYears,
} from '@crib/planning'

export interface Wish {
  readonly corn: string
  readonly seedLotId: string
  readonly foodText: string
  readonly reserveKernels: number
  readonly linePlants: number
  readonly pattern: 'rows' | 'hills'
  readonly beans: boolean
  readonly squash: boolean
  readonly betweenText: string
  readonly inRowText: string
  readonly perHill: number
  readonly perOz: number
  readonly perEar: number
  readonly earsOnTen: number
  readonly lossPercent: number
  /** 0: as the newest test of the lot has it. */
  readonly sproutsOf100: number
  /** 0: as own years of the field have it. */
  readonly standOf100: number
  readonly confidence: '80' | '90' | '95' | '99'
}

export const FRESH: Wish = {
  corn: '',
  seedLotId: '',
  foodText: '',
  reserveKernels: 1000,
  linePlants: 200,
  pattern: 'rows',
  beans: false,
  squash: false,
  betweenText: '36 in',
  inRowText: '12 in',
  perHill: 3,
  perOz: 110,
  perEar: 280,
  earsOnTen: 12,
  lossPercent: 15,
  sproutsOf100: 0,
  standOf100: 0,
  confidence: '95',
}

/** Met often where there is no record; said so beside the fields. Common practice, no source. [of 100] */
export const OFTEN_MET = { sprouts: 90, stand: 80 } as const

/** Of 100 to 600 g a thousand, as the plan reckons: project rule. [kernels/oz] */
export const PER_OZ = { least: 48, most: 283 } as const

export interface Known {
  /** Each null where it cannot be read. */
  readonly foodLb: number | null
  readonly betweenM: number | null
  readonly inRowM: number | null
  readonly lot: SeedLotFact | null
  readonly years: readonly FieldYear[]
}

/** Null while something is not told. */
export function inputOf(wish: Wish, { foodLb, betweenM, inRowM, lot, years }: Known): FieldPlanInput | null {
  const { reserveKernels, linePlants, perOz, perEar, earsOnTen } = wish
  if (foodLb === null || betweenM === null || inRowM === null) return null
  if ([reserveKernels, linePlants, perEar, earsOnTen].includes(0) || perOz < PER_OZ.least) return null
  return {
    foodLb,
    reserveKernelsCount: reserveKernels,
    plantsForLineCount: linePlants,
    kernelsPerEar: perEar,
    gPerThousand: gPerThousandOfKernelsPerOz(perOz),
    earsPerPlant: earsOnTen / 10,
    lossFraction: wish.lossPercent / 100,
    germinationFraction: sproutsOf100(wish, lot) / 100,
    survivalFraction: standOf100(wish, years) / 100,
    pattern: wish.pattern,
    rowSpacingM: betweenM,
    inRowSpacingM: inRowM,
    ...(wish.pattern === 'hills' && {
      plantsPerHillCount: wish.perHill,
      withBeans: wish.beans,
      withSquash: wish.squash,
    }),
    confidenceFraction: Number(wish.confidence) / 100,
  }
}

export function sproutsOf100(wish: Wish, lot: SeedLotFact | null): number {
  const test = lot?.tests.at(-1)
  if (wish.sproutsOf100 > 0) return wish.sproutsOf100
  if (!test || test.sproutedCount === 0) return OFTEN_MET.sprouts
  return wholePercent(germinationOfTest({ sproutedCount: test.sproutedCount, testedCount: test.ofCount }).value)
}

export function standOf100(wish: Wish, years: readonly FieldYear[]): number {
  if (wish.standOf100 > 0) return wish.standOf100
  const own = standFractionOfYears(years)
  return own === null ? OFTEN_MET.stand : wholePercent(own)
}

function wholePercent(fraction: number): number {
  return Math.max(1, Math.round(fraction * 100))
}
