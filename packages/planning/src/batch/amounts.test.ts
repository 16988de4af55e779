import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { amountName, jarName, sheetAmounts } from './amounts.ts'
import { batchPlan } from './batch-plan.ts'

const plan = batchPlan({
  from: { kind: 'corn', form: 'shelled', amount: { value: 9, unit: 'Lb' } },
  seed: { how: 'by-eye', plantingsCount: 2, places: [] },
  cornType: 'flint',
  alkali: 'ash',
  pots: [{ name: 'big pot', volumeLiquidQt: 20, material: 'stainless' }],
  endings: [
    { ending: 'jars', shareFraction: 0.5 },
    { ending: 'freezer', shareFraction: 0.25 },
    { ending: 'flour', shareFraction: 0.25 },
  ],
  canners: [{ name: 'yard canner', gauges: ['dial'], capacityPints: 9, capacityQuarts: 7 }],
  elevationFt: 820,
  isStandingRead: true,
})

test('every amount of a plan has a name in words, but for single loads', () => {
  if (plan.kind !== 'planned') throw new Error('refused')
  const words = createWords()
  const nameless = plan.values.filter(({ id }) => amountName(id) === null).map(({ id }) => id)
  expect(nameless.every((id) => id.startsWith('load:'))).toBe(true)
  expect(plan.values.length - nameless.length).toBeGreaterThan(20)
  for (const { id } of plan.values) {
    const name = amountName(id)
    if (name) expect(words.sentence(name)).not.toBe('')
  }
  expect(words.sentence(jarName('quart'))).toBe('liquid quart jars')
})

test('a sheet shows what to set out, then fresh and kept forms, then jars', () => {
  if (plan.kind !== 'planned') throw new Error('refused')
  const { toSetOut, toExpect, forJars } = sheetAmounts(plan)
  expect(toSetOut.map(({ id }) => id)).toEqual(['dryCornLiquidQt', 'ashCups', 'potLoads', 'waterLiquidGal'])
  expect(toExpect.map(({ id }) => id)).toEqual(['hominyLiquidQt', 'freezerBags', 'flourLb'])
  expect(forJars.map(({ id }) => id)).toEqual(['jars', 'jarsToSetOut', 'lidsToSetOut', 'saltTbsp', 'loads'])
})

test('jars wanted put the corn to shell first, and a cup of salt beside its spoons', () => {
  const values = (jarCount: number) => {
    const wanted = batchPlan({
      from: { kind: 'jars', jarCount },
      seed: { how: 'by-eye', plantingsCount: 2, places: [] },
      cornType: 'flint',
      alkali: 'ash',
      jarSize: 'pint',
      sortedOutDryFraction: 0.1,
      pots: [],
      endings: [{ ending: 'jars', shareFraction: 1 }],
      canners: [],
      isStandingRead: true,
    } as const)
    if (wanted.kind !== 'planned') throw new Error('refused')
    const { toSetOut, forJars } = sheetAmounts(wanted)
    return [...toSetOut, ...forJars].map(({ id }) => id)
  }
  expect(values(96).slice(0, 3)).toEqual(['cornToShellLb', 'cleanCornLb', 'dryCornLiquidQt'])
  expect(values(96)).toContain('saltCups')
  expect(values(90)).not.toContain('saltCups')
})

test('ears put their shelling first, by weight and by hours', () => {
  const ears = batchPlan({
    from: { kind: 'corn', form: 'ears', amount: { value: 40, unit: 'Lb' } },
    seed: { how: 'by-eye', plantingsCount: 2, places: [] },
    cornType: 'flint',
    alkali: 'ash',
    pots: [],
    canners: [],
    isStandingRead: true,
    endings: [{ ending: 'freezer', shareFraction: 1 }],
  } as const)
  if (ears.kind !== 'planned') throw new Error('refused')
  expect(
    sheetAmounts(ears)
      .toSetOut.map(({ id }) => id)
      .slice(0, 3),
  ).toEqual(['shelledLb', 'shellingH', 'dryCornLiquidQt'])
})
