/** `crib note`: writes down anything the book has a kind for, after asking what does not fit together. */
import { type BodyOf, BodyRefused, checkBody, isKind, KINDS, type Kind, propose, type Refusal } from '@crib/journal'
import type { Json, Sentence } from '@crib/science'
import { type BookFlags, type OpenBook, withOpenBook } from '../book.ts'
import { readInstant, showInstant } from '../clock-times.ts'
import { BadInput, badInput, EXIT } from '../exit-codes.ts'
import { aligned } from '../lines.ts'
import { resolveNameIn } from '../names.ts'
import { readBody, type SchemaShape } from '../read-body.ts'
import { readRecord } from '../read-sets.ts'
import { refusalSentence } from '../refusals.ts'
import { type AddVerb, type Door, printJson, verb, withBook, withSets } from '../verb.ts'

/** The id that begins a story: made here when it is not given. */
const OWN_ID: Partial<Record<Kind, string>> = {
  'kitchen-opened': 'kitchenId',
  'corn-lot-brought-in': 'lotId',
  'seed-put-by': 'seedId',
  'seed-lot-recorded': 'seedLotId',
  'alkali-lot-recorded': 'alkaliLotId',
  'pot-recorded': 'potId',
  'canner-recorded': 'cannerId',
  'standing-read': 'readingId',
  'batch-planned': 'batchId',
  'run-begun': 'runId',
  'recall-noted': 'recallId',
  'cooling-noted': 'coolingId',
  'drying-noted': 'dryingId',
  'photo-taken': 'photoId',
  'plot-recorded': 'plotId',
  'planting-recorded': 'plantingId',
  'neighbour-corn-recorded': 'neighbourId',
  'food-put-up': 'lotId',
}

interface NoteFlags extends BookFlags {
  readonly list?: true
  readonly at?: string
  readonly anyway?: true
  readonly set: readonly string[]
}

export const addNote: AddVerb = (program, door) => {
  const { words, terminal, end } = door
  withSets(withBook(verb(program, door, 'note [kind] [dash]', 'terminal:about-note'), door), door)
    .option('--list', words.say('terminal:flag-list-kinds'))
    .option('--at <time>', words.say('terminal:flag-at'))
    .option('--anyway', words.say('terminal:flag-anyway'))
    .action(async (kind: string | undefined, dash: string | undefined, flags: NoteFlags) => {
      if (flags.list) return listKinds(door, flags, kind)
      if (kind === undefined) throw badInput('terminal:note-what')
      if (!isKind(kind)) throw badInput('terminal:no-such-kind', { given: kind, known: Object.keys(KINDS).join(', ') })
      const typed = await readRecord(dash, flags.set, terminal)
      const atMs =
        flags.at === undefined ? undefined : readInstant(flags.at, { now: terminal.now(), zone: terminal.zone })
      const write = async (book: OpenBook) => {
        const body = completeBody(book, kind, typed)
        const questions = questionsBefore(book, kind, body, atMs)
        if (questions.length > 0 && !flags.anyway) {
          if (flags.json) printJson(door, { kind: 'asked', questions: questions.map(worded(book)) })
          else for (const question of questions) terminal.out(book.words.sentence(question))
          if (!flags.json) terminal.out(words.say('terminal:say-anyway'))
          return end(EXIT.refused)
        }
        const entry = await noteDown(book, kind, body, atMs)
        const { id, happenedAt } = entry.envelope
        if (flags.json) return printJson(door, { kind: 'noted', entry, questions: questions.map(worded(book)) })
        const at = showInstant(Date.parse(happenedAt.instant), terminal.zone)
        terminal.out(words.say('terminal:noted', { kind, at, id }))
      }
      await withOpenBook(flags, terminal, write, { mayBegin: kind === 'kitchen-opened' })
    })
}

function worded({ words }: OpenBook) {
  return (sentence: Sentence) => ({ ...sentence, text: words.sentence(sentence) })
}

function completeBody(book: OpenBook, kind: Kind, typed: { readonly [name: string]: Json | undefined }): Json {
  const schema = KINDS[kind].schema as unknown as SchemaShape
  const ownId = OWN_ID[kind]
  const entries = schema.entries ?? {}
  // A kitchen's habits are this kitchen's; nobody types its id.
  const kitchen =
    'kitchenId' in entries && kind !== 'kitchen-opened' && book.kitchenId ? { kitchenId: book.kitchenId } : {}
  // What a story is named after is not looked up: it begins here.
  const resolve = resolveNameIn(book.facts)
  const read = readBody(schema, { ...kitchen, ...typed }, resolve) as { readonly [name: string]: Json | undefined }
  return ownId !== undefined && read[ownId] === undefined ? { [ownId]: book.newId(), ...read } : read
}

/**
 * What the book asks first. A body its kind does not take is no question: it cannot be written at all.
 *
 * @throws {BadInput} with every reason the kind has.
 */
function questionsBefore(book: OpenBook, kind: Kind, body: Json, atMs?: number): Sentence[] {
  const checked = checkBody(kind, body)
  if (!checked.ok) throw refused(checked.refusals)
  const happenedAt = atMs === undefined ? {} : { happenedAt: new Date(atMs).toISOString() }
  const proposed = propose(book.facts, kind, checked.body as BodyOf<Kind>, happenedAt)
  return proposed.ok ? [] : proposed.refusals.map(refusalSentence)
}

/** Writes one entry; what its kind refuses is bad input, each reason a sentence of its own. */
export async function noteDown(book: OpenBook, kind: Kind, body: Json, atMs?: number) {
  try {
    return await book.record(kind, body as BodyOf<Kind>, atMs)
  } catch (error) {
    if (error instanceof BodyRefused) throw refused(error.refusals)
    throw error
  }
}

function refused(refusals: readonly Refusal[]): BadInput {
  return new BadInput(...refusals.map(refusalSentence))
}

function listKinds(door: Door, { json }: NoteFlags, kind?: string): void {
  const { terminal, words } = door
  const kinds = Object.entries(KINDS).map(([name, { schema }]) => ({
    kind: name,
    fields: fieldsOf(schema as unknown as SchemaShape),
  }))
  const listed = kind === undefined ? kinds : kinds.filter((one) => one.kind === kind)
  if (listed.length === 0)
    throw badInput('terminal:no-such-kind', { given: kind ?? '', known: Object.keys(KINDS).join(', ') })
  if (json) {
    printJson(door, listed)
    return
  }
  const optional = words.say('terminal:optional')
  for (const { kind: name, fields } of listed) {
    terminal.out(name)
    if (kind !== undefined)
      terminal.out(aligned(fields.map((field) => [field.name, field.takes, field.optional ? optional : ''])).join('\n'))
  }
}

interface FieldShape {
  readonly name: string
  readonly takes: string
  readonly optional: boolean
}

function fieldsOf({ entries = {} }: SchemaShape): FieldShape[] {
  return Object.entries(entries).map(([name, schema]) => {
    const optional = schema.wrapped !== undefined
    return { name, takes: takesOf(schema.wrapped ?? schema), optional }
  })
}

function takesOf({ type, options = [], item, entries, key = 'type' }: SchemaShape): string {
  if (type === 'picklist') return options.join(' | ')
  if (type === 'variant') {
    const words = options.flatMap((option) =>
      typeof option === 'string' ? [] : [String(option.entries?.[key]?.literal)],
    )
    return words.join(' | ')
  }
  if (type === 'array' && item) return `[${takesOf(item)}, ...]`
  if (entries) return `{${Object.keys(entries).join(', ')}}`
  return type
}
