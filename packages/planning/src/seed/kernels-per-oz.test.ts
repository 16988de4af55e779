import { shownValue } from '@crib/science'
import { formatReckoned } from '@crib/wording'
import { expect, test } from 'vitest'
import { germinationOfTest } from './germination.ts'
import { gPerThousandOfKernelsPerOz, kernelsPerOzOfHundred } from './kernels-per-oz.ts'

test('a hundred kernels on the scale tell how many make an ounce', () => {
  // 1 oz = 28.349523125 g by definition: 100 kernels of S1's 110 in an ounce weigh 25.7723 g.
  expect(kernelsPerOzOfHundred(0.0257723)).toBeCloseTo(110, 3)
  expect(() => kernelsPerOzOfHundred(0)).toThrow(RangeError)
})

test('a test is read as a range, to the percent', () => {
  // S1: 46 of 50 is 92 %, plausibly 81 to 98 %.
  const said = germinationOfTest({ sproutedCount: 46, testedCount: 50 })
  expect(shownValue(said)).toBe(0.92)
  expect(formatReckoned(said)).toBe('92 %, between 81 and 98 %')
})

// An ounce is 28.349523125 g, exactly: 1000 / 110 of it is 257.7229375 g.
test('a thousand kernels weigh 257.7 g at 110 to the ounce, and no kernels weigh nothing', () => {
  expect(gPerThousandOfKernelsPerOz(110)).toBeCloseTo(257.7229375, 9)
  expect(() => gPerThousandOfKernelsPerOz(0)).toThrow('above 0')
})
