/** Turns `--set name=value` flags and JSON on standard input into one record. Reading units is the schema's business. */
import type { Json } from '@crib/science'
import { badInput } from './exit-codes.ts'
import type { Terminal } from './terminal.ts'

type JsonRecord = { [name: string]: Json | undefined }

/** Names that would reach outside the record. */
const FORBIDDEN = new Set(['__proto__', 'constructor', 'prototype'])

/**
 * The record that several `name=value` texts describe. A dot in a name goes one level down (`gauge.restsAtPsi=0`); a value
 * that begins with `[` or `{` is JSON; every other value stays text, for the schema to read with its unit.
 *
 * @throws {BadInput} on a piece without `=`, a name given twice, or broken JSON.
 */
export function readSets(sets: readonly string[], base: JsonRecord = {}): JsonRecord {
  const record: JsonRecord = structuredClone(base)
  for (const set of sets) {
    const at = set.indexOf('=')
    if (at < 1) throw badInput('terminal:set-without-equals', { given: set })
    const path = set.slice(0, at).trim().split('.')
    if (path.some((name) => name === '' || FORBIDDEN.has(name))) {
      throw badInput('terminal:set-bad-name', { name: path.join('.') })
    }
    put(record, path, readValue(set.slice(at + 1), path.join('.')), set)
  }
  return record
}

function put(record: JsonRecord, [name = '', ...rest]: readonly string[], value: Json, set: string): void {
  const held = record[name]
  if (rest.length === 0) {
    if (held !== undefined) throw badInput('terminal:set-twice', { given: set })
    record[name] = value
    return
  }
  if (held === undefined) record[name] = {}
  else if (typeof held !== 'object' || held === null || Array.isArray(held)) {
    throw badInput('terminal:set-twice', { given: set })
  }
  put(record[name] as JsonRecord, rest, value, set)
}

function readValue(text: string, name: string): Json {
  const trimmed = text.trim()
  return /^[[{]/.test(trimmed) ? parseJson(trimmed, name) : trimmed
}

function parseJson(text: string, where: string): Json {
  try {
    return JSON.parse(text) as Json
  } catch (error) {
    throw badInput('terminal:broken-json', { where, detail: (error as Error).message })
  }
}

/** The record on standard input (when `-` was typed) with the flags laid over what it leaves out. */
export async function readRecord(
  dash: string | undefined,
  sets: readonly string[],
  terminal: Terminal,
): Promise<JsonRecord> {
  if (dash === undefined) return readSets(sets)
  if (dash !== '-') throw badInput('terminal:only-a-dash', { given: dash })
  const read = parseJson(await terminal.readInput(), 'stdin')
  if (typeof read !== 'object' || read === null || Array.isArray(read)) throw badInput('terminal:input-not-a-record')
  return readSets(sets, read as JsonRecord)
}
