import type { Fields } from '@crib/science'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { fieldLabel } from './field-label.ts'
import { readInputs } from './read-inputs.ts'

const FIELDS: Fields = {
  pressure: { kind: 'quantity', label: 'Pressure', unit: 'PsiGauge', min: 0, max: 30, limitSource: 'project-rule' },
  tests: {
    kind: 'table',
    label: 'Bench test',
    columns: {
      at: { kind: 'quantity', label: 'True pressure', unit: 'PsiGauge', min: 0, max: 30, limitSource: 'project-rule' },
    },
    maxRows: 5,
    optional: true,
  },
  readings: { kind: 'series', label: 'Readings', unit: 'C', timeUnit: 'Min', optional: true },
}

function faultsOf(given: unknown): readonly string[] {
  const read = readInputs(FIELDS, given)
  return read.ok ? [] : read.faults.map(({ sentence }) => createWords().sentence(sentence))
}

describe('reading inputs', () => {
  test('takes a number alone in the unit the field names, and text in its own unit', () => {
    expect(readInputs(FIELDS, { pressure: '11' })).toEqual({ ok: true, input: { pressure: 11 } })
    expect(readInputs(FIELDS, { pressure: '11 lb' })).toEqual({ ok: true, input: { pressure: 11 } }) // a gauge's lb is psi
  })

  test.each([
    [{ pressure: 'ten' }, 'pressure is "ten"; give a number in psi, or a number with a unit such as "9 lb".'],
    [{ pressure: { value: 3, unit: 'Kg' } }, 'pressure is 3 kg (6.61 lb), which cannot be turned into psi.'],
    [{ pressure: Number.NaN }, 'it must lie between 0 psi (0 kPa) and 30 psi (207 kPa) (project-rule).'],
    [{}, 'pressure (Pressure) is missing.'],
    [{ presure: 11 }, 'presure is not asked for here.'],
    [{ pressure: 11, readings: [[0, '']] }, 'readings[0] is [0,""]; give a time in min and a value in °C.'],
    [{ pressure: 11, readings: [['', 60]] }, 'readings[0] is ["",60]; give a time in min and a value in °C.'],
  ])('names what is wrong with %j', (given, sentence) => {
    expect(faultsOf(given).join(' ')).toContain(sentence)
  })

  test.each([
    ['pressure', 'Pressure'],
    ['tests[1].at', 'Bench test, Row 2, True pressure'],
    ['readings[0]', 'Readings, Row 1'],
    ['presure', 'presure'],
  ])('a form calls %s "%s"', (path, label) => {
    expect(fieldLabel(FIELDS, path, createWords())).toBe(label)
  })
})
