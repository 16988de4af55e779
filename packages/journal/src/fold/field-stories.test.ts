import { describe, expect, test } from 'vitest'
import { checkBody, type Kind } from '../kinds/index.ts'
import { propose } from '../propose.ts'
import { testKitchen } from '../testing/invented.ts'
import { foldFacts } from './fold.ts'

/** An invented season of the plot behind Kettlebrook Hollow. */
function season() {
  const kitchen = testKitchen()
  const author = kitchen.author()
  const plotId = kitchen.newId()
  const plantingId = kitchen.newId()
  const neighbourId = kitchen.newId()
  const lotId = kitchen.newId()
  const neighbour = { plotId, neighbourId, name: 'the field over the road', seasonYear: 2026, bearingDeg: 240 }
  const entries = [
    author.write('plot-recorded', { plotId, name: 'behind the house', lengthM: 15, widthM: 12 }),
    author.write('neighbour-corn-recorded', { ...neighbour, distanceM: 120 }),
    author.write('neighbour-corn-recorded', { ...neighbour, distanceM: 150, tasselledOn: '2026-07-20' }),
    ...[2027, 2026, 2026].map((seasonYear, index) =>
      author.write('field-planned', {
        plotId,
        seasonYear,
        cornName: 'Heron Foot flint',
        inputs: { foodLb: 40 + index },
        edition: 'e',
        codeVersion: '0',
        shown: {},
      }),
    ),
    author.write('planting-recorded', {
      plantingId,
      plotId,
      cornName: 'Heron Foot flint',
      plantedOn: '2026-05-14',
      pattern: 'rows',
      rowsCount: 8,
      kernelsSownCount: 327,
    }),
    author.write('stand-counted', { plantingId, countedOn: '2026-06-10', plantsCount: 262, ofKernelsCount: 327 }),
    author.write('tassel-seen', { plantingId, seenOn: '2026-07-16', howMany: 'half' }),
    author.write('silk-seen', { plantingId, seenOn: '2026-07-19', howMany: 'half' }),
    author.write('harvest-brought-in', {
      plantingId,
      harvestedOn: '2026-09-28',
      lotId,
      form: 'ears',
      massKg: 24,
      earsCount: 310,
    }),
  ]
  return { kitchen, entries, plotId, plantingId, neighbourId, lotId }
}

describe('the field in the facts', () => {
  test('[J21] a plot keeps the latest word on each neighbour, a planting all that was seen of it, in any order', () => {
    const { entries, plotId, plantingId } = season()
    const facts = foldFacts(entries)
    expect(facts.plots[plotId]?.neighbours.map(({ distanceM }) => distanceM)).toEqual([150])
    // Of two plans for a year the later stands, and years follow each other.
    expect(facts.plots[plotId]?.plans.map(({ seasonYear, inputs }) => [seasonYear, inputs])).toEqual([
      [2026, { foodLb: 42 }],
      [2027, { foodLb: 40 }],
    ])
    const planting = facts.plantings[plantingId]
    expect(planting?.stands.map(({ plantsCount }) => plantsCount)).toEqual([262])
    expect(planting?.silks.map(({ seenOn }) => seenOn)).toEqual(['2026-07-19'])
    expect(planting?.tassels).toHaveLength(1)
    expect(planting?.harvests.map(({ earsCount }) => earsCount)).toEqual([310])
    expect(JSON.stringify(foldFacts(entries.toReversed()))).toBe(JSON.stringify(facts))
  })

  test('[J50] what was seen of a planting nobody recorded is asked about', () => {
    const { entries } = season()
    const seenOnly = entries.filter(({ envelope }) => envelope.kind === 'silk-seen')
    const { questions, plantings } = foldFacts(seenOnly)
    expect(plantings).toEqual({})
    expect(questions.map(({ code }) => code)).toEqual(['question-story-without-beginning'])
  })

  test('[J51] a plot and a planting must be known, and nothing is seen before the sowing', () => {
    const { kitchen, entries, plantingId, plotId } = season()
    const facts = foldFacts(entries)
    const silk = { plantingId, seenOn: '2026-05-13', howMany: 'half' } as const
    expect(propose(facts, 'silk-seen', silk)).toMatchObject({
      ok: false,
      refusals: [{ code: 'before-sowing', params: { value: '2026-05-13', min: '2026-05-14' } }],
    })
    expect(propose(facts, 'silk-seen', { ...silk, seenOn: '2026-07-20' })).toEqual({ ok: true })
    expect(propose(facts, 'silk-seen', { ...silk, plantingId: kitchen.newId() })).toMatchObject({
      refusals: [{ code: 'no-such-planting' }],
    })
    const neighbour = { plotId, neighbourId: kitchen.newId(), name: 'x', seasonYear: 2026, distanceM: 90 }
    expect(propose(facts, 'neighbour-corn-recorded', neighbour)).toEqual({ ok: true })
    expect(propose(facts, 'neighbour-corn-recorded', { ...neighbour, plotId: kitchen.newId() })).toMatchObject({
      refusals: [{ code: 'no-such-plot' }],
    })
  })
})

test.each<[Kind, object, string, string]>([
  ['neighbour-corn-recorded', { distanceM: 0 }, 'out-of-limits', 'distanceM'],
  ['neighbour-corn-recorded', { distanceM: -5 }, 'out-of-limits', 'distanceM'],
  ['neighbour-corn-recorded', { distanceM: 90, bearingDeg: 361 }, 'out-of-limits', 'bearingDeg'],
  ['harvest-brought-in', { earsCount: -1 }, 'out-of-limits', 'earsCount'],
  ['harvest-brought-in', {}, 'amount-needed', 'massKg'],
  ['harvest-brought-in', { massKg: 10, kernelWetFraction: 15.5 }, 'out-of-limits', 'kernelWetFraction'],
  ['stand-counted', { plantsCount: 12, ofKernelsCount: 10 }, 'out-of-limits', 'plantsCount'],
  ['planting-recorded', { pattern: 'rows', hillsCount: 9 }, 'wrong-value', 'hillsCount'],
  ['planting-recorded', { pattern: 'rows', plantedOn: 'May' }, 'wrong-value', 'plantedOn'],
])('[J12] %s with %j is refused: %s at %s', (kind, more, code, field) => {
  const { plotId, plantingId, neighbourId } = season()
  const whole: Partial<Record<Kind, object>> = {
    'neighbour-corn-recorded': { plotId, neighbourId, name: 'x', seasonYear: 2026 },
    'harvest-brought-in': { plantingId, harvestedOn: '2026-09-28', form: 'ears' },
    'stand-counted': { plantingId, countedOn: '2026-06-10' },
    'planting-recorded': { plantingId, plotId, cornName: 'x', plantedOn: '2026-05-14' },
  }
  const checked = checkBody(kind, { ...whole[kind], ...more })
  expect(checked.ok ? [] : checked.refusals).toContainEqual({ code, params: expect.objectContaining({ field }) })
})
