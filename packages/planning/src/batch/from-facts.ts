/**
 * A plan's input from the book: what was told once is remembered, what was recorded replaces the book's numbers, and
 * what only the keeper can say is asked. Leaves out: reading and writing entries.
 */
import { GUIDANCE_EDITION } from '@crib/guidance'
import type { AlkaliLotFact, CannerFact, CornLotFact, Facts, SeedFact } from '@crib/journal'
import { convert, type Sentence } from '@crib/science'
import { bookTimings } from '../day/from-plan.ts'
import type { SeedAnswer } from '../seed/seed-answer.ts'
import type { Amount } from '../shared/corn-measure.ts'
import { say } from '../shared/say.ts'
import { seedOfSeason } from '../shared/season-year.ts'
import type {
  AlkaliLot,
  BatchPlanInput,
  EndingShare,
  Fill,
  Hull,
  HullingAlkali,
  JarSize,
  OwnSpread,
  PlanCanner,
} from './input.ts'
import { HOMINY_PER_DRY_VOLUME } from './jars.ts'
import { ownHominyRatio, ownShellingRate, ownTimings, ownWaterRecord } from './own-records.ts'
import { readStages } from './stages.ts'

/** What the keeper says now; everything else is remembered or assumed, and can be changed. */
export interface BatchWish {
  readonly endings: readonly EndingShare[]
  readonly cornLotId?: string
  /** Instead of all that is left of the lot. */
  readonly amount?: Amount
  /** Instead of an amount: jars wanted. */
  readonly jarsWantedCount?: number
  readonly form?: 'ears' | 'shelled'
  readonly alkali?: HullingAlkali
  readonly alkaliLotId?: string
  readonly jarSize?: JarSize
  readonly fill?: Fill
  readonly hull?: Hull
  readonly seed?: SeedAnswer
  readonly cannerIds?: readonly string[]
  readonly wantsSalt?: boolean
  readonly spareLidFraction?: number
  readonly sortedOutDryFraction?: number
  readonly sortedOutWetFraction?: number
}

/** What has to be answered before a plan can be made. */
export type Asked = 'seed' | 'corn' | 'endings'

export type FactsOutcome =
  | { readonly kind: 'ready'; readonly input: BatchPlanInput; readonly remembered: readonly Sentence[] }
  | { readonly kind: 'asks'; readonly asks: readonly Asked[] }

/** The food whose standing is read, as `standing-read` entries name it. */
export function standingFood(alkali: HullingAlkali): string {
  return `${alkali}-hominy`
}

/** Whether the standing of this food was read this season and edition. */
export function isStandingRead(facts: Facts, alkali: HullingAlkali, seasonYear: number): boolean {
  return Object.values(facts.standings).some(
    (standing) =>
      standing.food === standingFood(alkali) &&
      standing.seasonYear === seasonYear &&
      standing.edition === GUIDANCE_EDITION,
  )
}

/** Fills a plan's input from the facts of the book. Pure: the season is handed in. */
export function batchInputFromFacts(facts: Facts, wish: BatchWish, seasonYear: number): FactsOutcome {
  const lot = wish.cornLotId ? facts.cornLots[wish.cornLotId] : undefined
  const from = cornOf(wish, lot)
  const seedFact = latestSeed(facts, seasonYear, wish.cornLotId)
  const seed =
    wish.seed ?? (seedFact && seedAnswer(seedFact, wish.amount === undefined && seedFact.lotId === wish.cornLotId))
  const asks: Asked[] = [
    ...(seed ? [] : (['seed'] as const)),
    ...(from ? [] : (['corn'] as const)),
    ...(wish.endings.length > 0 ? [] : (['endings'] as const)),
  ]
  if (!seed || !from || asks.length > 0) return { kind: 'asks', asks }

  const { kitchen } = facts
  const alkaliLot = chosenAlkaliLot(facts, wish)
  const alkali = wish.alkali ?? alkaliLot?.alkali ?? 'ash'
  const fill = wish.fill ?? kitchen?.jarFill
  const jarSize = wish.jarSize ?? 'quart'
  const lbPerLiquidQt = kitchen?.shelledLbPerLiquidQt
  const shelling = ownShellingRate(facts)
  const hominy = hominySpread(facts, kitchen?.jarFill ?? 'loose-to-headspace', lbPerLiquidQt, wish.cornLotId)
  const water = ownWaterRecord(facts)
  const canners = Object.values(facts.canners).filter(
    ({ cannerId }) => !wish.cannerIds || wish.cannerIds.includes(cannerId),
  )
  return {
    kind: 'ready',
    remembered: [
      ...(hominy?.told ? [say('kettle:remembered-hominy', { ratio: hominy.spread.middle })] : []),
      ...(hominy?.ofLotCount
        ? [say('kettle:remembered-lot-yield', { count: hominy.ofLotCount, name: lot?.name ?? '' })]
        : []),
      ...(shelling
        ? [
            say('kettle:remembered-shelling', {
              own: shelling.ownMean,
              book: shelling.bookValue,
              count: shelling.recordsCount,
            }),
          ]
        : []),
      ...(water ? [say('kettle:remembered-water')] : []),
    ],
    input: {
      from,
      seed,
      cornType: lot?.cornType ?? 'unknown',
      alkali,
      pots: Object.values(facts.pots).map(({ name, volumeL, material }) => ({
        name,
        volumeLiquidQt: convert(volumeL, 'L', 'LiquidQt'),
        material,
      })),
      endings: wish.endings,
      canners: canners.map((canner) => planCanner(facts, canner, jarSize)),
      jarSize,
      isStandingRead: isStandingRead(facts, alkali, seasonYear),
      ...given({
        cornName: lot?.name,
        isTreatedSeed: lot?.treatedSeed,
        hull: wish.hull,
        fill,
        lbPerLiquidQt,
        shellersCount: kitchen?.helpersCount,
        shellingLbPerH: shelling?.value,
        alkaliLot: alkaliLot && planAlkaliLot(alkaliLot, wish.cornLotId),
        washPattern: kitchen?.washPattern,
        stages: readStages(kitchen?.stages) ?? undefined,
        waterRecord: water ?? undefined,
        hominyPerDryVolume: hominy?.spread,
        elevationFt: kitchen?.elevationM === undefined ? undefined : convert(kitchen.elevationM, 'M', 'Ft'),
        elevationKnownBy: kitchen?.elevationKnownBy,
        wantsSalt: wish.wantsSalt,
        spareLidFraction: wish.spareLidFraction,
        sortedOutDryFraction: wish.sortedOutDryFraction,
        sortedOutWetFraction: wish.sortedOutWetFraction,
      }),
    },
  }
}

function given<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as never
}

function cornOf(wish: BatchWish, lot: CornLotFact | undefined): BatchPlanInput['from'] | null {
  if (wish.jarsWantedCount !== undefined) return { kind: 'jars', jarCount: wish.jarsWantedCount }
  const balance = lot?.balance
  const isEars = balance ? balance.leftAs === 'ears' : lot?.form === 'ears'
  const form = wish.form ?? (isEars ? 'ears' : 'shelled')
  if (wish.amount) return { kind: 'corn', form, amount: wish.amount }
  if (balance) {
    const left = balance.leftKg - balance.setAsideKg
    return left > 0 ? { kind: 'corn', form, amount: { value: left, unit: 'Kg' } } : null
  }
  return lot?.volumeL === undefined ? null : { kind: 'corn', form, amount: { value: lot.volumeL, unit: 'L' } }
}

/** The latest word on seed this season, for this lot first. */
function latestSeed(facts: Facts, seasonYear: number, cornLotId: string | undefined): SeedFact | undefined {
  const season = seedOfSeason(facts, seasonYear).sort((a, b) => (a.at.instant < b.at.instant ? 1 : -1))
  return (
    season.find((seed) => seed.lotId !== undefined && seed.lotId === cornLotId) ?? season.find((seed) => !seed.lotId)
  )
}

function seedAnswer(seed: SeedFact, isAlreadyTakenOut: boolean): SeedAnswer {
  const { how, plantingsCount, places, massKg, reason } = seed
  // The lot's balance has taken the seed off already; seed of no named lot never was in it.
  return {
    how,
    plantingsCount,
    places,
    ...given({ massKg, reason }),
    isAlreadyTakenOut: isAlreadyTakenOut || seed.lotId === undefined,
  }
}

/** A lot a printed recipe knows: of the other alkalis no dose is in print, so no day is planned with them. */
type HullingLot = AlkaliLotFact & { readonly alkali: HullingAlkali }

export function isHullingLot(lot: AlkaliLotFact): lot is HullingLot {
  return lot.alkali !== 'potassium-hydroxide' && lot.alkali !== 'sodium-carbonate'
}

/** The lot named, else the latest that works. */
function chosenAlkaliLot(facts: Facts, wish: BatchWish): HullingLot | undefined {
  const lots = Object.values(facts.alkaliLots).filter(isHullingLot)
  if (wish.alkaliLotId) return lots.find(({ alkaliLotId }) => alkaliLotId === wish.alkaliLotId)
  return lots
    .filter(({ onlyCleanWood }) => onlyCleanWood !== false)
    .filter(({ judged, alkali }) => judged === 'works' && (!wish.alkali || alkali === wish.alkali))
    .sort((a, b) => (a.at.instant < b.at.instant ? 1 : -1))[0]
}

/** The record of a lot with this corn, else with any; the last judgement that gave a figure stands. */
function planAlkaliLot(lot: AlkaliLotFact, cornLotId: string | undefined): AlkaliLot {
  const same = lot.judgements.filter((judgement) => judgement.cornLotId === cornLotId)
  const last = <K extends 'cupsPerLiquidQt' | 'slipMin'>(key: K) =>
    [...lot.judgements, ...same].findLast((judgement) => judgement[key] !== undefined)?.[key]
  const { name, judged, burntClean, cold, sifted, lidded, onlyCleanWood } = lot
  return {
    name,
    judged,
    ...given({ cupsPerLiquidQt: last('cupsPerLiquidQt'), slipMin: last('slipMin') }),
    ...given({ burntClean, cold, sifted, lidded, onlyCleanWood }),
  }
}

function hominySpread(
  facts: Facts,
  habitFill: Fill,
  lbPerLiquidQt: number | undefined,
  cornLotId: string | undefined,
): { readonly spread: OwnSpread; readonly told: boolean; readonly ofLotCount?: number } | null {
  const told = facts.kitchen?.hominyPerDryVolume
  if (told) return { spread: told, told: true }
  const own = ownHominyRatio(facts, habitFill, lbPerLiquidQt, cornLotId)
  if (!own) return null
  return {
    told: false,
    ofLotCount: own.ofLotCount,
    spread: {
      low: Math.min(HOMINY_PER_DRY_VOLUME.low, own.lowest),
      middle: own.value,
      high: Math.max(HOMINY_PER_DRY_VOLUME.high, own.highest),
      recordsCount: own.recordsCount,
    },
  }
}

function planCanner(facts: Facts, canner: CannerFact, jarSize: JarSize): PlanCanner {
  const { name, gauges, capacityPints, capacityQuarts } = canner
  const { runsCount, ...timingsMin } = ownTimings(facts, canner, bookTimings(jarSize))
  const isOwn = canner.timingsMin !== undefined || runsCount > 0
  return { name, gauges, capacityPints, capacityQuarts, ...(isOwn && { timingsMin }) }
}
