import { CATALOGUE, reckonCalc } from '@crib/catalogue'
import type { Field, Fields, Json } from '@crib/science'
import { createWords, ENGLISH } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { optionWords } from './option-words.ts'
import { onShelves } from './shelves.ts'
import { pathText, settle, valueAt, withValueAt } from './typed.ts'
import { writtenText } from './written-text.ts'

const FIELDS: Fields = {
  corn: { kind: 'quantity', label: 'Corn', unit: 'L', min: 0, max: 100, limitSource: 'project-rule' },
  name: { kind: 'text', label: 'Name', maxLength: 20, optional: true },
  pots: {
    kind: 'table',
    label: 'Pots',
    maxRows: 3,
    columns: { holds: { kind: 'quantity', label: 'Holds', unit: 'L', min: 0, max: 100, limitSource: 'project-rule' } },
  },
  readings: { kind: 'series', label: 'Readings', unit: 'C', timeUnit: 'Min' },
  more: {
    kind: 'record',
    label: 'More',
    optional: true,
    fields: { note: { kind: 'text', label: 'Note', maxLength: 9 } },
  },
}

describe('what is asked of the catalogue', () => {
  test('is what was linked, to the last digit, when nothing was touched', () => {
    const linked = {
      corn: 0.1 + 0.2,
      pots: [{ holds: { value: 20, unit: 'LiquidQt' } }],
      readings: [{ time: 0, value: 1e-7 }],
    }
    expect(settle(FIELDS, linked, 'liquid')).toEqual(linked)
  })

  test('leaves out what was emptied, and a group of which nothing is left', () => {
    expect(settle(FIELDS, { corn: '9 lb', name: '', more: { note: '' } }, 'liquid')).toEqual({ corn: '9 lb' })
  })

  test('keeps a field it does not know, so that it is named and not lost', () => {
    expect(settle(FIELDS, { corm: 3 }, 'liquid')).toEqual({ corm: 3 })
  })

  test('writes a bare quart out as this kitchen means it, also in a row', () => {
    const typed = { corn: '3 quarts', pots: [{ holds: '20 qt' }] }
    expect(settle(FIELDS, typed, 'liquid')).toEqual({
      corn: { value: 3, unit: 'LiquidQt' },
      pots: [{ holds: { value: 20, unit: 'LiquidQt' } }],
    })
    expect(settle(FIELDS, typed, 'dry')).toMatchObject({ corn: { value: 3, unit: 'DryQt' } })
  })

  test('does not take an empty reading for zero', () => {
    expect(settle(FIELDS, { readings: [[0, ''], { time: '', value: '60' }] }, 'liquid')).toEqual({
      readings: [
        { time: 0, value: null },
        { time: null, value: '60' },
      ],
    })
  })
})

describe('one field changed', () => {
  const inputs = { pots: [{ holds: 3 }, { holds: 4 }], corn: 1 }

  test('changes that field alone, and nothing in place', () => {
    const changed = withValueAt(inputs, ['pots', 1, 'holds'], '20 qt')
    expect(changed).toEqual({ pots: [{ holds: 3 }, { holds: '20 qt' }], corn: 1 })
    expect(inputs.pots[1]).toEqual({ holds: 4 })
    expect(valueAt(changed, ['pots', 1, 'holds'])).toBe('20 qt')
  })

  test('makes the rows and groups it stands in', () => {
    expect(withValueAt({}, ['canners', 0, 'name'], 'A')).toEqual({ canners: [{ name: 'A' }] })
  })

  test('is named as the catalogue names it', () => {
    expect(pathText(['canners', 1, 'capacityPints'])).toBe('canners[1].capacityPints')
  })
})

describe('every calculation on the bench', () => {
  const words = createWords()

  test('lies on a shelf once', () => {
    const ids = onShelves(CATALOGUE).flatMap(({ calcs }) => calcs.map(({ id }) => id))
    expect(ids.length).toBeGreaterThan(15)
    expect(ids.toSorted()).toEqual(CATALOGUE.map(({ id }) => id).toSorted())
  })

  test.each(CATALOGUE.map((calc) => [calc.id, calc] as const))(
    '%s works on its own example, as the form shows it',
    (_id, calc) => {
      const byLink = reckonCalc(calc, calc.example, words)
      expect(byLink.kind).not.toBe('bad-input')
      // Touching every written field without changing its words must not change the answer.
      const retyped = mapWritten(calc.inputs, calc.example)
      expect(reckonCalc(calc, settle(calc.inputs, retyped, 'liquid'), words)).toEqual(byLink)
    },
  )

  test('shows no choice under a word the trade would misread', () => {
    const shown = CATALOGUE.flatMap(({ inputs }) => optionsIn(inputs)).map((option) => optionWords(option, words.say))
    expect(shown.length).toBeGreaterThan(50)
    const bare = /(?<!liquid |dry )\bquarts?\b|\bpounds?\b|\blime\b|\blye\b|(?<!US )\bgallons?\b|\bsafe/i
    expect(shown.filter((text) => bare.test(text))).toEqual([])
  })

  test('has words for every choice that a message claims to word', () => {
    const options = new Set(CATALOGUE.flatMap(({ inputs }) => optionsIn(inputs)))
    const claimed = Object.keys(ENGLISH.workbench).flatMap((key) => (key.startsWith('option-') ? [key.slice(7)] : []))
    expect(claimed.filter((option) => !options.has(option))).toEqual([])
  })
})

function optionsIn(fields: Fields): readonly string[] {
  return Object.values(fields).flatMap((field) => {
    if (field.kind === 'choice') return field.options
    if (field.kind === 'table') return optionsIn(field.columns)
    return field.kind === 'record' ? optionsIn(field.fields) : []
  })
}

/** The inputs as they would be if a person typed over every field what it shows. */
function mapWritten(fields: Fields, typed: { readonly [name: string]: Json | undefined }): Record<string, Json> {
  return Object.fromEntries(
    Object.entries(typed).map(([name, value]) => [name, retype(fields[name] as Field, value as Json)]),
  )
}

function retype(field: Field, value: Json): Json {
  switch (field.kind) {
    case 'quantity':
    case 'count':
    case 'clock':
      return writtenText(value, field.kind)
    case 'table':
      return (value as Record<string, Json>[]).map((row) => mapWritten(field.columns, row))
    case 'record':
      return mapWritten(field.fields, value as Record<string, Json>)
    default:
      return value
  }
}
