/**
 * What the keeper's own book says about yield, shelling, water and canner timings, each beside the book's number.
 * Leaves out: records that cannot be compared (endings without a count or a weight, batches without their corn).
 */

import type { BatchFact, CannerFact, Facts, FoodLotFact, RunFact } from '@crib/journal'
import { convert } from '@crib/science'
import { weighedYields, yieldByVolume } from '../kettle-chemistry/own-yields.ts'
import { LB_PER_LIQUID_QT } from '../shared/corn-measure.ts'
import { type OwnRecord, shrinkToOwn } from '../shared/own-record.ts'
import { HOMINY_LB_PER_LIQUID_QT, SHELLING_LB_PER_H } from './corn.ts'
import type { CannerTimings, Fill, WaterRecord } from './input.ts'
import { FILL_FRACTION, HOMINY_PER_DRY_VOLUME, JAR_LIQUID_QT } from './jars.ts'
import { plannedInputs } from './planned-batch.ts'
import { STAGE_KINDS, type Stage } from './stages.ts'

const HOMINY_RATIO_LIMITS = { min: 1, max: 6 } as const

export interface OwnHominy extends OwnRecord {
  readonly lowest: number
  readonly highest: number
  /** Of them, of the corn lot asked for. */
  readonly ofLotCount: number
}

/**
 * Hominy per volume of dry corn over finished batches, shrunk toward the printed 3; null without a record. Where this corn lot
 * has records of its own, they are shrunk toward what the other lots gave instead.
 * Hominy weighed at the kettle counts before jars and bags; jars as full as their batch was planned, else by habit.
 */
export function ownHominyRatio(
  facts: Facts,
  habitFill: Fill,
  lbPerLiquidQt: number = LB_PER_LIQUID_QT,
  cornLotId?: string,
): OwnHominy | null {
  const weighed = new Map(weighedYields(facts).map((own) => [own.batchId, own]))
  const records = Object.values(facts.batches).flatMap((batch) => {
    const own = weighed.get(batch.batchId)
    const ratio = own
      ? yieldByVolume(own.hominyPerCorn, lbPerLiquidQt)
      : putUpRatio(facts, batch, habitFill, lbPerLiquidQt)
    if (ratio === null || ratio < HOMINY_RATIO_LIMITS.min || ratio > HOMINY_RATIO_LIMITS.max) return []
    return [{ ratio, isOfLot: cornLotId !== undefined && batch.cornUsed.some(({ lotId }) => lotId === cornLotId) }]
  })
  if (records.length === 0) return null
  const ratios = records.map(({ ratio }) => ratio)
  const ofLot = records.filter(({ isOfLot }) => isOfLot).map(({ ratio }) => ratio)
  const others = records.filter(({ isOfLot }) => !isOfLot).map(({ ratio }) => ratio)
  const kitchen = shrinkToOwn(HOMINY_PER_DRY_VOLUME.middle, others)
  const own = ofLot.length === 0 ? kitchen : shrinkToOwn(kitchen.value, ofLot)
  return {
    ...shrinkToOwn(HOMINY_PER_DRY_VOLUME.middle, ratios),
    value: own.value,
    ofLotCount: ofLot.length,
    lowest: Math.min(...ratios),
    highest: Math.max(...ratios),
  }
}

/** By what was put up of a batch; null where corn or one lot's volume is not known. */
function putUpRatio(facts: Facts, batch: BatchFact, habitFill: Fill, lbPerLiquidQt: number): number | null {
  const cornKg = batch.cornUsed.reduce((sum, { massKg }) => sum + massKg, 0)
  const lots = Object.values(facts.foodLots).filter((lot) => lot.batchId === batch.batchId)
  const fill = plannedInputs(batch)?.fill ?? habitFill
  const volumes = lots.map((lot) => hominyLiquidQt(lot, fill))
  if (cornKg === 0 || lots.length === 0 || volumes.includes(null)) return null
  const hominy = volumes.reduce<number>((sum, volume) => sum + (volume ?? 0), 0)
  return hominy / (convert(cornKg, 'Kg', 'Lb') / lbPerLiquidQt)
}

/** Hominy in a finished lot. [liquid qt] Null for forms whose volume is gone (dried, flour, roasted). */
function hominyLiquidQt(lot: FoodLotFact, fill: Fill): number | null {
  if (lot.form === 'jar') return lot.jarSize ? lot.count * JAR_LIQUID_QT[lot.jarSize] * FILL_FRACTION[fill] : null
  if (!['freezer', 'fridge', 'tonight'].includes(lot.form) || lot.massKg === undefined) return null
  return convert(lot.massKg, 'Kg', 'Lb') / HOMINY_LB_PER_LIQUID_QT
}

/** Shelled corn per person and hour, shrunk toward common practice; null without a record. [lb/h] */
export function ownShellingRate(facts: Facts): OwnRecord | null {
  const rates = Object.values(facts.cornLots).flatMap(({ shellings }) =>
    shellings.flatMap(({ shelledKg, helpersCount, minutes }) =>
      helpersCount && minutes ? [convert(shelledKg, 'Kg', 'Lb') / (helpersCount * (minutes / 60))] : [],
    ),
  )
  return rates.length === 0 ? null : shrinkToOwn(SHELLING_LB_PER_H.middle, rates)
}

const EVENT_SPANS = [
  ['heat', 'canner-loaded', 'steam-steady'],
  ['comeUp', 'vent-closed', 'at-pressure'],
  ['coolToZero', 'heat-off', 'zero'],
] as const

/** A canner's own timings: what was told or is common practice, shrunk toward its recorded runs. [min] */
export function ownTimings(
  facts: Facts,
  canner: CannerFact,
  book: CannerTimings,
): CannerTimings & { readonly runsCount: number } {
  const runs = Object.values(facts.runs).filter(({ begun }) => begun.cannerId === canner.cannerId)
  const told = canner.timingsMin ?? book
  const learned = { ...told }
  let runsCount = 0
  for (const [name, from, to] of EVENT_SPANS) {
    const spans = runs.flatMap((run) => spanMin(run, from, to))
    runsCount = Math.max(runsCount, spans.length)
    if (spans.length > 0) learned[name] = shrinkToOwn(told[name], spans).value
  }
  return { ...learned, runsCount }
}

/** From the first `from` to the first `to` after it; nothing where either is missing or they share an instant. */
function spanMin({ events }: RunFact, from: string, to: string): number[] {
  const start = events.find(({ event }) => event.type === from)
  if (!start) return []
  const end = events.find(({ event, instant }) => event.type === to && Date.parse(instant) > Date.parse(start.instant))
  return end ? [(Date.parse(end.instant) - Date.parse(start.instant)) / 60_000] : []
}

/** Water by stage of the latest batch that wrote it down, for one of its pot-loads; null without one. */
export function ownWaterRecord(facts: Facts): WaterRecord | null {
  const batches = Object.values(facts.batches).sort((a, b) => (a.plan.at.instant < b.plan.at.instant ? 1 : -1))
  for (const batch of batches) {
    const record = waterOf(batch)
    if (record) return record
  }
  return null
}

function waterOf({ plan, stages }: BatchFact): WaterRecord | null {
  const shown = plan.shown as { readonly cornPerPotLoadLiquidQt?: unknown } | null
  const cornLiquidQt = shown && typeof shown === 'object' ? shown.cornPerPotLoadLiquidQt : undefined
  const noted = stages.filter(({ waterL, potLoad }) => waterL !== undefined && potLoad === 1)
  if (typeof cornLiquidQt !== 'number' || noted.length === 0) return null
  const byKind = new Map<Stage['kind'], number[]>()
  for (const { stageId, waterL } of noted) {
    const kind = STAGE_KINDS.find((each) => stageId === each || stageId.startsWith(`${each}-`))
    if (kind) byKind.set(kind, [...(byKind.get(kind) ?? []), convert(waterL!, 'L', 'LiquidGal')])
  }
  if (!byKind.has('alkali-boil')) return null // half an account is no account
  return {
    cornLiquidQt,
    rows: [...byKind].map(([stageKind, gallons]) => ({
      stageKind,
      timesCount: gallons.length,
      waterLiquidGal: gallons.reduce((sum, each) => sum + each, 0) / gallons.length,
    })),
  }
}
