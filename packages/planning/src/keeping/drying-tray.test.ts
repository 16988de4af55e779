import type { DryingFact } from '@crib/journal'
import { shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { dryingTray } from './drying-tray.ts'

const words = createWords()
const tray = (more: object, ...weights: readonly number[]): DryingFact =>
  ({
    dryingId: 'd',
    name: 'tray 1',
    what: 'hominy',
    massKg: 5,
    startWetFraction: 0.73,
    endWetFraction: 0,
    ...more,
    weights: weights.map((massKg) => ({ massKg })),
  }) as never
const HOMINY = { startWetFraction: 0.75, endWetFraction: 0.1 }
const shown = (fact: DryingFact) =>
  Object.fromEntries(dryingTray(fact).values.map((value) => [value.id, shownValue(value)]))

// By hand: 5 (1 - 0.757)/(1 - 0.1) = 1.35 kg.
test('the tray stops at 1.35 kg, as by hand', () => {
  expect(shown(tray({ startWetFraction: 0.757, endWetFraction: 0.1 })).stopAtKg).toBe(1.35)
})

// By hand: 5 kg hold 1.25 kg dry; of 2 kg that leaves 0.75 kg water, 37.5 %.
test('its moisture follows from the weight, and what is still to go', () => {
  expect(shown(tray(HOMINY, 3, 2))).toMatchObject({
    stopAtKg: 1.38,
    weighsKg: 2,
    toGoKg: 0.61,
    moistureFraction: 0.375,
  })
})

test('it is ready at its weight and not a hundredth before; a tray not weighed yet never is', () => {
  expect(dryingTray(tray(HOMINY, 1.4)).isReady).toBe(false)
  expect(dryingTray(tray(HOMINY, 1.38)).isReady).toBe(true)
  expect(dryingTray(tray({ startWetFraction: 0.757, endWetFraction: 0.1 }, 1.35)).isReady).toBe(true)
  expect(dryingTray(tray({ startWetFraction: 0.757, endWetFraction: 0.1 }, 1.36)).isReady).toBe(false)
  expect(dryingTray(tray({ ...HOMINY, endWetFraction: 0.749 })).isReady).toBe(false)
})

test('a weight that rose, and one below the dry matter, are owned up to', () => {
  const said = (fact: DryingFact) =>
    dryingTray(fact)
      .warnings.map((each) => words.sentence(each))
      .join(' ')
  expect(said(tray(HOMINY, 3, 3.1))).toContain('grew heavier')
  expect(said(tray(HOMINY, 1.2))).toContain('lighter than its dry matter')
  expect(shown(tray(HOMINY, 1.2)).moistureFraction).toBeUndefined()
  expect(said(tray({ startWetFraction: 0.1, endWetFraction: 0.1 }))).toContain('not below the moisture now')
})

test('dry matter is the same before and after, at any weight on the way', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.1, max: 100, noNaN: true }),
      fc.double({ min: 0.2, max: 0.9, noNaN: true }),
      fc.double({ min: 0.01, max: 0.99, noNaN: true }),
      (massKg, startWetFraction, part) => {
        const dryKg = massKg * (1 - startWetFraction)
        const nowKg = dryKg + part * (massKg - dryKg)
        const { values } = dryingTray(tray({ massKg, startWetFraction, endWetFraction: 0.05 }, nowKg))
        const moisture = values.find(({ id }) => id === 'moistureFraction')!.value
        expect(Math.abs(nowKg * (1 - moisture) - dryKg)).toBeLessThan(1e-9 * massKg)
      },
    ),
  )
})
