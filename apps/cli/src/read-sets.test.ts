import { expect, test } from 'vitest'
import { BadInput } from './exit-codes.ts'
import { readSets } from './read-sets.ts'

test('values stay text, dots go down a level, brackets are JSON', () => {
  expect(readSets(['corn=9 lb', 'gauge.restsAtPsi=0', 'pots=[{"volume":"20 qt"}]', 'note= a = b '])).toEqual({
    corn: '9 lb',
    gauge: { restsAtPsi: '0' },
    pots: [{ volume: '20 qt' }],
    note: 'a = b',
  })
})

test('flags are laid over what standard input left out, and the base is not changed', () => {
  const base = { gauge: { kind: 'dial' } }
  expect(readSets(['gauge.restsAtPsi=0'], base)).toEqual({ gauge: { kind: 'dial', restsAtPsi: '0' } })
  expect(base).toEqual({ gauge: { kind: 'dial' } })
})

test.each([
  [['corn'], 'terminal:set-without-equals'],
  [['=9 lb'], 'terminal:set-without-equals'],
  [['corn=9 lb', 'corn=8 lb'], 'terminal:set-twice'],
  [['corn=9 lb', 'corn.x=1'], 'terminal:set-twice'],
  [['__proto__.polluted=1'], 'terminal:set-bad-name'],
  [['a..b=1'], 'terminal:set-bad-name'],
  [['pots=[{]'], 'terminal:broken-json'],
])('%j is refused as %s', (sets, key) => {
  expect(() => readSets(sets)).toThrow(BadInput)
  expect(() => readSets(sets)).toThrow(key)
})
