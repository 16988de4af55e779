/** Scenarios S3, S4 and S5 through the calculations themselves; the doors run the same files in examples/. */
import { readFileSync } from 'node:fs'
import { type Calc, type CalcResult, convert, shownValue } from '@crib/science'
import { createWords, formatReckoned } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { CANNER_CALCS } from './calcs.ts'

interface Case {
  readonly calc: string
  readonly title: string
  readonly input: { readonly [name: string]: unknown }
  readonly expect: {
    readonly values?: { readonly [id: string]: number }
    readonly refused?: string
    readonly mustSay?: readonly string[]
    readonly mustNotSay?: readonly string[]
  }
}

const words = createWords()
const FILES = ['s3-which-side-of-the-line', 's4-grandmothers-gauge', 's5-wind-under-the-kettle']

describe.each(FILES)('%s', (name) => {
  const file = new URL(`../../../../examples/${name}.json`, import.meta.url)
  const { cases } = JSON.parse(readFileSync(file, 'utf8')) as { readonly cases: readonly Case[] }

  test.each(cases)('$calc: $title', ({ calc: id, input, expect: expected }) => {
    const calc = CANNER_CALCS.find((one) => one.id === id)!
    const result = calc.run(inNumbers(input) as never)
    const said = textOf(calc, result).toLowerCase()
    if (expected.refused) expect(result).toMatchObject({ ok: false, refused: expected.refused })
    const shown = result.ok ? Object.fromEntries(result.values.map((value) => [value.id, shownValue(value)])) : {}
    expect(shown).toMatchObject(expected.values ?? {})
    for (const phrase of expected.mustSay ?? []) expect(said).toContain(phrase.toLowerCase())
    for (const phrase of expected.mustNotSay ?? []) expect(said).not.toContain(phrase.toLowerCase())
  })
})

/** The doors read units and clocks; here only the few forms these three files use. */
function inNumbers(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inNumbers)
  if (typeof value === 'object' && value !== null) {
    return Object.fromEntries(
      Object.entries(value).map(([key, inner]) => [key, key === 'site' ? inner : inNumbers(inner)]),
    )
  }
  if (typeof value !== 'string') return value
  const metres = /^(\d+) m$/.exec(value)
  if (metres) return convert(Number(metres[1]), 'M', 'Ft')
  const feet = /^(\d+) ft$/.exec(value)
  if (feet) return Number(feet[1])
  const clock = /^(\d{2}):(\d{2})$/.exec(value)
  return clock ? Number(clock[1]) * 60 + Number(clock[2]) : value
}

function textOf(calc: Calc, result: CalcResult): string {
  if (!result.ok) return [...result.why, ...result.askWhom].map((one) => words.sentence(one)).join('\n')
  const values = result.values.map((value) => {
    const output = calc.outputs[value.id] ?? calc.outputs[value.id.split(':').at(-1)!]
    expect(output, `${value.id} is no output of ${calc.id}`).toBeDefined()
    expect(value.unit).toBe(output!.unit)
    return `${output!.label}: ${formatReckoned(value)}`
  })
  return [...values, ...[...result.reasons, ...result.warnings].map((one) => words.sentence(one))].join('\n')
}
