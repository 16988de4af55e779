import { describe, expect, test } from 'vitest'
import { parseQuantity } from './parse-quantity.ts'

describe('reading a typed quantity', () => {
  test.each([
    ['9 lb', 9, 'Lb'],
    ['9lb', 9, 'Lb'],
    ['31.5 pounds', 31.5, 'Lb'],
    ['1 lb 4 oz', 1.25, 'Lb'],
    ['4 kg', 4, 'Kg'],
    ['252.6 g', 252.6, 'G'],
    ['.5 kg', 0.5, 'Kg'],
  ] as const)('takes "%s" as %d %s', (text, value, unit) => {
    expect(parseQuantity(text, 'mass')).toEqual({ ok: true, quantity: { value, unit } })
  })

  test.each([
    ['2 gal', 2, 'LiquidGal'],
    ['1 1/2 gal', 1.5, 'LiquidGal'],
    ['1½ gal', 1.5, 'LiquidGal'],
    ['3/8 tsp', 0.375, 'Tsp'],
    ['6 liquid qt', 6, 'LiquidQt'],
    ['2 dry quarts', 2, 'DryQt'],
    ['1 bu', 1, 'Bu'],
    ['1 peck', 8, 'DryQt'],
    ['5 litres', 5, 'L'],
    ['2 bushels', 2, 'Bu'],
  ] as const)('takes "%s" as %d %s, assuming nothing', (text, value, unit) => {
    expect(parseQuantity(text, 'volume')).toEqual({ ok: true, quantity: { value, unit } })
  })

  test.each([
    ['3 quarts', 3, 'LiquidQt'],
    ['1 qt', 1, 'LiquidQt'],
    ['2 quart jars', 2, 'LiquidQt'],
    ['4 pints', 4, 'LiquidPt'],
    ['1/2 cup', 0.5, 'Cup'],
  ] as const)('takes a bare "%s" as liquid and says it was assumed', (text, value, unit) => {
    expect(parseQuantity(text, 'volume')).toEqual({ ok: true, quantity: { value, unit }, assumed: 'liquid' })
  })

  test('takes a bare quart or pint as dry in a kitchen that said so; a cup stays a cup', () => {
    expect(parseQuantity('3 quarts', 'volume', { vague: 'dry' })).toEqual({
      ok: true,
      quantity: { value: 3, unit: 'DryQt' },
      assumed: 'dry',
    })
    expect(parseQuantity('3 pints', 'volume', { vague: 'dry' })).toMatchObject({
      quantity: { value: 1.5, unit: 'DryQt' },
    })
    expect(parseQuantity('3 cups', 'volume', { vague: 'dry' })).toMatchObject({ quantity: { value: 3, unit: 'Cup' } })
  })

  test('reads lb as a gauge figure in a pressure field and as a mass in a mass field', () => {
    expect(parseQuantity('11 lb', 'pressure')).toMatchObject({ quantity: { value: 11, unit: 'PsiGauge' } })
    expect(parseQuantity('11 lb', 'mass')).toMatchObject({ quantity: { value: 11, unit: 'Lb' } })
  })

  test('takes either a weight or a volume where both will do', () => {
    expect(parseQuantity('9 lb', ['mass', 'volume'])).toMatchObject({ quantity: { unit: 'Lb' } })
    expect(parseQuantity('6 qt', ['mass', 'volume'])).toMatchObject({
      quantity: { unit: 'LiquidQt' },
      assumed: 'liquid',
    })
    expect(parseQuantity('6 qt 2 lb', ['mass', 'volume'])).toMatchObject({ ok: false, fault: 'wrong-measure' })
  })

  test.each([
    ['', 'empty', ''],
    ['plenty', 'no-number', 'plenty'],
    ['NaN lb', 'no-number', 'NaN lb'],
    ['about 3 lb', 'no-number', 'about 3 lb'],
    ['1,5 lb', 'comma', '1,5 lb'],
    ['1,500 lb', 'comma', '1,500 lb'],
    ['-3 lb', 'negative', '-3'],
    ['1/0 lb', 'divided-by-zero', '1/0'],
    ['9', 'no-unit', '9'],
    ['9 stone', 'unknown-unit', 'stone'],
    ['9 gal', 'wrong-measure', 'gal'],
    ['Infinity lb', 'no-number', 'Infinity lb'],
  ] as const)('refuses "%s" as %s and names what was typed', (text, fault, typed) => {
    expect(parseQuantity(text, 'mass')).toEqual({ ok: false, fault, typed })
  })

  test('a number alone takes the unit of the field when the field has one; below zero only where it may lie', () => {
    expect(parseQuantity('820', 'length', { bareNumberUnit: 'Ft' })).toMatchObject({
      quantity: { value: 820, unit: 'Ft' },
    })
    expect(parseQuantity('-12 m', 'length', { allowNegative: true })).toMatchObject({
      quantity: { value: -12, unit: 'M' },
    })
  })
})
