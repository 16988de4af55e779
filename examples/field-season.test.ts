/** A field season through package, HTTP and terminal: figures worked by hand or printed by the source each case names. */
import type { Json } from '@crib/science'
import { expect, test } from 'vitest'
import type { Expected } from './case-files.ts'
import { openDoors } from './doors.ts'
import { faultsOf } from './faults-of.ts'
import season from './field-season.json' with { type: 'json' }

interface FieldCase {
  readonly calc: string
  readonly title: string
  readonly input: { readonly [name: string]: Json }
  readonly expect: Expected
}

const cases = season.cases as unknown as readonly FieldCase[]
const doors = await openDoors()

test('the season is invented and asks something of every calculation of the field', () => {
  expect(season.invented).toBe(true)
  expect([...new Set(cases.map(({ calc }) => calc))].sort()).toEqual([
    'degree-days',
    'equilibrium-moisture',
    'field-plan',
    'harvest-weight',
    'isolation',
    'yield-estimate',
  ])
})

test.each(cases.map((one) => [`${one.calc}: ${one.title}`, one] as const))(
  '%s, the same at every door',
  async (_name, one) => {
    const answers = await Promise.all(doors.map((door) => door.ask(one.calc, one.input)))
    expect(answers.flatMap((answer) => faultsOf(answer, one.expect))).toEqual([])
    const [first, ...others] = answers
    for (const other of others) expect(other.reckoning).toStrictEqual(first!.reckoning)
  },
)
