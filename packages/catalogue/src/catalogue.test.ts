import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { CATALOGUE, findCalc } from './catalogue.ts'
import { readInputs } from './read-inputs.ts'
import { reckonById, reckonCalc } from './reckon.ts'

const words = createWords()

describe('the catalogue', () => {
  test('lists each calculation once', () => {
    const ids = CATALOGUE.map(({ id }) => id)
    expect(ids.length).toBeGreaterThan(15)
    expect(new Set(ids).size).toBe(ids.length)
    expect(findCalc('canner-card')?.id).toBe('canner-card')
    expect(findCalc('no-such')).toBeNull()
  })

  test.each(CATALOGUE.map((calc) => [calc.id, calc] as const))('%s runs its own example', (_id, calc) => {
    const reckoning = reckonCalc(calc, calc.example, words)
    // An example shows what the calculation gives, so it must give something: a number, not a refusal.
    expect(reckoning.kind).toBe('reckoned')
    if (reckoning.kind !== 'reckoned') return
    expect(reckoning.values.length).toBeGreaterThan(0)
    for (const value of reckoning.values) {
      expect(Number.isFinite(value.shown)).toBe(true)
      expect(value.text).not.toBe('')
      if (value.basis === 'published' || value.basis === 'computed') expect(value.sourceKeys).not.toEqual([])
    }
  })
})

describe('reading inputs', () => {
  const calc = findCalc('canner-loads')!

  test('a number may carry its own unit, in any unit of the same measure', () => {
    const fields = {
      mass: { kind: 'quantity', label: 'mass', unit: 'Lb', min: 0, max: 100, limitSource: 'project-rule' },
    } as const
    expect(readInputs(fields, { mass: '1 kg' })).toEqual({ ok: true, input: { mass: 2.2046226218487757 } })
    expect(readInputs(fields, { mass: 9 })).toEqual({ ok: true, input: { mass: 9 } })
    expect(readInputs(fields, { mass: { value: 8, unit: 'Oz' } })).toEqual({ ok: true, input: { mass: 0.5 } })
  })

  test.each([
    [{ mass: -1 }, 'workbench:out-of-range'],
    [{ mass: Number.NaN }, 'workbench:out-of-range'],
    [{ mass: '9 psi' }, 'workbench:not-a-quantity'],
    [{ mass: { value: 9, unit: 'Ft' } }, 'workbench:wrong-measure'],
    [{ mass: 'plenty' }, 'workbench:not-a-quantity'],
    [{}, 'workbench:missing'],
    [{ mass: 1, weight: 2 }, 'workbench:unknown-field'],
    ['nine', 'workbench:not-a-record'],
  ])('%j is refused with its reason', (raw, key) => {
    const fields = {
      mass: { kind: 'quantity', label: 'mass', unit: 'Lb', min: 0, max: 100, limitSource: 'project-rule' },
    } as const
    const read = readInputs(fields, raw)
    expect(read.ok).toBe(false)
    if (read.ok) return
    expect(read.faults.map(({ sentence }) => sentence.key)).toContain(key)
    for (const { sentence } of read.faults) expect(words.sentence(sentence)).not.toContain('{{')
  })

  test('every fault is named at once, with its place in a table', () => {
    const reckoning = reckonById('canner-loads', { ...calc.example, canners: [{}, { name: 'B' }] }, words)
    expect(reckoning.kind).toBe('bad-input')
    if (reckoning.kind !== 'bad-input') return
    expect(reckoning.faults.map(({ field }) => field)).toContain('canners[0].name')
    expect(reckoning.faults.length).toBeGreaterThan(1)
  })

  test('clock times past midnight carry the day', () => {
    const fields = { at: { kind: 'clock', label: 'at' } } as const
    expect(readInputs(fields, { at: '00:49+1' })).toEqual({ ok: true, input: { at: 1489 } })
    expect(readInputs(fields, { at: '25:00' }).ok).toBe(false)
  })

  test('an unknown calculation is said to be unknown', () => {
    expect(reckonById('no-such', {}, words)).toEqual({
      kind: 'unknown-calc',
      calc: 'no-such',
      text: 'There is no calculation called no-such. The list names them all.',
    })
  })
})
