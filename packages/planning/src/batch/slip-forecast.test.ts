/** The invented demo kitchen: lot M-1 slipped at 55 min with one cup to the quart; a pot is cooked with it and rubbed. */
import { applyEntries, type BodyOf, createAuthor, createId, demoKitchen, foldFacts } from '@crib/journal'
import { expect, test } from 'vitest'
import { batchPlan } from './batch-plan.ts'
import { batchInputFromFacts } from './from-facts.ts'
import { batchPlannedBody } from './planned-batch.ts'
import { type SlipForecast, slipForecast } from './slip-forecast.ts'
import { potRecordOf, slipPots, usualSlipMin } from './slip-records.ts'

const EIGHT = Date.parse('2026-11-03T08:00:00Z')
let tick = 0
const clock = { now: () => EIGHT + tick++ }
let drawn = 0
const random = { bytes: (length: number) => Uint8Array.from({ length }, () => (drawn = (drawn * 73 + 41) % 256)) }
const demo = demoKitchen({ clock, random, zone: 'UTC' })
const book = foldFacts(demo.entries)
const author = createAuthor({
  kitchenId: demo.kitchenId,
  deviceId: createId(clock, random),
  personId: createId(clock, random),
  head: null,
  clock,
  random,
  zone: 'UTC',
})
const at = (minutes: number) => EIGHT + minutes * 60_000

const m1 = Object.values(book.alkaliLots).find(({ name }) => name === 'M-1')!.alkaliLotId
const cornLotId = Object.keys(book.cornLots)[0]!
const batchId = createId(clock, random)
const planned = (() => {
  const seed = { how: 'by-eye', plantingsCount: 2, places: [] } as const
  const wish = { cornLotId, alkaliLotId: m1, endings: [{ ending: 'freezer', shareFraction: 1 }], seed } as const
  const outcome = batchInputFromFacts(book, wish, 2026)
  if (outcome.kind !== 'ready') throw new Error('asks')
  const plan = batchPlan(outcome.input)
  if (plan.kind !== 'planned') throw new Error(plan.refused)
  return author.write(
    'batch-planned',
    batchPlannedBody({ batchId, title: 'a pot', plan, beside: { cornLotId, alkaliLotId: m1 } }),
  )
})()

type Seen = BodyOf<'cook-noted'>['seen']

/** The book after things were seen at the first pot, each so many minutes after eight. */
function after(...notes: readonly (readonly [minutes: number, seen: Seen])[]) {
  const entries = notes.map(([minutes, seen]) =>
    author.write('cook-noted', { batchId, potLoad: 1, seen }, { happenedAt: { instant: at(minutes) } }),
  )
  return applyEntries(book, [planned, ...entries])
}

const ash = (minutes: number, cups: number) => [minutes, { type: 'alkali-added', alkaliLotId: m1, cups }] as const
const boil = [0, { type: 'boil' }] as const
const rub = (minutes: number, slippedCount: number) => [minutes, { type: 'rubbed', slippedCount, ofCount: 20 }] as const

function foretold(facts: ReturnType<typeof after>, minutes: number, use: 'whole' | 'ground' = 'whole'): SlipForecast {
  const outcome = slipForecast(facts, { batchId, potLoad: 1, nowMs: at(minutes), use })
  if (outcome.kind !== 'foretold') throw new Error(outcome.kind)
  return outcome
}

const keys = ({ sentences }: SlipForecast) => sentences.map(({ key }) => key.replace('kettle:', ''))
const width = ({ slipMin }: SlipForecast) => Math.log(slipMin.high! / slipMin.low!)

test('nothing is foretold before the pot boils', () => {
  const facts = after(ash(-20, 2))
  expect(slipForecast(facts, { batchId, potLoad: 1, nowMs: at(0), use: 'whole' }).kind).toBe('not-boiling')
})

test('a batch that is not in the book is an error that names it', () => {
  expect(() => slipForecast(book, { batchId: 'x', potLoad: 1, nowMs: at(0), use: 'whole' })).toThrow('batch x')
})

test('with the house record the range lies about its 55 minutes, with a cup to the quart', () => {
  const forecast = foretold(after(ash(-20, 2), boil), 5)
  expect(forecast.slipMin.low).toBeLessThan(55)
  expect(forecast.slipMin.high).toBeGreaterThan(55)
  expect(forecast.slipMin.high! - forecast.slipMin.low!).toBeGreaterThan(20)
  expect(forecast.now).toBe('before')
  expect(forecast.potsCount).toBe(1)
  expect(keys(forecast)).toEqual(['slip-foretold', 'slip-own-pots'])
})

test('each rub test narrows the range; few slipped moves it later, many earlier', () => {
  const bare = foretold(after(ash(-20, 2), boil), 45)
  const few = foretold(after(ash(-20, 2), boil, rub(45, 2)), 45)
  const more = foretold(after(ash(-20, 2), boil, rub(45, 2), rub(60, 8)), 60)
  const many = foretold(after(ash(-20, 2), boil, rub(45, 16)), 45)
  expect(width(few)).toBeLessThan(width(bare))
  expect(width(more)).toBeLessThan(width(few))
  expect(few.slipMin.low).toBeGreaterThan(bare.slipMin.low!)
  expect(many.slipMin.high).toBeLessThan(bare.slipMin.high!)
  expect(few.slippedNowFraction.value).toBeLessThan(many.slippedNowFraction.value)
})

test('the same record gives the same range at any minute: nothing counts down', () => {
  const facts = after(ash(-20, 2), boil, rub(45, 6))
  const early = foretold(facts, 46)
  const late = foretold(facts, 300)
  expect(late.slipMin).toEqual(early.slipMin)
  expect([late.fromMs, late.toMs]).toEqual([early.fromMs, early.toMs])
  expect(late.now).toBe('after')
  expect(keys(late)).toContain('slip-now-after')
})

test('corn for grinding may come off sooner', () => {
  const facts = after(ash(-20, 2), boil, rub(45, 6))
  expect(foretold(facts, 45, 'ground').slipMin.value).toBeLessThan(foretold(facts, 45).slipMin.value)
})

test('darkening is weighed in, and says less than a rub test', () => {
  const facts = [ash(-20, 2), boil] as const
  const dark = foretold(after(...facts, [12, { type: 'darkening' }]), 13)
  expect(keys(dark)).toContain('slip-darkened')
  expect(width(dark)).toBeLessThan(width(foretold(after(...facts), 13)))
  expect(width(dark)).toBeGreaterThan(width(foretold(after(...facts, rub(30, 4)), 30)))
})

test('minutes at half the ash count for less, and the range after more ash is sooner than without it', () => {
  const half = [ash(-20, 1), boil, rub(45, 2)] as const
  const record = potRecordOf(after(...half), after(...half).batches[batchId]!, 1)!
  expect(record.pot.rubs[0]!.boiledMin).toBeCloseTo(45 * 0.5 ** 0.75, 6)
  const helped = foretold(after(...half, ash(46, 1)), 46)
  expect(helped.slipMin.value).toBeLessThan(foretold(after(...half), 46).slipMin.value)
  expect(keys(helped)).toContain('slip-added-late')
})

test('a pot being foretold is not among the pots behind it, nor is one rubbed after it came off the heat', () => {
  // biome-ignore lint/suspicious/noThenProperty: a word of the body, never a function, so nothing awaits it
  const facts = after(ash(-20, 2), boil, rub(45, 18), [50, { type: 'off-heat', then: 'hot' }], rub(80, 20))
  expect(slipPots(facts, { batchId, potLoad: 1 })).toHaveLength(1)
  const [pot] = slipPots(facts).filter(({ rubs }) => rubs.length > 0)
  expect(pot!.rubs).toHaveLength(1)
})

test('what is usual follows corn, hull and alkali', () => {
  expect(usualSlipMin('flint', undefined, 'ash')).toBeCloseTo(77.46, 2)
  expect(usualSlipMin('flour', undefined, 'ash')).toBeLessThan(usualSlipMin('popcorn', undefined, 'ash'))
  expect(usualSlipMin('flint', 'thick', 'sodium-hydroxide')).toBe(40)
})
