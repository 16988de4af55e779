/** S2's second part (invented): lot M-0 in the pot, the record of M-1 beside it. */
import type { AlkaliLotFact, Facts } from '@crib/journal'
import { shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import type { PotWalk } from '../batch/kettle-walk.ts'
import type { BatchPlan } from '../batch/plan.ts'
import { enoughSlipped, type WeakPot, weakPotAdvice, whyNoSlip } from './weak-pot.ts'

const titrated = (coldMl: number, boiledMl: number) => ({
  found: {
    way: 'vinegar',
    sampleMl: 50,
    coldMl,
    boiledMl,
    acidityGPer100Ml: 5,
    steepedG: 100,
    steepWaterL: 1,
  },
  gPerCup: 100,
  at: { instant: '2026-11-03T10:00:00.000Z' },
})
const lot = (name: string, tests: readonly object[]) =>
  ({ name, alkali: 'ash', tests, judgements: [{ cupsPerLiquidQt: 1, slipMin: 55 }] }) as unknown as AlkaliLotFact
const pot = (m0: AlkaliLotFact, m1: AlkaliLotFact): WeakPot => ({
  facts: { kitchen: null, alkaliLots: { 'M-0': m0, 'M-1': m1 } } as unknown as Facts,
  plan: {
    input: { alkaliLot: { name: 'M-1', slipMin: 55 } },
    kettle: { potLoads: [{ number: 1, cornLiquidQt: 1 }] },
  } as unknown as BatchPlan,
  walk: {
    potLoad: 1,
    steps: [{ stage: { kind: 'alkali-boil' }, waterL: 3.8 }],
    seen: {
      boilAtMs: 0,
      rubs: [{ entryId: 'rub', atMs: 7_200_000, slippedCount: 0, ofCount: 20 }],
      alkaliCups: 1,
      toppedUpL: 0,
    },
  } as unknown as PotWalk,
  lot: m0,
  nowMs: 7_200_000,
  today: '2026-11-03',
  isSoftening: true,
})
const said = (advice: ReturnType<typeof weakPotAdvice>) => {
  const words = createWords()
  return [...advice!.reasons, ...advice!.warnings].map((each) => words.sentence(each)).join('\n')
}

test('with both ashes titrated the three rescues come in order, each with what it brings', () => {
  const advice = weakPotAdvice(pot(lot('M-0', [titrated(0.9, 1.7)]), lot('M-1', [titrated(4.8, 5.41)])))!
  const value = (id: string) => shownValue(advice.values.find((each) => each.id === id)!)
  // 1.7 of 5.41 mL: 0.28 against 0.90 eq/kg, so 3.18 cups in all, 2.18 more, up to a quarter.
  expect([value('lotEqPerKg'), value('moreAshCups'), value('ashInAllCups')]).toEqual([0.28, 2.25, 3.25])
  expect(value('calciumHydroxideG')).toBe(6.8)
  expect(advice.lacks).toEqual([])
  const text = said(advice)
  const places = ['stir in more M-0', 'calcium hydroxide', 'for grinding'].map((phrase) => text.indexOf(phrase))
  expect(places.every((place) => place >= 0)).toBe(true)
  expect(places).toEqual([...places].sort((a, b) => a - b))
  expect(text).toMatch(/do not go into jars/)
  expect(text).not.toMatch(/nearly done|\bpH\b/)
})

test('without a titration, a cup and the water the same order stands, and what lacks is named', () => {
  const advice = weakPotAdvice(pot(lot('M-0', []), lot('M-1', [])))!
  expect(advice.lacks).toEqual(['titration', 'cup'])
  expect(said(advice)).toMatch(/record of M-1 does not carry over to M-0/)
})

test('grinding forgives: 12 of 20 are enough to grind, and too few to keep whole', () => {
  expect(enoughSlipped({ slippedCount: 12, ofCount: 20 }, 'ground').isEnough).toBe(true)
  expect(enoughSlipped({ slippedCount: 12, ofCount: 20 }, 'whole').isEnough).toBe(false)
  expect(enoughSlipped({ slippedCount: 18, ofCount: 20 }, 'whole').isEnough).toBe(true)
})

test('the causes the book shows of this pot stand first: an ash open for months, and little water', () => {
  const open = { ...lot('M-0', [titrated(0.9, 1.7)]), lidded: false, gatheredOn: '2025-09-03' } as AlkaliLotFact
  const shown = whyNoSlip(pot(open, lot('M-1', [])), 90)
    .filter(({ isShownByBook }) => isShownByBook)
    .map(({ id }) => id)
  expect(shown).toEqual(['weak-lot', 'mostly-carbonate'])
  const thirsty = pot(lot('M-0', []), lot('M-1', []))
  const steps = [{ ...thirsty.walk.steps[0]!, waterL: 1.9 }]
  expect(whyNoSlip({ ...thirsty, walk: { ...thirsty.walk, steps } }, 90)[0]!.id).toBe('too-little-liquid')
})
