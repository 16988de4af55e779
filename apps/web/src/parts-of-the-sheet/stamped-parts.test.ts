import type { Reckoned } from '@crib/science'
import { expect, test } from 'vitest'
import { inputText } from './input-text.ts'
import { stampedParts } from './stamped-parts.ts'

const reckoned = (value: number, unit: Reckoned['unit']): Reckoned => ({
  id: 'x',
  value,
  unit,
  rounding: { mode: 'nearest', step: 0.001 },
  basis: 'computed',
  sourceKeys: [],
  inputs: {},
  edition: 'guidance-2026-11',
  codeVersion: '0.1.0',
})

test.each([
  [6, 'LiquidQt', '6', 'liquid qt', '5.68 L'],
  [11, 'PsiGauge', '11', 'psi', '76 kPa'],
  [15, 'LbWeight', '15', 'lb weight', '103 kPa'],
  [0.375, 'Cup', '3/8', 'cup', '88.7 mL'],
  [1.5, 'Cup', '1 1/2', 'cups', '355 mL'],
  [989, 'ClockMin', '16:29', '', ''],
  [18, 'Count', '18', '', ''],
] as const)('stamps %d %s as number, unit and companion', (value, unit, number, unitText, beside) => {
  expect(stampedParts(reckoned(value, unit))).toEqual({ number, unit: unitText, beside })
})

test('a kitchen that counts in metric sees metric first, but a gauge stays in the figures printed on it', () => {
  expect(stampedParts(reckoned(6, 'LiquidQt'), 'metric')).toEqual({ number: '5.68', unit: 'L', beside: '6 liquid qt' })
  expect(stampedParts(reckoned(4.08, 'Kg'), 'metric')).toMatchObject({ number: '4.08', unit: 'kg' })
  expect(stampedParts(reckoned(11, 'PsiGauge'), 'metric')).toMatchObject({ number: '11', unit: 'psi' })
})

test('an input is told in words with its unit', () => {
  expect(inputText('elevationFt', 820)).toEqual({ words: 'elevation', text: '820 ft (250 m)' })
  expect(inputText('elevationKnownBy', 'map')).toEqual({ words: 'elevation known by', text: 'map' })
  expect(inputText('jarCount', 18)).toEqual({ words: 'jar', text: '18' })
})
