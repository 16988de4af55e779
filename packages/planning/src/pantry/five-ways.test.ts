import { applyEntries, createAuthor, createId, demoKitchen, foldFacts } from '@crib/journal'
import { shownValue } from '@crib/science'
import { expect, test } from 'vitest'
import { handClock, repeatingRandom, testKitchen } from '../../../journal/src/testing/invented.ts'
import { recall } from '../keeping/recall.ts'
import { fiveWays } from './five-ways.ts'
import { pantryShelf } from './shelf.ts'
import { whereItWent } from './where-it-went.ts'

const clock = handClock('2026-11-20T15:00:00.000Z')
const random = repeatingRandom()
const zone = 'America/Toronto'

function told() {
  const demo = demoKitchen({ clock, random, zone })
  const before = foldFacts(demo.entries)
  const newId = () => createId(clock, random)
  const lines = fiveWays(before, { newId, nowMs: clock.now(), zone })
  const author = createAuthor({
    kitchenId: demo.kitchenId,
    deviceId: newId(),
    personId: newId(),
    head: null,
    clock,
    random,
    zone,
  })
  const entries = lines.map(([kind, body, instant]) => author.write(kind, body as never, { happenedAt: { instant } }))
  return applyEntries(before, entries)
}

// By hand, kg of dry matter over 0.87: jars 3 of 7 left, 4.2 × 3/7 × 0.3 = 0.54; frozen 2.5 × 0.3 = 0.75; dried one pack of
// four, 0.225; flour 0.47 × 0.9021 = 0.4240; roasted 0.47 × 0.97 = 0.4559; eaten two jars and a bag,
// 2 × 0.18 + 0.15 = 0.51; given 2 × 0.18 = 0.36; thrown out 0.225; mill 0.45 - 0.4240, pan 0.48 - 0.4559.
test('one harvest goes five ways, and every pound is on the shelf or accounted for', () => {
  const facts = told()
  expect(facts.questions).toEqual([])
  const went = whereItWent(facts)!
  expect(shownValue(went.corn)).toBe(4.54) // 10 lb
  const kg = Object.fromEntries(went.strands.map(({ place, form, corn }) => [form ?? place, shownValue(corn)]))
  expect(kg).toEqual({
    jar: 0.62,
    freezer: 0.86,
    dried: 0.26,
    flour: 0.49,
    roasted: 0.52,
    eaten: 0.59,
    given: 0.41,
    discarded: 0.26,
    'lost-in-work': 0.06,
    'hulls-and-unweighed': 0.47,
  })
  const sum = went.strands.reduce((total, { corn }) => total + corn.value, 0)
  expect(Math.abs(sum - went.corn.value)).toBeLessThan(1e-9)
  expect(went.unweighedCodes).toEqual([])
  expect(
    pantryShelf(facts)
      .map(({ lot }) => lot.form)
      .sort(),
  ).toEqual(['dried', 'flour', 'freezer', 'jar', 'roasted'])
})

test('its dial recalls its seven jars and the two earlier loads, and nothing else', () => {
  const facts = told()
  const cannerId = Object.keys(facts.canners)[0]!
  const found = recall(facts, { by: 'gauge', cannerId, gauge: 'dial' })
  expect(found.lots.map(({ form, putUpCount, onShelfCount }) => [form, putUpCount, onShelfCount])).toEqual([
    ['jar', 7, 0],
    ['jar', 7, 0],
    ['jar', 7, 3],
  ])
  expect(found.households).toEqual(['the school kitchen'])
})

test('no invented line is ever handed to a kitchen that is real', () => {
  const { newId } = testKitchen()
  expect(() => fiveWays(foldFacts([]), { newId, nowMs: 0, zone: 'UTC' })).toThrow('invented kitchen only')
})
