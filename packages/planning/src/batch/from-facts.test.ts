/** The invented demo kitchen, planned from its own book. */
import { applyEntries, createAuthor, createId, demoKitchen, foldFacts } from '@crib/journal'
import { shownValue } from '@crib/science'
import { describe, expect, test } from 'vitest'
import { batchPlan } from './batch-plan.ts'
import { type BatchWish, batchInputFromFacts } from './from-facts.ts'
import { type BatchPlan, planValue } from './plan.ts'
import { planRecord, whatMoved } from './plan-record.ts'

const NOW = Date.parse('2026-11-02T13:00:00.000Z')
let tick = 0
const clock = { now: () => NOW + tick++ }
let drawn = 0
const random = { bytes: (length: number) => Uint8Array.from({ length }, () => (drawn = (drawn * 73 + 41) % 256)) }

const demo = demoKitchen({ clock, random, zone: 'America/Toronto' })
const facts = foldFacts(demo.entries)
const lotId = Object.keys(facts.cornLots)[0]!
const author = createAuthor({
  kitchenId: demo.kitchenId,
  deviceId: createId(clock, random),
  personId: createId(clock, random),
  head: null,
  clock,
  random,
  zone: 'America/Toronto',
})
const withSeed = applyEntries(facts, [
  author.write('seed-put-by', {
    seedId: createId(clock, random),
    lotId,
    seasonYear: 2026,
    how: 'by-eye',
    plantingsCount: 2,
    places: ['the loft', 'the tin'],
  }),
  author.write('standing-read', {
    readingId: createId(clock, random),
    seasonYear: 2026,
    edition: 'guidance-2026-11',
    food: 'ash-hominy',
  }),
])
const wish: BatchWish = { cornLotId: lotId, endings: [{ ending: 'jars', shareFraction: 1 }] }

function plan(from = withSeed, asked = wish): BatchPlan {
  const outcome = batchInputFromFacts(from, asked, 2026)
  if (outcome.kind !== 'ready') throw new Error(outcome.asks.join())
  const planned = batchPlan(outcome.input)
  if (planned.kind === 'refused') throw new Error(planned.refused)
  return planned
}

const shown = (from: BatchPlan, id: string) => {
  const value = planValue(from, id)
  return value && shownValue(value)
}

describe('a plan from the book', () => {
  test('asks for the seed line, and for nothing the book knows', () => {
    expect(batchInputFromFacts(facts, wish, 2026)).toEqual({ kind: 'asks', asks: ['seed'] })
    expect(batchInputFromFacts(withSeed, { endings: [] }, 2026)).toEqual({
      kind: 'asks',
      asks: ['seed', 'corn', 'endings'],
    })
  })

  // scenario S2: 9 lb, 6 cups of M-1, 3 pot-loads, 18 quart jars, 3 loads, 11 psi
  test.each([
    ['dryCornLiquidQt', 6],
    ['ashCups', 6],
    ['potLoads', 3],
    ['jars', 18],
    ['loads', 3],
    ['dialPsi', 11],
    ['alkaliBoilMin', 55],
  ])('remembers enough for S2: %s is %s', (id, expected) => {
    expect(shown(plan(), id)).toBe(expected)
  })

  test('another season, or another alkali, has not had its standing read', () => {
    expect(plan(withSeed, { ...wish, alkali: 'calcium-hydroxide' }).jars).toBeNull()
    const nextYear = batchInputFromFacts(withSeed, { ...wish, seed: plan().input.seed }, 2027)
    expect(nextYear).toMatchObject({ kind: 'ready', input: { isStandingRead: false } })
  })

  test('seed by weight of this lot is off its balance already and not taken twice', () => {
    const seedId = createId(clock, random)
    const bySeed = applyEntries(withSeed, [
      author.write('seed-put-by', {
        seedId,
        lotId,
        seasonYear: 2026,
        how: 'by-weight',
        massKg: 1.5 * 0.45359237,
        plantingsCount: 2,
        places: ['a', 'b'],
      }),
    ])
    expect(shown(plan(bySeed), 'cleanCornLb')).toBe(7.5)
    // Typed anew, the amount still holds the seed.
    expect(shown(plan(bySeed, { ...wish, amount: { value: 9, unit: 'Lb' } }), 'cleanCornLb')).toBe(7.5)
  })

  /** A batch of 3 lb, 2 liquid qt dry, that gave eight quart jars, planned at a fill. */
  function afterEightJars(fill: 'loose-to-headspace' | 'half') {
    const batchId = createId(clock, random)
    const { inputs, edition, codeVersion, shown: numbers } = planRecord(plan(withSeed, { ...wish, fill }))
    return applyEntries(withSeed, [
      author.write('batch-planned', { batchId, title: 'first', inputs, edition, codeVersion, shown: numbers }),
      author.write('lot-used', { lotId, massKg: 3 * 0.45359237, how: 'used-in-batch', batchId }),
      author.write('food-put-up', {
        lotId: createId(clock, random),
        batchId,
        loadCode: 'T-1',
        form: 'jar',
        jarSize: 'quart',
        count: 8,
      }),
    ])
  }

  test('a finished batch moves the hominy volume toward what it gave, with both numbers kept', () => {
    const later = afterEightJars('loose-to-headspace')
    const own = plan(later).input.hominyPerDryVolume!
    expect(own.middle).toBeCloseTo((2 * 3 + 4) / 3, 9) // 8 / 2 = 4 to 1; the book weighs two records
    expect(own.recordsCount).toBe(1)
    expect([own.low, own.high]).toEqual([2.2, 4])
    expect(plan(later).hominy.reasons[0]?.key).toBe('kettle:hominy-own-record')
  })

  test('the same eight jars, filled half, held half the hominy, whatever the next fill will be', () => {
    const later = afterEightJars('half')
    expect(plan(later).input.hominyPerDryVolume!.middle).toBeCloseTo((2 * 3 + 2) / 3, 9)
    expect(plan(later, { ...wish, fill: 'half' }).input.hominyPerDryVolume!.middle).toBeCloseTo((2 * 3 + 2) / 3, 9)
  })

  test('water noted stage by stage becomes the account of the next plan', () => {
    const batchId = createId(clock, random)
    const { shown: numbers, edition, codeVersion } = planRecord(plan())
    const note = (stageId: string, waterL: number) =>
      author.write('stage-noted', { batchId, potLoad: 1, stageId, what: 'done', waterL })
    const later = applyEntries(withSeed, [
      author.write('batch-planned', { batchId, title: 'first', inputs: null, edition, codeVersion, shown: numbers }),
      note('alkali-boil', 2 * 3.785411784),
      note('cold-rinse', 2 * 3.785411784),
      note('cold-rinse', 2 * 3.785411784),
      note('final-cook', 2 * 3.785411784),
    ])
    // 8 US gal to a pot-load of 2 liquid qt, three pot-loads
    const input = batchInputFromFacts(later, { ...wish, amount: { value: 9, unit: 'Lb' } }, 2026)
    if (input.kind !== 'ready') throw new Error('asked')
    const planned = batchPlan(input.input)
    expect(planned.kind === 'planned' && shown(planned, 'waterLiquidGal')).toBe(24)
  })

  test("a recorded run moves a canner's timings", () => {
    const canner = Object.values(withSeed.canners)[0]!
    const runId = createId(clock, random)
    const at = (minutes: number) => ({ happenedAt: { instant: NOW + minutes * 60_000 } })
    const later = applyEntries(withSeed, [
      author.write(
        'run-begun',
        {
          runId,
          cannerId: canner.cannerId,
          cannerName: canner.name,
          loadCode: 'T-1',
          jarSize: 'quart',
          jarCount: 6,
          gauge: 'dial',
          requiredReadingPsi: 11,
          ventMin: 10,
          processMin: 70,
          edition: 'guidance-2026-11',
          cardShown: null,
        },
        at(0),
      ),
      author.write('run-event', { runId, event: { type: 'canner-loaded' } }, at(1)),
      author.write('run-event', { runId, event: { type: 'steam-steady' } }, at(36)),
    ])
    // 20 min is the book's; the demo's own load took 19 and this one 35: (2 x 20 + 19 + 35) / 4
    expect(plan(later).input.canners[0]!.timingsMin!.heat).toBeCloseTo(23.5, 9)
    expect(plan().input.canners[0]!.timingsMin!.heat).toBeCloseTo(59 / 3, 9)
    expect(plan({ ...withSeed, runs: {} }).input.canners[0]!.timingsMin).toBeUndefined()
  })
})

describe('what is written down of a plan', () => {
  test('is plain data that makes the same plan again', () => {
    const first = plan()
    const again = batchPlan(JSON.parse(JSON.stringify(planRecord(first).inputs)))
    expect(again.kind === 'planned' && planRecord(again)).toEqual(planRecord(first))
  })

  test('changing the fill moves jars, lids, salt and loads, and nothing of the kettle', () => {
    const moved = whatMoved(plan(), plan(withSeed, { ...wish, fill: 'half' }))
    const ids = moved.map(({ id }) => id)
    expect(moved.find(({ id }) => id === 'jars')).toEqual({ id: 'jars', before: 18, after: 36 })
    expect(ids).toContain('lids')
    expect(ids).not.toContain('ashCups')
    expect(ids).not.toContain('waterLiquidGal')
  })
})
