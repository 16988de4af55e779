import { describe, expect, test } from 'vitest'
import errors from '../../../../messages/en/errors.json' with { type: 'json' }
import { QUESTION_CODES } from '../fold/facts.ts'
import { REFUSAL_CODES } from '../refusal.ts'
import { testKitchen } from '../testing/invented.ts'
import { checkBody, KINDS, type Kind, readBody } from './index.ts'

const kitchen = testKitchen()
const id = kitchen.newId()

const pot = { potId: id, name: 'pot', volumeL: 18.9, material: 'stainless' }
const lot = { lotId: id, name: 'x', cornType: 'flint', form: 'shelled', asTyped: '', treatedSeed: false }
const seed = { seedId: id, seasonYear: 2026, how: 'by-eye', plantingsCount: 2, places: ['attic'] }
const run = {
  runId: id,
  cannerId: id,
  cannerName: 'A',
  loadCode: 'A1',
  jarSize: 'pint',
  jarCount: 9,
  gauge: 'dial',
  requiredReadingPsi: 12,
  ventMin: 10,
  processMin: 60,
  edition: 'guidance-2026-11',
  cardShown: {},
}

function refusals(kind: Kind, body: unknown) {
  const checked = checkBody(kind, body)
  return checked.ok ? [] : checked.refusals
}

test('[J10] every kind is registered under its own name, with one migration for each earlier version', () => {
  for (const [kind, definition] of Object.entries(KINDS)) {
    expect(definition.kind).toBe(kind)
    expect(definition.migrate).toHaveLength(definition.version - 1)
  }
  expect(Object.keys(KINDS)).toHaveLength(50)
})

describe('[J11] limits name field, value, limit, unit and source', () => {
  test.each<[Kind, object, object]>([
    ['corn-lot-brought-in', { ...lot, massKg: -1 }, { field: 'massKg', value: -1, min: 0, max: 5000, unit: 'kg' }],
    ['corn-lot-brought-in', { ...lot, massKg: 5000.1 }, { field: 'massKg', value: 5000.1, max: 5000, unit: 'kg' }],
    ['kitchen-noted', { kitchenId: id, elevationM: -501 }, { field: 'elevationM', value: -501, min: -500, unit: 'm' }],
    ['kitchen-noted', { kitchenId: id, elevationM: 6001 }, { field: 'elevationM', value: 6001, max: 6000, unit: 'm' }],
    ['run-event', { runId: id, event: { type: 'reading', psi: 31 } }, { field: 'event.psi', value: 31, unit: 'psi' }],
    ['run-begun', { ...run, jarCount: 0 }, { field: 'jarCount', value: 0, min: 1, max: 200 }],
    ['pot-recorded', { ...pot, volumeL: Number.POSITIVE_INFINITY }, { field: 'volumeL', value: 'Infinity', max: 500 }],
  ])('%s %j', (kind, body, params) => {
    const [refusal, ...others] = refusals(kind, body)
    expect(others).toEqual([])
    expect(refusal).toMatchObject({ code: 'out-of-limits', params: { source: 'project rule', ...params } })
  })

  test('the limits themselves are taken', () => {
    expect(refusals('corn-lot-brought-in', { ...lot, massKg: 0 })).toEqual([])
    expect(refusals('corn-lot-brought-in', { ...lot, massKg: 5000 })).toEqual([])
    expect(refusals('kitchen-noted', { kitchenId: id, elevationM: -500 })).toEqual([])
    expect(refusals('run-event', { runId: id, event: { type: 'reading', psi: 30 } })).toEqual([])
  })
})

test.each<[Kind, object, string, string]>([
  ['corn-lot-brought-in', { ...lot, massKg: Number.NaN }, 'not-a-number', 'massKg'],
  ['corn-lot-brought-in', { ...lot, massKg: '9' }, 'not-a-number', 'massKg'],
  ['corn-lot-brought-in', { ...lot, name: undefined }, 'missing-value', 'name'],
  ['corn-lot-brought-in', { ...lot, name: '  ' }, 'wrong-value', 'name'],
  ['corn-lot-brought-in', { ...lot, lotId: 'lot 7' }, 'wrong-value', 'lotId'],
  ['corn-lot-brought-in', { ...lot, colour: 'red' }, 'unknown-field', 'colour'],
  ['run-begun', { ...run, jarSize: 'half-gallon' }, 'wrong-value', 'jarSize'],
  ['run-begun', { ...run, jarCount: 2.5 }, 'wrong-value', 'jarCount'],
  ['run-event', { runId: id, event: { type: 'exploded' } }, 'wrong-value', 'event.type'],
  ['gauge-tested', { cannerId: id, testedOn: '12 April' }, 'wrong-value', 'testedOn'],
])('[J11] %s %j is refused: %s at %s', (kind, body, code, field) => {
  expect(refusals(kind, body)).toContainEqual({ code, params: expect.objectContaining({ field }) })
})

test.each(['aluminium', 'Aluminum', ' ALUMINIUM cast'])(
  '[J12] a pot of %s is refused with a reason of its own',
  (material) => {
    expect(refusals('pot-recorded', { ...pot, material })).toEqual([
      { code: 'aluminium-pot', params: { field: 'material' } },
    ])
  },
)

test('[J12] seed for fewer than two plantings, or none this year, asks why; by eye is a full answer', () => {
  expect(refusals('seed-put-by', seed)).toEqual([])
  expect(refusals('seed-put-by', { ...seed, plantingsCount: 1 })).toMatchObject([{ code: 'reason-needed' }])
  expect(refusals('seed-put-by', { ...seed, how: 'not-this-year' })).toMatchObject([{ code: 'reason-needed' }])
  const reason = 'a cousin keeps the line'
  expect(refusals('seed-put-by', { ...seed, how: 'not-this-year', plantingsCount: 0, reason })).toEqual([])
  expect(refusals('seed-put-by', { ...seed, how: 'by-weight' })).toMatchObject([{ code: 'amount-needed' }])
})

test('[J12] a use of a lot says how much', () => {
  expect(refusals('lot-used', { lotId: id, how: 'eaten' })).toMatchObject([{ code: 'amount-needed' }])
})

test('[J13] unknown kinds, newer versions and unreadable bodies are told apart', () => {
  expect(readBody('moon-phase-noted', 1, {})).toEqual({ ok: false, why: 'unknown-kind' })
  expect(readBody('constructor', 1, {})).toEqual({ ok: false, why: 'unknown-kind' })
  expect(readBody('pot-recorded', 2, pot)).toEqual({ ok: false, why: 'newer-version' })
  expect(readBody('pot-recorded', 1, { ...pot, volumeL: -3 })).toEqual({ ok: false, why: 'unreadable-body' })
  expect(readBody('pot-recorded', 1, pot)).toMatchObject({ ok: true, entity: `pot:${id}` })
})

test('every refusal and every question has its sentence', () => {
  const keys = Object.keys(errors).map((key) => key.replace(/_(one|other)$/, ''))
  expect([...REFUSAL_CODES, ...QUESTION_CODES].filter((code) => !keys.includes(code))).toEqual([])
})

test('every gap of a refusal sentence is filled by what the refusal carries', () => {
  const gapsOf = (code: string): string[] =>
    [...(errors as Record<string, string>)[code]!.matchAll(/\{\{(\w+)\}\}/g)].map(([, gap]) => gap!)
  const seen: [Kind, object][] = [
    ['corn-lot-brought-in', { ...lot, massKg: -1 }],
    ['corn-lot-brought-in', { ...lot, massKg: Number.NaN }],
    ['corn-lot-brought-in', { ...lot, name: undefined }],
    ['corn-lot-brought-in', { ...lot, colour: 'red' }],
    ['corn-lot-brought-in', { ...lot, cornType: 'sweet' }],
    ['pot-recorded', { ...pot, material: 'aluminium' }],
    ['seed-put-by', { ...seed, plantingsCount: 1 }],
    ['lot-used', { lotId: id, how: 'eaten' }],
  ]
  const codes = new Set<string>()
  for (const [kind, body] of seen) {
    for (const { code, params } of refusals(kind, body)) {
      codes.add(code)
      expect(gapsOf(code).filter((gap) => !(gap in params))).toEqual([])
    }
  }
  expect(codes.size).toBe(8)
})
