import { KINDS } from '@crib/journal'
import { expect, test } from 'vitest'
import { readBody, type SchemaShape } from './read-body.ts'

const LOT_ID = '01900000-0000-7000-8000-000000000001'
const names = (field: string, name: string) => (field === 'lotId' && name === 'Lantern flint' ? LOT_ID : null)
const read = (kind: keyof typeof KINDS, typed: Parameters<typeof readBody>[1]) =>
  readBody(KINDS[kind].schema as unknown as SchemaShape, typed, names)

test('a weight with its unit becomes kilograms, words become flags, text stays text', () => {
  expect(
    read('corn-lot-brought-in', { lotId: LOT_ID, massKg: '9 lb', treatedSeed: 'no', name: '12', asTyped: '9 lb' }),
  ).toEqual(
    { lotId: LOT_ID, massKg: 4.08233133, treatedSeed: false, name: '12', asTyped: '9 lb' }, // 9 * 0.45359237
  )
})

test('a pot in gallons becomes litres and a number alone is in the unit of its field', () => {
  expect(read('pot-recorded', { volumeL: '5 gal' })).toEqual({ volumeL: 18.92705892 }) // 5 * 3.785411784
  expect(read('pot-recorded', { volumeL: '20' })).toEqual({ volumeL: 20 })
})

test('elevation in feet becomes metres, also below the sea', () => {
  expect(read('kitchen-noted', { elevationM: '-10 ft' })).toEqual({ elevationM: -3.048 })
})

test('an event may be the word alone, or carry its reading', () => {
  expect(read('run-event', { event: 'steam-steady' })).toEqual({ event: { type: 'steam-steady' } })
  expect(read('run-event', { event: { type: 'reading', psi: '11.5' } })).toEqual({
    event: { type: 'reading', psi: 11.5 },
  })
})

test('a list of words is split at commas, rows keep their numbers', () => {
  expect(read('canner-recorded', { gauges: 'dial, weight' })).toEqual({ gauges: ['dial', 'weight'] })
  expect(read('gauge-tested', { readings: [{ truePsi: '10', readsPsi: '11.5' }] })).toEqual({
    readings: [{ truePsi: 10, readsPsi: 11.5 }],
  })
})

test('a lot is meant by its name, and a name nobody bears is named back', () => {
  expect(read('corn-shelled', { lotId: 'Lantern flint' })).toEqual({ lotId: LOT_ID })
  expect(() => read('corn-shelled', { lotId: 'Nobody' })).toThrow('terminal:no-such-name')
})

test('an amount that cannot be read is refused, never dropped', () => {
  expect(() => read('corn-shelled', { shelledKg: 'a sackful' })).toThrow('terminal:not-an-amount')
})

test('a field the kind does not know goes on as it is, for the kind to refuse', () => {
  expect(read('corn-shelled', { colour: 'red' })).toEqual({ colour: 'red' })
})

test('a rate takes a number alone, since its name ends in only half of its unit', () => {
  expect(read('alkali-lot-judged', { cupsPerLiquidQt: '1' })).toEqual({ cupsPerLiquidQt: 1 })
  expect(read('alkali-lot-judged', { cupsPerLiquidQt: '1 cup' })).toEqual({ cupsPerLiquidQt: '1 cup' })
})
