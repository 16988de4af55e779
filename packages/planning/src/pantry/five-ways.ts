/**
 * An invented harvest for the demo kitchen: ten pounds of flint hulled in one day, its hominy kept five ways, some of it
 * used since. Written only into a kitchen that is marked as invented.
 */
import { GUIDANCE_EDITION } from '@crib/guidance'
import type { BodyOf, Facts, Kind } from '@crib/journal'
import { convert } from '@crib/science'
import { batchPlan } from '../batch/batch-plan.ts'
import { standingFood } from '../batch/from-facts.ts'
import { batchPlannedBody } from '../batch/planned-batch.ts'
import { nextKettleCode, nextLoadCode } from '../canner/begin-run.ts'
import { dayOfInstant } from '../canner/clock-instants.ts'

/** One line to be written, with when it happened. */
export type ToldLine = {
  [K in Kind]: readonly [kind: K, body: BodyOf<K>, atMs: number]
}[Kind]

export interface FiveWaysSetup {
  newId(): string
  /** Epoch ms. */
  readonly nowMs: number
  readonly zone: string
}

const DAY_MS = 86_400_000
const HOUR_MS = 3_600_000
/** When the day at the kettle was. [days ago] */
const KETTLE_DAYS_AGO = 24

/**
 * The lines, in order of happening.
 *
 * @throws {RangeError} in a kitchen that is not marked as invented, or without a canner and a lot of ash that works.
 */
export function fiveWays(facts: Facts, { newId, nowMs, zone }: FiveWaysSetup): readonly ToldLine[] {
  const canner = Object.values(facts.canners)[0]
  const ash = Object.values(facts.alkaliLots).find(({ judged }) => judged === 'works')
  if (facts.kitchen?.demo !== true) throw new RangeError('the invented harvest is for an invented kitchen only')
  if (!canner || !ash) throw new RangeError('the invented harvest needs a canner and ash that works')
  const lines: ToldLine[] = []
  const at = (daysAgo: number, hours = 0): number => nowMs - daysAgo * DAY_MS + hours * HOUR_MS
  const tell = <K extends Kind>(kind: K, body: BodyOf<K>, atMs: number): void => {
    lines.push([kind, body, atMs] as unknown as ToldLine)
  }
  const day = (atMs: number): string => dayOfInstant(atMs, zone)
  const lotId = newId()
  const batchId = newId()
  const runId = newId()
  const [jars, frozen, dried, flour, roasted, fresh] = [newId(), newId(), newId(), newId(), newId(), newId()] as const
  const began = at(KETTLE_DAYS_AGO)

  tell(
    'corn-lot-brought-in',
    {
      lotId,
      name: 'Lantern flint, last harvest',
      cornType: 'flint',
      form: 'shelled',
      treatedSeed: false,
      massKg: convert(10, 'Lb', 'Kg'),
      asTyped: '10 lb',
      note: 'the whole of it for one day at the kettle',
    } as const,
    at(90),
  )
  const test = { lotId, testedOn: day(at(60)), by: 'oven', wetFraction: 0.13 } as const
  tell('moisture-tested', test, at(60))
  tell('store-condition-noted', { lotId, notedOn: day(at(90)), temperatureC: 12, place: 'loft' }, at(90))
  const read = { seasonYear: new Date(began).getUTCFullYear(), edition: GUIDANCE_EDITION, food: standingFood('ash') }
  tell('standing-read', { readingId: newId(), ...read }, began - HOUR_MS)
  const plan = batchPlan({
    from: { kind: 'corn', form: 'shelled', amount: { value: 10, unit: 'Lb' } },
    seed: { how: 'by-eye', plantingsCount: 2, places: ['a tin', 'a braid'] },
    cornName: 'Lantern flint',
    cornType: 'flint',
    alkali: 'ash',
    alkaliLot: { name: ash.name, judged: 'works', cupsPerLiquidQt: 1, slipMin: 55 },
    pots: [{ name: 'the big pot', volumeLiquidQt: 20, material: 'stainless' }],
    endings: (['jars', 'freezer', 'dried', 'flour', 'roasted'] as const).map((ending) => ({
      ending,
      shareFraction: 0.2,
    })),
    fill: 'loose-to-headspace',
    jarSize: 'quart',
    elevationFt: 820,
    elevationKnownBy: 'map',
    isStandingRead: true,
    canners: [{ name: canner.name, gauges: ['dial'], capacityPints: 7, capacityQuarts: 7 }],
  })
  if (plan.kind !== 'planned') throw new RangeError(`the invented day cannot be planned: ${plan.refused}`)
  const beside = { cornLotId: lotId, alkaliLotId: ash.alkaliLotId }
  tell('batch-planned', batchPlannedBody({ batchId, title: 'Lantern flint, five ways', plan, beside }), began)
  tell('cook-noted', { batchId, potLoad: 1, seen: { type: 'boil' } }, began + HOUR_MS)
  tell(
    'cook-noted',
    { batchId, potLoad: 1, seen: { type: 'alkali-added', alkaliLotId: ash.alkaliLotId, cups: 7 } },
    began + HOUR_MS,
  )
  tell(
    'cook-noted',
    { batchId, potLoad: 1, seen: { type: 'rubbed', slippedCount: 19, ofCount: 20 } },
    began + 2 * HOUR_MS,
  )

  const loadCode = nextLoadCode(facts, canner.cannerId, day(began))
  const run = { runId, batchId, cannerId: canner.cannerId, cannerName: canner.name, loadCode } as const
  const card = { ventMin: 10, processMin: 70, edition: GUIDANCE_EDITION, cardShown: { holdAtPsi: 11 } } as const
  tell(
    'run-begun',
    { ...run, ...card, jarSize: 'quart', jarCount: 7, gauge: 'dial', requiredReadingPsi: 11 },
    began + 5 * HOUR_MS,
  )
  const minutes = [
    ...[['canner-loaded', 1] as const, ['lid-seated', 5] as const, ['steam-steady', 20] as const],
    ...[['vent-closed', 30] as const, ['at-pressure', 38] as const, ['heat-off', 109] as const],
    ...[['zero', 150] as const, ['weight-off', 150] as const, ['lid-off', 160] as const, ['jars-out', 165] as const],
  ]
  for (const [type, min] of minutes) tell('run-event', { runId, event: { type } }, began + 5 * HOUR_MS + min * 60_000)
  const seals = { type: 'seal-seen', sealedCount: 7, unsealedCount: 0 } as const
  tell('run-event', { runId, event: seals }, began + 24 * HOUR_MS)

  const codes = kettleCodes(facts, day(began), 5)
  const hominy = { batchId, wetFraction: 0.7 } as const
  tell(
    'food-put-up',
    { ...hominy, lotId: jars, runId, loadCode, form: 'jar', jarSize: 'quart', count: 7, massKg: 4.2, place: 'cellar' },
    began + 25 * HOUR_MS,
  )
  tell(
    'food-put-up',
    { ...hominy, lotId: frozen, loadCode: codes[0]!, form: 'freezer', count: 6, massKg: 3, place: 'chest freezer' },
    began + 6 * HOUR_MS,
  )
  tell(
    'food-put-up',
    { ...hominy, lotId: fresh, loadCode: codes[1]!, form: 'fridge', count: 2, massKg: 1.6 },
    began + 6 * HOUR_MS,
  )
  tell(
    'food-put-up',
    {
      batchId,
      lotId: dried,
      loadCode: codes[2]!,
      form: 'dried',
      count: 4,
      massKg: 1,
      wetFraction: 0.1,
      place: 'tin shelf',
    },
    began + 30 * HOUR_MS,
  )
  tell(
    'food-put-up',
    {
      batchId,
      lotId: flour,
      loadCode: codes[3]!,
      form: 'flour',
      count: 1,
      massKg: 0.47,
      wetFraction: 0.0979,
      place: 'tin shelf',
    },
    at(20),
  )
  tell('food-worked', { lotId: flour, how: 'ground', fromLotId: dried, inKg: 0.5, outKg: 0.47, passesCount: 2 }, at(20))
  tell('lot-used', { lotId: dried, count: 2, massKg: 0.5, how: 'made-into', intoLotId: flour }, at(20))
  tell(
    'food-put-up',
    {
      batchId,
      lotId: roasted,
      loadCode: codes[4]!,
      form: 'roasted',
      count: 2,
      massKg: 0.47,
      wetFraction: 0.03,
      place: 'tin shelf',
    },
    at(22),
  )
  const roast = {
    how: 'roasted-dry',
    fromLotId: fresh,
    inKg: 1.6,
    outKg: 0.47,
    minutes: 30,
    temperatureC: 204,
  } as const
  tell('food-worked', { lotId: roasted, ...roast }, at(22))
  tell('lot-used', { lotId: fresh, count: 2, massKg: 1.6, how: 'made-into', intoLotId: roasted }, at(22))

  tell('food-opened', { lotId: jars, count: 1, found: 'good' }, at(14))
  tell('lot-used', { lotId: jars, count: 2, how: 'given', toWhom: 'the school kitchen' }, at(10))
  tell('food-opened', { lotId: jars, count: 1, found: 'good' }, at(4))
  tell('lot-used', { lotId: frozen, count: 1, how: 'eaten' }, at(9))
  tell('food-opened', { lotId: dried, count: 1, found: 'insects' }, at(3))
  return lines.sort(([, , a], [, , b]) => a - b)
}

/** Several codes of one day that no lot has yet. */
function kettleCodes(facts: Facts, day: string, count: number): readonly string[] {
  const codes: string[] = []
  let { foodLots } = facts
  for (let each = 0; each < count; each++) {
    const code = nextKettleCode({ ...facts, foodLots }, day)
    codes.push(code)
    foodLots = { ...foodLots, [code]: { loadCode: code } as Facts['foodLots'][string] }
  }
  return codes
}
