import { type Reckoned, TO_WHOLE, UNITS, type Unit, UP_TO_WHOLE } from '@crib/science'
import { describe, expect, test } from 'vitest'
import { formatClock, formatDuration, formatQuantity, formatReckoned, formatWeight } from './units.ts'

const plain: Reckoned = {
  id: 'jars',
  value: 17.2,
  unit: 'Count',
  rounding: UP_TO_WHOLE,
  basis: 'project-rule',
  sourceKeys: [],
  inputs: {},
  edition: 'guidance-2026-11',
  codeVersion: '0.1.0',
}

describe('a quantity as text', () => {
  test.each([
    [12, 'PsiGauge', '12 psi (83 kPa)'],
    [11, 'PsiGauge', '11 psi (76 kPa)'],
    [10, 'LbWeight', '10 lb weight (69 kPa)'],
    [15, 'LbWeight', '15 lb weight (103 kPa)'],
    [6, 'LiquidQt', '6 liquid qt (5.68 L)'],
    [0.375, 'Cup', '3/8 cup (88.7 mL)'],
    [1.5, 'Cup', '1 1/2 cups (355 mL)'],
    [6, 'Tbsp', '6 Tbsp'],
    [58.5, 'LiquidGal', '58.5 US gal (221 L)'],
    [30.92, 'Lb', '30.92 lb (14 kg)'],
    [0.92, 'Fraction', '92 %'],
    [2007.9, 'Ft', '2,007.9 ft (612 m)'],
  ] as const)('%s %s reads "%s"', (value, unit, text) => {
    expect(formatQuantity({ value, unit })).toBe(text)
  })

  test.each([
    [989, '16:29'],
    [1489, '00:49 next day'],
    [2949, '01:09, 2 days on'],
  ] as const)('%s minutes after midnight reads "%s"', (value, text) => {
    expect(formatQuantity({ value, unit: 'ClockMin' })).toBe(text)
  })

  test('no unit is ever written as a bare quart or pound', () => {
    for (const unit of Object.keys(UNITS) as Unit[]) {
      expect(formatQuantity({ value: 2, unit })).not.toMatch(/quart|pound|\bqt\b(?<!(liquid|dry) qt)/)
    }
  })

  test("a weight from the book is told from itself in both measures, the kitchen's first", () => {
    expect(formatWeight(4.08233133)).toBe('9 lb (4.08 kg)')
    expect(formatWeight(4.08233133, 'metric')).toBe('4.08 kg (9 lb)')
  })

  test('a companion that rounds to nothing has no sign', () => {
    expect(formatQuantity({ value: -18, unit: 'C' })).toBe('-18 °C (0 °F)')
    expect(formatQuantity({ value: -20, unit: 'C' })).toBe('-20 °C (-4 °F)')
  })
})

describe('a reckoned value as text', () => {
  test('is rounded once, by its own rule', () => {
    expect(formatReckoned(plain)).toBe('18')
    expect(formatReckoned({ ...plain, rounding: TO_WHOLE })).toBe('17')
  })

  test('shows its range when it has one', () => {
    expect(formatReckoned({ ...plain, low: 13.2, high: 24 })).toBe('18, between 14 and 24')
    const tenths = { mode: 'nearest', step: 0.1 } as const
    const hominy = { ...plain, value: 18, unit: 'LiquidQt', rounding: tenths, low: 13.2, high: 24 } as const
    expect(formatReckoned(hominy)).toBe('18 liquid qt (17 L), between 13.2 and 24 liquid qt')
    const alive = {
      ...plain,
      value: 0.92,
      unit: 'Fraction',
      rounding: { mode: 'nearest', step: 0.01 },
      low: 0.81,
      high: 0.98,
    } as const
    expect(formatReckoned(alive)).toBe('92 %, between 81 and 98 %')
  })
})

test('durations over two hours are said in hours', () => {
  expect(formatDuration(119)).toBe('119 min')
  expect(formatDuration(479)).toBe('7 h 59 min')
  expect(formatDuration(240)).toBe('4 h')
  expect(formatClock(510)).toBe('08:30')
})
