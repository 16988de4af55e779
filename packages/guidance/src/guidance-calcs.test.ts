import { type CalcResult, shownValue } from '@crib/science'
import { describe, expect, test } from 'vitest'
import { boilBeforeTastingCalc } from './boil-before-tasting.calc.ts'
import { GUIDANCE_CALCS } from './guidance-calcs.ts'
import { pressureBandCalc } from './pressure-band.calc.ts'
import { processLookupCalc } from './process-lookup.calc.ts'
import type { ProcessQuery } from './process-types.ts'
import { unsealedJarsCalc } from './unsealed-jars.calc.ts'

function shown(result: CalcResult): Record<string, number> {
  if (!result.ok) throw new Error(`refused: ${result.refused}`)
  return Object.fromEntries(result.values.map((value) => [value.id, shownValue(value)]))
}

describe.each(GUIDANCE_CALCS)('$id', (calc) => {
  test('its example runs, gives only outputs it names, in their units, each with source and edition', () => {
    const result = calc.run(calc.example as never)
    if (!result.ok) throw new Error(result.refused)
    expect(result.values.length).toBeGreaterThan(0)
    for (const value of result.values) {
      expect(calc.outputs[value.id]?.unit).toBe(value.unit)
      expect(value.sourceKeys.length).toBeGreaterThan(0)
      expect(value.edition).toBe('guidance-2026-11')
    }
  })
})

// Acceptance scenarios S3 (table values) and S5.
test('pressure-band answers dial and weight in their own units', () => {
  expect(shown(pressureBandCalc.run({ gauge: 'dial', elevationFt: 2150 }))).toEqual({
    setPsi: 12,
    bandMinFt: 2000,
    bandMaxFt: 4000,
  })
  expect(shown(pressureBandCalc.run({ gauge: 'weight', elevationFt: 1000.7 }))).toMatchObject({ setWeightLb: 15 })
})

test('pressure-band refuses above the table, with whom to ask and the top weight for information', () => {
  const result = pressureBandCalc.run({ gauge: 'weight', elevationFt: 8005.2 })
  expect(result).toMatchObject({
    ok: false,
    refused: 'off-table',
    why: [{ key: 'guidance:elevation-above-table' }, { key: 'guidance:top-weight-for-information' }],
    askWhom: [{ key: 'guidance:ask-extension-office' }, {}, {}],
  })
})

describe('process-lookup', () => {
  const query = processLookupCalc.example as unknown as ProcessQuery

  test('gives the withdrawn minutes of lye hominy with where they stand', () => {
    const result = processLookupCalc.run(query)
    expect(shown(result)).toMatchObject({ processMin: 60, headspaceIn: 1, setPsi: 11 })
    expect(result).toMatchObject({
      warnings: [{ key: 'guidance:made-for-lye-hominy' }, { key: 'guidance:now-withdrawn' }],
    })
  })

  test('refuses ash hominy until its standing was read, and then still says that nothing is published', () => {
    const ash = { ...query, alkali: 'ash', jar: 'quart' } as const
    expect(processLookupCalc.run({ ...ash, standingRead: false })).toMatchObject({
      ok: false,
      refused: 'no-published-process',
    })
    const opened = processLookupCalc.run({ ...ash, standingRead: true })
    expect(shown(opened)).toMatchObject({ processMin: 70 })
    const warnings = opened.ok ? opened.warnings.map(({ key }) => key) : []
    expect(warnings[0]).toBe('guidance:no-test-for-this-alkali')
    expect(warnings).toEqual(
      expect.arrayContaining(['guidance:made-for-none', 'guidance:looks-like-lye-hominy', 'guidance:now-withdrawn']),
    )
  })
})

test('boil-before-tasting gives 10 min at 820 ft', () => {
  expect(shown(boilBeforeTastingCalc.run({ elevationFt: 820 }))).toEqual({ boilBeforeTastingMin: 10 })
})

test('unsealed-jars never shows more time than is left', () => {
  expect(shown(unsealedJarsCalc.run({ hoursSinceOut: 13.1, methodWasRight: true }))).toEqual({ hoursLeft: 10.75 })
  expect(shown(unsealedJarsCalc.run({ hoursSinceOut: 40, methodWasRight: true }))).toEqual({ hoursLeft: 0 })
})
