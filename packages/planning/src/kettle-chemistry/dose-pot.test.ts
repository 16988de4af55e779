import type { Facts } from '@crib/journal'
import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { type DoseWish, dosePot } from './dose-pot.ts'

const NO_KITCHEN = { kitchen: null } as unknown as Facts
const words = createWords()
const wish: DoseWish = {
  alkali: 'sodium-hydroxide',
  wish: 'on-corn',
  waterL: 3.8,
  wanted: 0.1,
  corn: { value: 1, unit: 'LiquidQt' },
}

test('a liquid quart of corn is a pound and a half, and the pot boils where the kitchen lies', () => {
  const pot = dosePot(NO_KITCHEN, wish)
  if (pot.kind !== 'pot') throw new Error('refused')
  expect(pot.input.cornKg).toBeCloseTo(0.6804, 4)
  expect(pot.input.temperatureC).toBeCloseTo(100, 0)
  // 0.06804 eq in 3.8 L.
  expect(pot.eqPerL).toBeCloseTo(0.0179, 4)
  const high = dosePot({ kitchen: { elevationM: 1524 } } as unknown as Facts, wish)
  expect(high.kind === 'pot' && high.input.temperatureC).toBeCloseTo(94.9, 0)
})

test.each([
  ['ash that nobody tested', { alkali: 'ash' as const }, /Ash has no strength/],
  ['more hydroxide than lime gives', { alkali: 'calcium-hydroxide' as const, wish: 'in-pot' as const }, /no amount/i],
  ['more than any recipe', { wanted: 3 }, /3 eq\/kg.*0\.01.*1\.5/],
  ['a truckload', { corn: { value: 1000, unit: 'Kg' as const } }, /1,000 kg.*200 kg/],
])('is refused in words: %s', (_name, part, said) => {
  const pot = dosePot(NO_KITCHEN, { ...wish, ...part })
  expect(pot.kind === 'refused' && pot.why.map((each) => words.sentence(each)).join(' ')).toMatch(said)
})
