/** Reads the scenario files beside this one. Every figure in them is typed from a written scenario, none from our own code. */
import { readdirSync, readFileSync } from 'node:fs'
import type { Json } from '@crib/science'

export interface Expected {
  /** By output id, the value as shown: rounded once, in the output's unit. */
  readonly values?: { readonly [id: string]: number }
  /** What the refusal must be about, when an honest "no number" is the right answer. */
  readonly refused?: string
  readonly mustSay?: readonly string[]
  readonly mustNotSay?: readonly string[]
}

export interface ScenarioCase {
  readonly file: string
  readonly scenario: string
  /** Position in its file, from 1. */
  readonly number: number
  readonly calc: string
  readonly title?: string
  readonly input: { readonly [name: string]: Json }
  readonly expect: Expected
}

const FOLDER = new URL('./', import.meta.url)

/** Every case of every scenario file. Throws on a file that does not say it is invented: demo data never passes as real. */
export function readCases(): readonly ScenarioCase[] {
  const files = readdirSync(FOLDER).filter((name) => /^s\d.*\.json$/.test(name))
  return files.sort().flatMap((file) => {
    const { scenario, invented, cases } = JSON.parse(readFileSync(new URL(file, FOLDER), 'utf8'))
    if (invented !== true) throw new TypeError(`${file} does not say "invented": true`)
    return (cases as Omit<ScenarioCase, 'file' | 'scenario' | 'number'>[]).map((one, index) => ({
      ...one,
      file,
      scenario,
      number: index + 1,
    }))
  })
}
