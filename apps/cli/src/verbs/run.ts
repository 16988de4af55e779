/** `crib run`: a canner load by the clock, from lid to seals, live or typed in afterwards. */
import { readFile } from 'node:fs/promises'
import { processLog, runClock, ventAdvice } from '@crib/planning'
import type { Command } from 'commander'
import { type BookFlags, withOpenBook } from '../book.ts'
import { dateOf, readInstant } from '../clock-times.ts'
import { EVENT_WORDS, readEvent } from '../event-typed.ts'
import { badInput, EXIT } from '../exit-codes.ts'
import { section } from '../lines.ts'
import { type PrintFlags, printPdf, withPrintFlags } from '../print.ts'
import { chosenRun, type RunOfBook } from '../run-of-book.ts'
import { logDocument } from '../sheets.ts'
import { readTypedLog } from '../typed-log.ts'
import { type AddVerb, type Door, printJson, verb, withBook } from '../verb.ts'
import { noteDown } from './note.ts'
import { addRunBegin } from './run-begin.ts'
import { type RunFlags, showNow } from './run-show.ts'

export const addRun: AddVerb = (program, door) => {
  const run = program.command('run').description(door.words.say('terminal:about-run'))
  addRunBegin(run, door)
  addSaw(run, door)
  addNow(run, door)
  addTyped(run, door)
  addLog(run, door)
}

function withLoad(command: Command, { words }: Door): Command {
  return command.option('--load <code>', words.say('terminal:flag-load'))
}

function addSaw(parent: Command, door: Door): void {
  const { terminal, words, end } = door
  withLoad(withBook(verb(parent, door, 'saw <event> [value]', 'terminal:about-run-saw'), door), door)
    .option('--at <time>', words.say('terminal:flag-at'))
    .option('--anyway', words.say('terminal:flag-anyway'))
    .addHelpText('after', `\n${words.say('terminal:run-events', { known: EVENT_WORDS.join(', ') })}`)
    .action(
      (word: string, value: string | undefined, flags: RunFlags & { readonly at?: string; readonly anyway?: true }) =>
        withOpenBook(flags, terminal, async (book) => {
          const now = terminal.now()
          const chosen = chosenRun(book, flags.load, now)
          const event = readEvent(word, value, chosen.run.runId)
          const atMs = flags.at === undefined ? now : readInstant(flags.at, { now, zone: terminal.zone })
          const advice = event.type === 'vent-closed' ? earlyVent(chosen, atMs) : []
          if (advice.length > 0 && !flags.anyway) {
            end(EXIT.refused)
            const texts = advice.map(book.words.sentence)
            if (flags.json) return printJson(door, { kind: 'asked', questions: texts.map((text) => ({ text })) })
            return terminal.out([...texts, words.say('terminal:say-anyway')].join('\n'))
          }
          await noteDown(book, 'run-event', { runId: chosen.run.runId, event: { ...event } }, atMs)
          await showNow(door, flags, chosen.run.begun.loadCode)
        }),
    )
}

/** Closing the vent before its minutes are up: the answer is no, and why. It is written down when it was so. */
function earlyVent({ state, setup, records }: RunOfBook, atMs: number) {
  const { steamAtMs, ventClosedAtMs } = state.marks
  if (steamAtMs === undefined || ventClosedAtMs !== undefined) return []
  const advice = ventAdvice({ steamAtMs, wantsToCloseAtMs: atMs, rules: setup.rules, clock: runClock(setup, records) })
  return advice.mayClose ? [] : advice.sentences
}

function addNow(parent: Command, door: Door): void {
  withLoad(withBook(verb(parent, door, 'now', 'terminal:about-run-now'), door), door).action((flags: RunFlags) =>
    showNow(door, flags, flags.load),
  )
}

function addTyped(parent: Command, door: Door): void {
  const { terminal, words } = door
  withLoad(withBook(verb(parent, door, 'typed <file>', 'terminal:about-run-typed'), door), door)
    .option('--date <day>', words.say('terminal:flag-date'))
    .action((file: string, flags: RunFlags & { readonly date?: string }) =>
      withOpenBook(flags, terminal, async (book) => {
        const now = terminal.now()
        const { run } = chosenRun(book, flags.load, now)
        const text = file === '-' ? await terminal.readInput() : await readFile(file, 'utf8')
        const day = flags.date ?? dateOf(now, terminal.zone)
        // Every line is read before the first is written: a typing slip leaves no half a log behind.
        const lines = readTypedLog(text, { day, now, zone: terminal.zone }, run.runId)
        if (lines.length === 0) throw badInput('terminal:typed-nothing', { file })
        for (const { event, atMs } of lines)
          await noteDown(book, 'run-event', { runId: run.runId, event: { ...event } }, atMs)
        if (!flags.json) terminal.out(words.say('terminal:typed-in', { count: lines.length }))
        await showNow(door, flags, run.begun.loadCode)
      }),
    )
}

function addLog(parent: Command, door: Door): void {
  const { terminal, words } = door
  withPrintFlags(withBook(verb(parent, door, 'log [load]', 'terminal:about-run-log'), door), door)
    .option('--pdf <file>', words.say('terminal:flag-pdf'))
    .action((code: string | undefined, flags: BookFlags & PrintFlags & { readonly pdf?: string }) =>
      withOpenBook(flags, terminal, async (book) => {
        const chosen = chosenRun(book, code, terminal.now())
        if (flags.pdf !== undefined) {
          const document = logDocument(chosen, { facts: book.facts, flags, door, words: book.words })
          return printPdf(document, flags.pdf, door, flags)
        }
        const { setup, records, run } = chosen
        const { loadCode, cannerName } = run.begun
        const log = processLog({ setup, records, nowMs: terminal.now(), loadCode, cannerName })
        const said = (sentences: typeof log.lines) => sentences.map(book.words.sentence)
        if (flags.json)
          return printJson(door, {
            kind: 'log',
            summary: book.words.sentence(log.summary),
            lines: said(log.lines),
            departures: said(log.departures),
            questions: said(log.questions),
          })
        terminal.out(
          [
            book.words.sentence(log.summary),
            ...section(words.say('terminal:heading-notes'), said(log.lines), terminal.columns),
            ...section(words.say('terminal:heading-departures'), said(log.departures), terminal.columns),
            ...section(words.say('terminal:book-questions'), said(log.questions), terminal.columns),
          ].join('\n'),
        )
      }),
    )
}
