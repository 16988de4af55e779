import { expect, test } from 'vitest'
import { typedNumber } from './typed-number.ts'

test.each([
  ['46', true, 46],
  ['1,100', true, 1100],
  ['', true, 0],
  ['12.5', false, 12.5],
  ['12,5', false, 12.5],
  ['12.', false, 12],
  ['.', false, 0],
])('%j is read (whole: %s) as %s', (text, isWhole, number) => {
  expect(typedNumber(text, isWhole)).toBe(number)
})

test.each([
  ['-5', true],
  ['12.5', true],
  ['five', true],
  ['-5', false],
  ['1.2.3', false],
])('%j is no number here (whole: %s)', (text, isWhole) => {
  expect(typedNumber(text, isWhole)).toBeNull()
})
