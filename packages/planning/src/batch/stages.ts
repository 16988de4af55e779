/**
 * The walk from pot to hominy as an editable list, with two patterns built in. Minutes are ranges to look in at, never
 * a promise. Leaves out: amounts of water (water.ts) and clock times (day/).
 */
import type { Moment } from '@crib/guidance'
import type { Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import type { CornType, Hull, HullingAlkali } from './input.ts'

export type WashPattern = 'printed' | 'common-practice'

export const STAGE_KINDS = [
  'sort-dry',
  'alkali-boil',
  'stand',
  'hot-rinse',
  'cold-rinse',
  'rub',
  'scrub',
  're-boil',
  'skim',
  'sort-wet',
  'final-cook',
  'own',
] as const

export interface Stage {
  /** Unique in its list. */
  readonly id: string
  readonly kind: (typeof STAGE_KINDS)[number]
  readonly title: Sentence
  readonly lookFor: Sentence
  readonly timesCount: number
  /** Each time, once at the boil where it boils. [min] */
  readonly lowMin: number
  readonly highMin: number
  /** Bringing it to the boil, each time. [min]  common practice, no source */
  readonly heatUpMin: number
  /** Fresh water each time, per volume of dry corn. */
  readonly waterToCornRatio: number
  readonly needsHands: boolean
  /** How kernels may wait after it. */
  readonly waits: 'in-its-water' | 'hot-or-chilled' | 'not'
  /** Kernels reheated in fresh water just before filling. */
  readonly isHotPack: boolean
  /** Moments at which guidance has one-line cautions. */
  readonly cautionMoments: readonly string[]
}

/** Boil in alkali until hulls slip. [min]  common practice, no source: easy hulls 1.5 to 2 h, thick or feed corn up to 4. */
export const ALKALI_BOIL_MIN = {
  easy: { low: 90, high: 120 },
  thick: { low: 120, high: 240 },
  unknown: { low: 90, high: 240 },
} as const

/** Printed with the old lye directions: boil hard, then stand. [min]  @source so-easy-to-preserve-1999 p. 66 */
const LYE_BOIL_MIN = 30
const LYE_STAND_MIN = 20

/** The range of minutes in alkali for this corn. [min]  common practice, no source; lye and soda as printed. */
export function alkaliBoilRangeMin(cornType: CornType, hull: Hull | undefined, alkali: HullingAlkali) {
  if (alkali === 'sodium-hydroxide' || alkali === 'baking-soda') return { low: LYE_BOIL_MIN, high: LYE_BOIL_MIN }
  if (hull) return ALKALI_BOIL_MIN[hull]
  if (cornType === 'flour') return ALKALI_BOIL_MIN.easy
  return cornType === 'popcorn' ? ALKALI_BOIL_MIN.thick : ALKALI_BOIL_MIN.unknown
}

type StageParts = Omit<Stage, 'id' | 'kind' | 'title' | 'lookFor'>

const STILL: StageParts = {
  timesCount: 1,
  lowMin: 0,
  highMin: 0,
  heatUpMin: 0,
  waterToCornRatio: 0,
  needsHands: true,
  waits: 'in-its-water',
  isHotPack: false,
  cautionMoments: [],
}

function stage(kind: Exclude<Stage['kind'], 'own'>, parts: Partial<StageParts>, id: string = kind): Stage {
  return {
    id,
    kind,
    title: say(`kettle:stage-${kind}`),
    lookFor: say(`kettle:look-${kind}`),
    ...STILL,
    ...parts,
  }
}

/** A stage in the keeper's own words. */
export function ownStage(id: string, title: string, lookFor: string, parts: Partial<StageParts> = {}): Stage {
  return {
    id,
    kind: 'own',
    title: say('kettle:stage-own', { title }),
    lookFor: say('kettle:look-own', { lookFor }),
    ...STILL,
    ...parts,
  }
}

export interface StageChoice {
  readonly pattern: WashPattern
  readonly cornType: CornType
  readonly hull?: Hull | undefined
  readonly alkali: HullingAlkali
  /** Water to dry corn in the alkali boil, by volume. */
  readonly waterToCornRatio: number
}

/** Water to dry corn by volume, each time.  common practice, no source: kernels well covered; a house record replaces it. */
const RINSE_RATIO = 4
const RE_BOIL_RATIO = 3
const FINAL_RATIO = 4
/** Minutes to bring a full pot to the boil, cold and already hot.  common practice, no source */
const COLD_POT_HEAT_UP_MIN = 30
const HOT_POT_HEAT_UP_MIN = 10

/** What the hand is about to touch, by what goes into the pot. */
const ALKALI_MOMENTS: Readonly<Record<HullingAlkali, readonly Moment[]>> = {
  ash: ['alkali', 'ash'],
  'calcium-hydroxide': ['alkali'],
  'sodium-hydroxide': ['alkali', 'sodium-hydroxide'],
  'baking-soda': ['alkali'],
}

/**
 * A built-in list of stages.
 * `printed`: hot and cold rinses, five 5-minute re-boils in fresh water, final cook 30 to 45 min.
 * `common-practice`: wash, two re-boils of 20 to 30 min, scrub, skim, second sort, and the same reheat before filling.
 *
 * @source so-easy-to-preserve-1999 p. 66; nchfp-hominy-without-lye. "several" rinses are read as two hot and two cold.
 */
export function builtInStages({ pattern, cornType, hull, alkali, waterToCornRatio }: StageChoice): readonly Stage[] {
  const boil = alkaliBoilRangeMin(cornType, hull, alkali)
  const sortDry = stage('sort-dry', { lowMin: 10, highMin: 20, waits: 'in-its-water', cautionMoments: ['sort'] })
  const alkaliBoil = stage('alkali-boil', {
    lowMin: boil.low,
    highMin: boil.high,
    heatUpMin: COLD_POT_HEAT_UP_MIN,
    waterToCornRatio,
    needsHands: false,
    waits: 'not',
    cautionMoments: [...ALKALI_MOMENTS[alkali], 'pot', 'foam'],
  })
  const sortWet = stage('sort-wet', { lowMin: 10, highMin: 15, cautionMoments: ['sort'] })
  const finalCook = stage('final-cook', {
    lowMin: 30,
    highMin: 45,
    heatUpMin: HOT_POT_HEAT_UP_MIN,
    waterToCornRatio: FINAL_RATIO,
    needsHands: false,
    waits: 'hot-or-chilled',
    isHotPack: true,
  })
  const reBoil = (timesCount: number, lowMin: number, highMin: number) =>
    stage('re-boil', {
      timesCount,
      lowMin,
      highMin,
      heatUpMin: HOT_POT_HEAT_UP_MIN,
      waterToCornRatio: RE_BOIL_RATIO,
      needsHands: false,
    })

  if (pattern === 'printed') {
    return [
      sortDry,
      alkaliBoil,
      stage('stand', { lowMin: LYE_STAND_MIN, highMin: LYE_STAND_MIN, needsHands: false, waits: 'not' }),
      stage('hot-rinse', {
        timesCount: 2,
        lowMin: 3,
        highMin: 5,
        waterToCornRatio: RINSE_RATIO,
        cautionMoments: ['wash-water'],
      }),
      stage('cold-rinse', {
        timesCount: 2,
        lowMin: 3,
        highMin: 5,
        waterToCornRatio: RINSE_RATIO,
        cautionMoments: ['wash-water'],
      }),
      stage('rub', { lowMin: 5, highMin: 10, cautionMoments: ['first-rub'] }),
      reBoil(5, 5, 5),
      sortWet,
      finalCook,
    ]
  }
  return [
    sortDry,
    alkaliBoil,
    stage('cold-rinse', {
      timesCount: 2,
      lowMin: 3,
      highMin: 5,
      waterToCornRatio: RINSE_RATIO,
      cautionMoments: ['wash-water'],
    }),
    stage('rub', { lowMin: 5, highMin: 10, cautionMoments: ['first-rub'] }),
    reBoil(2, 20, 30),
    stage('scrub', { lowMin: 10, highMin: 20, waterToCornRatio: RINSE_RATIO, cautionMoments: ['first-rub'] }),
    stage('skim', { lowMin: 5, highMin: 10, waterToCornRatio: RINSE_RATIO }),
    sortWet,
    finalCook,
  ]
}

/** What an edited list must still have, in the keeper's words; empty when nothing is missing. */
export function stageQuestions(stages: readonly Stage[], hasJars: boolean): readonly Sentence[] {
  const questions: Sentence[] = []
  if (!stages.some((each) => each.kind === 'alkali-boil')) questions.push(say('kettle:no-alkali-boil'))
  if (!stages.some((each) => ['hot-rinse', 'cold-rinse', 'scrub'].includes(each.kind))) {
    questions.push(say('kettle:no-rinse'))
  }
  if (hasJars && !stages.at(-1)?.isHotPack) questions.push(say('kettle:not-hot-pack'))
  if (new Set(stages.map((each) => each.id)).size < stages.length) questions.push(say('kettle:stage-twice'))
  return questions
}

/** An edited list as it was kept in the book; null when it is not one, so that the built-in pattern is used. */
export function readStages(kept: unknown): readonly Stage[] | null {
  return Array.isArray(kept) && kept.length > 0 && kept.every(isStage) ? kept : null
}

function isStage(kept: unknown): kept is Stage {
  if (typeof kept !== 'object' || kept === null) return false
  const stage = kept as { readonly [K in keyof Stage]?: unknown }
  const isMin = (value: unknown) => typeof value === 'number' && value >= 0 && value <= 1440
  const isSentence = (value: unknown) => typeof (value as { key?: unknown } | null)?.key === 'string'
  return (
    typeof stage.id === 'string' &&
    STAGE_KINDS.some((kind) => kind === stage.kind) &&
    isSentence(stage.title) &&
    isSentence(stage.lookFor) &&
    Number.isInteger(stage.timesCount) &&
    isMin(stage.lowMin) &&
    isMin(stage.highMin) &&
    isMin(stage.heatUpMin) &&
    typeof stage.waterToCornRatio === 'number' &&
    stage.waterToCornRatio >= 0 &&
    typeof stage.needsHands === 'boolean' &&
    ['in-its-water', 'hot-or-chilled', 'not'].includes(stage.waits as string) &&
    typeof stage.isHotPack === 'boolean' &&
    Array.isArray(stage.cautionMoments)
  )
}
