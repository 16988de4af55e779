/** A plot of the book over its year: plan, ground, neighbours, silk, own record. Every name and number is invented. */
import { applyEntries, type Facts, NO_FACTS, type StoredEntry } from '@crib/journal'
import { convert, shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { testKitchen } from '../../../journal/src/testing/invented.ts'
import { KETTLEBROOK_FIELD } from '../../testing/kettlebrook-field.ts'
import { dayNumber } from './days.ts'
import { degreeDayPlan } from './degree-day-plan.ts'
import { type FieldPlanInput, fieldPlan } from './field-plan.ts'
import { fieldYears } from './field-years.ts'
import { groundOfPlot } from './ground.ts'
import { totalOnDay } from './own-totals.ts'
import { fieldPlannedBody, plannedField } from './planned-field.ts'
import { crossingOfPlot } from './plot-crossing.ts'
import { halfSeenOn, nextSeasonStep, plantingsOfPlot } from './season-of-planting.ts'
import { shellingTime } from './shelling.ts'

const words = createWords()
const { author: authorOf, kitchenId, newId, clock } = testKitchen()
clock.set('2026-10-01T12:00:00Z')
const author = authorOf()
const plotId = newId()
const plantingId = newId()
const seedLotId = newId()
const book = (...entries: StoredEntry[]): Facts => applyEntries(NO_FACTS, entries)

const WISH: FieldPlanInput = { ...KETTLEBROOK_FIELD, foodLb: 30, rowSpacingM: 0.9, inRowSpacingM: 0.25 }
const opened = author.write('kitchen-opened', { kitchenId, name: 'Kettlebrook Hollow', demo: true })
const plotted = author.write('plot-recorded', { plotId, name: 'behind the house', rowsBearingDeg: 90 })
const planned = author.write(
  'field-planned',
  fieldPlannedBody(
    { seasonYear: 2026, cornName: 'Heron Foot flint', seedLotId, input: WISH, plan: fieldPlan(WISH) },
    plotId,
  ),
)
const lot = author.write('seed-lot-recorded', {
  seedLotId,
  name: 'Heron Foot flint 2025',
  seasonYear: 2025,
  putByOn: '2025-11-01',
  source: 'own',
  containers: [],
  kernelsCount: 2000,
})
const sprouted = author.write('germination-tested', {
  seedLotId,
  testedOn: '2026-04-20',
  sproutedCount: 46,
  ofCount: 50,
})
const sown = author.write('planting-recorded', {
  plantingId,
  plotId,
  cornName: 'heron foot flint',
  seedLotId,
  plantedOn: '2026-05-14',
  pattern: 'rows',
  rowsCount: 8,
  rowSpacingM: 0.9,
  inRowSpacingM: 0.25,
  kernelsSownCount: 340,
})

describe('a plot of the book', () => {
  test('keeps its plan, and works the same plan out again from the book', () => {
    const plot = book(opened, plotted, planned).plots[plotId]!
    const kept = plannedField(plot)!
    expect(kept.plan.values).toEqual(fieldPlan(WISH).values)
    expect(plot.plans[0]!.shown).toMatchObject({ plants: 240, kernelsToSow: 344 })
    expect(plannedField(plot, 2027)).toBeNull()
    // A plan that kept other inputs, or none, is no plan here.
    const odd = author.write('field-planned', { ...fieldPlannedBody(kept, plotId), inputs: { foodLb: 'plenty' } })
    expect(plannedField(book(opened, plotted, odd).plots[plotId]!)).toBeNull()
  })

  // 240 places, 0.9 by 0.25 m: 8 rows of 30, 7.5 m by 7.2 m.
  test('is drawn as sown, else as planned, else by its bare sides, else not at all', () => {
    const facts = book(opened, plotted, planned, lot, sown)
    const plot = facts.plots[plotId]!
    const ahead = plannedField(plot)
    expect(groundOfPlot(plot, { planned: ahead })).toMatchObject({
      from: 'planned',
      rowsCount: 8,
      perRowCount: 30,
      lengthM: 7.5,
      rowsBearingDeg: 90,
    })
    // 340 kernels in 8 rows: 43 places of 0.25 m where no length was told, and 30 in 7.5 m.
    const planting = facts.plantings[plantingId]!
    expect(groundOfPlot(plot, { planting, planned: ahead })).toMatchObject({ from: 'sown', perRowCount: 43 })
    expect(groundOfPlot({ ...plot, lengthM: 7.5 }, { planting })).toMatchObject({ perRowCount: 30, lengthM: 7.5 })
    const unspaced = { ...planting, rowSpacingM: undefined } as never
    expect(groundOfPlot({ lengthM: 15, widthM: 12 }, { planting: unspaced })).toMatchObject({
      from: 'bare',
      lengthM: 15,
      widthM: 12,
      rowsCount: 0,
    })
    expect(groundOfPlot({ lengthM: 15 }, {})).toBeNull()
  })

  test('asks for stand, tassel, silk and harvest in turn, and half is the day that counts', () => {
    const seen = { plantingId, seenOn: '2026-07-16' }
    const story: StoredEntry[] = [opened, plotted, lot, sown]
    const step = (...more: StoredEntry[]) => {
      story.push(...more)
      return nextSeasonStep(book(...story).plantings[plantingId]!)
    }
    expect(step()).toBe('stand')
    expect(step(author.write('stand-counted', { plantingId, countedOn: '2026-06-10', plantsCount: 262 }))).toBe(
      'tassel',
    )
    expect(step(author.write('tassel-seen', { ...seen, howMany: 'first' }))).toBe('tassel')
    expect(step(author.write('tassel-seen', { ...seen, howMany: 'half' }))).toBe('silk')
    expect(step(author.write('silk-seen', { plantingId, seenOn: '2026-07-19', howMany: 'half' }))).toBe('harvest')
    const ears = { plantingId, harvestedOn: '2026-09-28', form: 'ears', massKg: 24, plantsHarvestedCount: 250 } as const
    expect(step(author.write('harvest-brought-in', ears))).toBeNull()
    const { plantings, seedLots } = book(...story, sprouted)
    expect(halfSeenOn(plantings[plantingId]!.silks)).toBe('2026-07-19')
    expect(plantingsOfPlot(plantings, plotId).map(({ plantedOn }) => plantedOn)).toEqual(['2026-05-14'])
    // 340 kernels at 46 of 50 are 312.8 sprouts; 250 plants came to harvest.
    expect(fieldYears({ plantings, seedLots }, 'HERON FOOT FLINT (2026)')).toEqual([
      { year: 2026, sproutsCount: 313, grownCount: 250 },
    ])
    expect(fieldYears({ plantings, seedLots }, 'Lantern flint')).toEqual([])
    expect(fieldYears({ plantings, seedLots: {} }, 'Heron Foot flint')).toEqual([])
  })

  test('counts a stand of a part as its share of the whole sowing', () => {
    const part = { plantingId, countedOn: '2026-06-10', plantsCount: 70, ofKernelsCount: 100 }
    const { plantings, seedLots } = book(opened, plotted, lot, sprouted, sown, author.write('stand-counted', part))
    expect(fieldYears({ plantings, seedLots }, 'Heron Foot flint')).toEqual([
      { year: 2026, sproutsCount: 313, grownCount: 238 },
    ])
  })

  test('goes by the neighbours of the year and its own half silk, and says which crosses would show', () => {
    const near = { plotId, neighbourId: newId(), seasonYear: 2026, distanceM: 120, tasselledOn: '2026-07-24' }
    const facts = book(
      ...[opened, plotted, lot, sown],
      author.write('neighbour-corn-recorded', { ...near, name: 'over the road', wouldShow: true }),
      author.write('neighbour-corn-recorded', { ...near, neighbourId: newId(), name: 'the garden', wouldShow: false }),
      author.write('neighbour-corn-recorded', { ...near, neighbourId: newId(), name: 'last year', seasonYear: 2025 }),
      author.write('silk-seen', { plantingId, seenOn: '2026-07-19', howMany: 'half' }),
    )
    const outcome = crossingOfPlot(facts.plots[plotId]!, { seasonYear: 2026, planting: facts.plantings[plantingId] })
    if (outcome.kind !== 'told') throw new Error(outcome.refused)
    const said = [...outcome.reasons, ...outcome.warnings].map((one) => words.sentence(one)).join(' ')
    expect(said).toContain('over the road: a cross with it would show on your kernels this year')
    expect(said).toContain('the garden: a cross with it leaves no mark')
    // Own shedding begins two and a half days before silk; 24 July is 7.5 days after 16.5 July.
    expect(said).toContain('over the road sheds 8 days later')
    expect(said).not.toContain('last year')
    expect(crossingOfPlot(facts.plots[plotId]!, { seasonYear: 2024 })).toMatchObject({ refused: 'no-neighbours' })
  })
})

// iowa-agron-541: 87 and 63 °F is 24.5 degree-days; three such days 73.5 by the third.
test('an own total to silk is the sum to the day it was seen', () => {
  const hot = { highC: convert(87, 'F', 'C'), lowC: convert(63, 'F', 'C') }
  const first = dayNumber('2026-05-14')!
  const days = [0, 1, 2].map((more) => ({ day: first + more, ...hot }))
  const plan = degreeDayPlan({ days, missingDays: 0, plantedDay: first, group: 'early' })
  if (plan.kind !== 'told') throw new Error(plan.refused)
  expect(totalOnDay(plan, { id: 'ownToSilk', isoDay: '2026-05-16' })!.value).toBeCloseTo(73.5, 9)
  expect(totalOnDay(plan, { id: 'ownToSilk', isoDay: '2026-05-17' })).toBeNull()
})

// 70 lb of ears are 56 lb of kernels; 56 lb at 10 lb an hour, four people: 1.4 h, shown to the quarter hour.
test('shelling is told in hours of all hands, as a band', () => {
  const ears = { earCornKg: convert(70, 'Lb', 'Kg'), helpersCount: 4 }
  const [shelled, hours] = shellingTime(ears).values
  expect([shownValue(shelled!), shownValue(hours!)]).toEqual([56, 1.5])
  expect([hours!.low, hours!.high].map((one) => one!.toFixed(2))).toEqual(['0.70', '2.80'])
  const [, own] = shellingTime({ ...ears, lbPerHour: 14 }).values
  expect([own!.value.toFixed(3), own!.basis]).toEqual(['1.000', 'own-record'])
})
