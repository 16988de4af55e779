import { type CalcResult, shownValue } from '@crib/science'
import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { KEEPING_CALCS } from './keeping-calcs.ts'

const words = createWords()

const run = (id: string, input?: object): CalcResult => {
  const calc = KEEPING_CALCS.find((candidate) => candidate.id === id)
  if (!calc) throw new Error(`no calculation ${id}`)
  return calc.run((input ?? calc.example) as never)
}
const shown = (result: CalcResult) => {
  if (!result.ok) throw new Error(result.refused)
  return Object.fromEntries(result.values.map((value) => [value.id, shownValue(value)]))
}
const said = (result: CalcResult) => {
  if (!result.ok) return [...result.why, ...result.askWhom].map((each) => words.sentence(each))
  return [...result.reasons, ...result.warnings].map((each) => words.sentence(each))
}

describe.each(KEEPING_CALCS)('$id', (calc) => {
  test('gives only outputs it names, in their units, and words all it says', () => {
    const result = run(calc.id)
    if (!result.ok) throw new Error(result.refused)
    expect(result.values.length).toBeGreaterThan(0)
    for (const value of result.values) expect(calc.outputs[value.id]?.unit).toBe(value.unit)
    for (const text of said(result)) expect(text).not.toContain('{{')
  })
})

test('recall counts the 27 pints of canner B (S6) and names their loads', () => {
  const result = run('recall')
  expect(shown(result)).toEqual({ recallLoads: 3, recallJars: 27, recallHouseholds: 3 })
  expect(said(result)).toEqual([
    'Loads: MILL-261003-B1, MILL-261003-B2, MILL-261003-B3.',
    'At: house 4, house 12, house 20.',
  ])
  expect(said(run('recall', { by: 'load', name: 'nowhere', jars: [] }))).toEqual([
    'Nothing in this book comes from there.',
  ])
})
