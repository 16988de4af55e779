import type { CornLotFact } from '@crib/journal'
import { shownValue } from '@crib/science'
import { expect, test } from 'vitest'
import { lotShrink } from './lot-shrink.ts'

const lot = (leftKg: number | null, ...tests: readonly (number | undefined)[]): CornLotFact =>
  ({
    balance: leftKg === null ? null : { leftKg },
    moistureTests: tests.map((wetFraction) => ({ ...(wetFraction !== undefined && { wetFraction }) })),
  }) as never

// By hand: 10 × 0.82 = 8.2 kg dry; 8.2/0.87 = 9.4253 kg; 0.5747 kg of 10 gone.
test('10 kg from 18 % to 13 % hold 8.2 kg dry, weigh 9.43 kg and lost 5.7 %', () => {
  expect(lotShrink(lot(10, 0.18, 0.13))!.map(shownValue)).toEqual([8.2, 9.43, 0.057])
})

test('corn that took up water shrinks by less than nothing', () => {
  expect(shownValue(lotShrink(lot(10, 0.13, 0.15))![2]!)).toBeLessThan(0)
})

test('a lot without a weight, without a figure, or eaten up tells nothing', () => {
  expect(lotShrink(lot(null, 0.18))).toBeNull()
  expect(lotShrink(lot(10, undefined))).toBeNull()
  expect(lotShrink(lot(0, 0.18))).toBeNull()
})
