import fc from 'fast-check'
import { expect, test } from 'vitest'
import { foldFacts } from './fold/fold.ts'
import { findRecord, recordAddress } from './record-address.ts'
import { testKitchen } from './testing/invented.ts'

const { author, newId } = testKitchen()
const keeper = author()
const cornId = newId()
const jarsId = newId()
const bagsId = newId()
const runId = newId()
const putUp = (lotId: string, loadCode: string) =>
  keeper.write('food-put-up', { lotId, loadCode, form: 'jar', count: 6, runId })
const facts = foldFacts([
  keeper.write('corn-lot-brought-in', {
    lotId: cornId,
    name: 'Lantern flint',
    cornType: 'flint',
    form: 'shelled',
    massKg: 5,
    asTyped: '',
    treatedSeed: false,
  }),
  putUp(jarsId, 'MILL 26/11 B1'),
  putUp(bagsId, 'LF-3-F'),
])

test('the code of a lot leads to that lot and no other, by the end of its id or by all of it', () => {
  expect(recordAddress('lot', jarsId)).toBe(`crib:lot/${jarsId.slice(-12)}`)
  expect(findRecord(facts, recordAddress('lot', jarsId))).toEqual({ kind: 'found', record: 'food-lot', id: jarsId })
  expect(findRecord(facts, ` crib:lot/${cornId}\n`)).toEqual({ kind: 'found', record: 'corn-lot', id: cornId })
})

test('a load code leads to everything that carries it, whatever letters are in it', () => {
  const found = findRecord(facts, recordAddress('load', 'MILL 26/11 B1'))
  expect(found).toEqual({ kind: 'load', loadCode: 'MILL 26/11 B1', lotIds: [jarsId], runIds: [] })
})

test('what is no address is foreign; an address this book does not know is unknown', () => {
  for (const text of ['https://example.org/', 'crib:lot/', 'crib:shelf/0123456789ab', 'crib:lot/b22', '']) {
    expect(findRecord(facts, text), text).toEqual({ kind: 'foreign' })
  }
  expect(findRecord(facts, recordAddress('lot', newId()))).toEqual({ kind: 'unknown' })
  expect(findRecord(facts, recordAddress('load', 'B-9'))).toEqual({ kind: 'unknown' })
  expect(findRecord(facts, 'crib:load/%E0%A4%A')).toEqual({ kind: 'unknown' })
})

test('a code with one letter read wrong never leads to another record', () => {
  const address = recordAddress('lot', jarsId)
  const places = fc.integer({ min: address.indexOf('/') + 1, max: address.length - 1 })
  fc.assert(
    fc.property(places, fc.constantFrom(...'0123456789abcdef'), (at, letter) => {
      const read = address.slice(0, at) + letter + address.slice(at + 1)
      expect(findRecord(facts, read).kind).toBe(read === address ? 'found' : 'unknown')
    }),
  )
})
