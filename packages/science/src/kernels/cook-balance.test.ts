import fc from 'fast-check'
import { expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { cookBalance } from './cook-balance.ts'

const worked = readReferenceTable(new URL('./moisture.yield.csv', import.meta.url), [
  'rawWetPercent',
  'lossPercent',
  'cookedWetPercent',
  'cookedPerRaw',
])
const exactly = (value: number) => ({ value, low: value, high: value })

// The yields are printed to 0.01, so that the loss found from one is off by as much of it.
test.each(worked.rows)('finds a loss of $lossPercent % from a yield of $cookedPerRaw', (row) => {
  const { lossFraction, hominyPerCorn } = cookBalance({
    cornKg: 1,
    cornWetFraction: exactly(row.rawWetPercent / 100),
    hominyKg: row.cookedPerRaw,
    hominyWetFraction: exactly(row.cookedWetPercent / 100),
    tailsKg: 0,
  })
  expect(Math.abs(lossFraction.value - row.lossPercent / 100)).toBeLessThanOrEqual(0.005 / row.cookedPerRaw + 1e-12)
  expect(hominyPerCorn).toBe(row.cookedPerRaw)
})

const moisture = fc
  .tuple(fc.double({ min: 0, max: 0.9, noNaN: true }), fc.double({ min: 0, max: 0.05, noNaN: true }))
  .map(([value, off]) => ({ value, low: Math.max(0, value - off), high: value + off }))
const weights = fc.record({
  cornKg: fc.double({ min: 0.01, max: 1000, noNaN: true }),
  cornWetFraction: moisture,
  hominyKg: fc.double({ min: 0, max: 3000, noNaN: true }),
  hominyWetFraction: moisture,
  tailsKg: fc.double({ min: 0, max: 500, noNaN: true }),
})

test('every gram of dry matter is in the hominy, in what was sorted out, or lost', () => {
  fc.assert(
    fc.property(weights, (given) => {
      const { inKg, hominyDryKg, tailsDryKg, lossKg, lossFraction } = cookBalance(given)
      const all = hominyDryKg.value + tailsDryKg.value + lossKg.value
      expect(Math.abs(all - inKg.value)).toBeLessThanOrEqual(
        1e-12 * (inKg.value + hominyDryKg.value + tailsDryKg.value),
      )
      expect(lossFraction.value * inKg.value).toBeCloseTo(lossKg.value, 9)
      expect(lossKg.low).toBeLessThanOrEqual(lossKg.value)
      expect(lossKg.value).toBeLessThanOrEqual(lossKg.high)
      expect(lossFraction.low).toBeLessThanOrEqual(lossFraction.value)
      expect(lossFraction.value).toBeLessThanOrEqual(lossFraction.high)
    }),
  )
})

test('nothing is lost at the least moisture it names, and less than nothing below it', () => {
  fc.assert(
    fc.property(weights, (given) => {
      const { leastWetFraction } = cookBalance(given)
      fc.pre(leastWetFraction > 0.01 && leastWetFraction < 0.94)
      const at = (wet: number) => cookBalance({ ...given, hominyWetFraction: exactly(wet) }).lossFraction.value
      expect(Math.abs(at(leastWetFraction))).toBeLessThan(1e-9)
      expect(at(leastWetFraction - 0.01)).toBeLessThan(0)
      expect(at(leastWetFraction + 0.01)).toBeGreaterThan(0)
    }),
  )
})

const some = { cornKg: 1, cornWetFraction: exactly(0.12), hominyKg: 2.5, hominyWetFraction: exactly(0.7), tailsKg: 0 }

test.each([
  [{ ...some, cornKg: 0 }, 'cornKg'],
  [{ ...some, hominyKg: -1 }, 'hominyKg'],
  [{ ...some, hominyWetFraction: exactly(0.96) }, 'hominyWetFraction'],
  [{ ...some, cornWetFraction: { value: 0.2, low: 0.1, high: 0.15 } }, 'cornWetFraction'],
])('weights no kitchen has are refused by name', (bad, argument) => {
  expect(() => cookBalance(bad)).toThrow(ValidRangeError)
  expect(() => cookBalance(bad)).toThrow(argument)
})
