import { createWords } from '@crib/wording'
import { expect, test } from 'vitest'
import { percentFraction, typedMoisture } from './typed-moisture.ts'

const words = createWords()
const fault = (text: string, basis: 'wet' | 'dry' | null) => {
  const typed = typedMoisture(text, basis)
  return typed.kind === 'fault' ? words.sentence(typed.why) : typed.kind
}

test('a percentage is read with a point or a comma, with its sign or without', () => {
  expect(['13.5', '13,5 %', ' 13.5% '].map(percentFraction)).toEqual([0.135, 0.135, 0.135])
  expect(['', 'dry', '13 %%', '-4', '1.2.3'].map(percentFraction)).toEqual([null, null, null, null, null])
})

// By hand: 0.15/1.15 = 0.1304.
test('15 % on the dry basis is 13 % on the wet one, and that is said', () => {
  const typed = typedMoisture('15', 'dry')
  expect(typed.kind === 'moisture' && Math.abs(typed.wetFraction - 0.15 / 1.15)).toBeLessThan(1e-12)
  expect(typed.kind === 'moisture' && words.sentence(typed.say!)).toContain('13 %')
  expect(typedMoisture('15', 'wet')).toEqual({ kind: 'moisture', wetFraction: 0.15, say: null })
})

test('without a basis nothing is taken; outside the limits the value, limit, unit and source are named', () => {
  expect(fault('13', null)).toContain('Wet or dry basis?')
  expect(fault('96', 'wet')).toBe('96 is outside 1 to 95 % of the total weight, the book’s own limit.')
  expect(fault('0.13', 'wet')).toContain('0.13 is outside 1 to 95 %')
  expect(fault('2000', 'dry')).toContain('2000 is outside')
  expect(fault('damp', 'wet')).toContain('"damp"')
  expect(fault(' ', null)).toBe('empty')
})
