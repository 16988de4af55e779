/** `crib book`: what the book holds, line by line, whether it is whole, and all of it out to a file and in again. */
import { writeFile } from 'node:fs/promises'
import { type EntryOutcome, history, type JournalStore, type StoredEntry } from '@crib/journal'
import { linesOfFile } from '@crib/journal/care'
import type { Command } from 'commander'
import { type BookFlags, type OpenBook, readAll, withOpenBook, withStore } from '../book.ts'
import { bookLines } from '../book-lines.ts'
import { showInstant } from '../clock-times.ts'
import { badInput, EXIT } from '../exit-codes.ts'
import { type AddVerb, type Door, printJson, verb, withBook } from '../verb.ts'
import { addBookCare } from './book-care.ts'
import { addExchange } from './book-exchange.ts'

const IMPORT_AT_ONCE = 500
/** Above the longest entry a store keeps. */
const MOST_LINE_BYTES = 2_000_000

export const addBook: AddVerb = (program, door) => {
  const book = program.command('book').description(door.words.say('terminal:about-book'))
  addShow(book, door)
  addLines(book, door)
  addVerify(book, door)
  addExport(book, door)
  addImport(book, door)
  addBookCare(book, door)
  addExchange(book, door)
}

function addShow(parent: Command, door: Door): void {
  withBook(verb(parent, door, 'show', 'terminal:about-book-show', { isDefault: true }), door).action(
    (flags: BookFlags) =>
      withOpenBook(flags, door.terminal, async (book) => {
        if (flags.json) {
          const { ledger: _ledger, ...facts } = book.facts
          return printJson(door, { file: book.file, facts })
        }
        door.terminal.out(bookLines(book, door.terminal).join('\n'))
      }),
  )
}

function addLines(parent: Command, door: Door): void {
  const { terminal, words } = door
  withBook(verb(parent, door, 'lines', 'terminal:about-book-lines'), door)
    .option('--last <count>', words.say('terminal:flag-last'), '40')
    .action((flags: BookFlags & { readonly last: string }) =>
      withOpenBook(flags, terminal, async (book) => {
        const last = Number(flags.last)
        if (!Number.isInteger(last) || last < 1) throw badInput('terminal:bad-count', { given: flags.last })
        const lines = inOrderOfHappening(book.entries).slice(-last)
        if (flags.json) return printJson(door, lines)
        for (const entry of lines) terminal.out(lineText(book, entry, terminal.zone))
      }),
    )
}

/** As the fold orders them: instant, then device and its own count. */
function inOrderOfHappening(entries: readonly StoredEntry[]): StoredEntry[] {
  const keyOf = ({ envelope: { happenedAt, deviceId, deviceSeq } }: StoredEntry) =>
    `${happenedAt.instant} ${deviceId} ${String(deviceSeq).padStart(10, '0')}`
  return entries.toSorted((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1))
}

function lineText({ facts, words }: OpenBook, { envelope, body }: StoredEntry, zone: string): string {
  const { id, kind, happenedAt } = envelope
  const standing = history(facts, id)
  const mark = standing?.standing === null ? ` (${words.say('terminal:withdrawn')})` : ''
  const text = body === null ? words.say('terminal:erased') : JSON.stringify(body.value)
  return `${showInstant(Date.parse(happenedAt.instant), zone)}  ${kind}${mark}  ${text}  ${id}`
}

function addVerify(parent: Command, door: Door): void {
  const { terminal, words, end } = door
  withBook(verb(parent, door, 'verify', 'terminal:about-book-verify'), door).action((flags: BookFlags) =>
    withStore(flags, terminal, async (store, file) => {
      const report = await store.verify()
      if (!report.ok) end(EXIT.trouble)
      if (flags.json) return printJson(door, report)
      if (report.ok) return terminal.out(words.say('terminal:book-whole', { file }))
      for (const { code, entryId, detail } of report.faults) terminal.out(`${code}  ${entryId}  ${detail}`)
    }),
  )
}

function addExport(parent: Command, door: Door): void {
  const { terminal, words } = door
  withBook(verb(parent, door, 'export <file>', 'terminal:about-book-export'), door).action(
    (to: string, flags: BookFlags) =>
      withStore(flags, terminal, async (store) => {
        const kitchens = await store.kitchens()
        const all = (await Promise.all(kitchens.map(({ kitchenId }) => readAll(store, kitchenId)))).flat()
        const text = all.map((entry) => `${JSON.stringify(entry)}\n`).join('')
        if (to === '-') return terminal.out(text.trimEnd())
        await writeFile(to, text)
        if (flags.json) printJson(door, { kind: 'exported', file: to, entriesCount: all.length })
        else terminal.out(words.say('terminal:exported', { count: all.length, file: to }))
      }),
  )
}

function addImport(parent: Command, door: Door): void {
  const { terminal, words, end } = door
  withBook(verb(parent, door, 'import <file>', 'terminal:about-book-import'), door).action(
    async (from: string, flags: BookFlags) => {
      const entries = await readEntries(from, door)
      const take = async (store: JournalStore) => {
        const results: EntryOutcome[] = []
        for (let at = 0; at < entries.length; at += IMPORT_AT_ONCE) {
          results.push(...(await store.append(entries.slice(at, at + IMPORT_AT_ONCE))).results)
        }
        const countOf = (outcome: EntryOutcome['outcome']) => results.filter((one) => one.outcome === outcome).length
        const accepted = countOf('accepted')
        const already = countOf('already')
        const refused = countOf('refused')
        if (refused > 0) end(EXIT.trouble)
        if (flags.json) return printJson(door, { kind: 'imported', accepted, already, refused, results })
        terminal.out(words.say('terminal:imported', { accepted, already, refused }))
        for (const { id, faults = [] } of results) {
          for (const { code, detail } of faults) terminal.out(`${code}  ${id}  ${detail}`)
        }
      }
      await withStore(flags, terminal, take, { mayBegin: true })
    },
  )
}

async function readEntries(from: string, { terminal }: Door): Promise<StoredEntry[]> {
  const lines = from === '-' ? (await terminal.readInput()).split('\n') : linesOfFile(from, MOST_LINE_BYTES)
  const entries: StoredEntry[] = []
  let number = 0
  for await (const line of lines) {
    number += 1
    if (line?.trim() === '') continue
    try {
      entries.push(JSON.parse(line ?? 'a line longer than any entry') as StoredEntry)
    } catch (error) {
      throw badInput('terminal:broken-json', { where: `${from}:${number}`, detail: (error as Error).message })
    }
  }
  return entries
}
