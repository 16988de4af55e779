/** Scenarios S1, S2 and S6 straight through the package. Other doors run the same files elsewhere. */
import { readFileSync } from 'node:fs'
import { type Calc, convert, type Fields, type Quantity, type Sentence, shownValue } from '@crib/science'
import { createWords, formatReckoned } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { PLANNING_CALCS } from './planning-calcs.ts'

interface ScenarioCase {
  readonly calc: string
  readonly title?: string
  readonly input: Record<string, unknown>
  readonly expect: {
    readonly values?: Record<string, number>
    readonly mustSay?: readonly string[]
    readonly mustNotSay?: readonly string[]
  }
}

const words = createWords()
const FILES = ['s1-seed-before-supper', 's2-from-sack-to-shelf', 's6-ninety-six-pints']

/** Doors read text into canonical units; here only a clock and a weight are written as text. */
function canonical(input: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(input).map(([name, value]) => {
      const clock = typeof value === 'string' && /^(\d\d):(\d\d)$/.exec(value)
      const pounds = typeof value === 'string' && /^([\d.]+) lb$/.exec(value)
      return [name, clock ? Number(clock[1]) * 60 + Number(clock[2]) : pounds ? Number(pounds[1]) : value]
    }),
  )
}

for (const file of FILES) {
  const { cases } = JSON.parse(readFileSync(new URL(`../../../../examples/${file}.json`, import.meta.url), 'utf8')) as {
    cases: ScenarioCase[]
  }
  describe(file, () => {
    test.each(cases.map((one, index) => [`case ${index + 1}, ${one.calc} ${one.title ?? ''}`, one] as const))(
      '%s',
      (_, one) => {
        const calc = PLANNING_CALCS.find(({ id }) => id === one.calc) as Calc<unknown> | undefined
        const result = calc!.run(canonical(one.input))
        if (!result.ok) throw new Error(`refused: ${result.refused}`)
        for (const [id, literal] of Object.entries(one.expect.values ?? {})) {
          const value = result.values.find((each) => each.id === id)
          expect([id, value && shownValue(value)]).toEqual([id, literal])
        }
        for (const { id, unit } of result.values) {
          const output = calc!.outputs[id.split(':')[0]!]
          expect(output, `${id} is not among the outputs`).toBeDefined()
          if (!id.startsWith('pressure:')) expect([id, output!.unit]).toEqual([id, unit])
        }
        const said = [
          ...[...result.reasons, ...result.warnings].map((sentence: Sentence) => words.sentence(sentence)),
          ...result.values.map((value) => formatReckoned(value)),
        ].join('\n')
        for (const phrase of one.expect.mustSay ?? []) expect(said.toLowerCase()).toContain(phrase.toLowerCase())
        for (const phrase of one.expect.mustNotSay ?? []) expect(said.toLowerCase()).not.toContain(phrase.toLowerCase())
      },
    )
  })
}

test('every calculation of planning runs its own example', () => {
  for (const calc of PLANNING_CALCS as readonly Calc<unknown>[]) {
    expect([calc.id, calc.run(asADoorReads(calc.inputs, calc.example)).ok]).toEqual([calc.id, true])
  }
})

/** A value with its own unit, as an example may have it, in the field's unit; whatever else is there stays. */
function asADoorReads(fields: Fields, given: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(
    Object.entries(given).map(([name, value]) => {
      const field = fields[name]
      if (field?.kind === 'record') return [name, asADoorReads(field.fields, value as Record<string, unknown>)]
      if (field?.kind === 'table') {
        return [name, (value as Record<string, unknown>[]).map((row) => asADoorReads(field.columns, row))]
      }
      if (field?.kind !== 'quantity' || typeof value !== 'object' || value === null) return [name, value]
      const quantity = value as Quantity
      return [name, convert(quantity.value, quantity.unit, field.unit)]
    }),
  )
}
