/** `crib run begin`: the number to hold is settled from the canner's card and written down with what was shown. */
import { type CannerCard, confirmHold, type GaugeCard, runBegunBody } from '@crib/planning'
import type { Json } from '@crib/science'
import type { Command } from 'commander'
import { type BookFlags, withOpenBook } from '../book.ts'
import { cardLines } from '../card-lines.ts'
import { type CardFlags, cardsOfBook, oneOf, readJarSize, withCardFlags } from '../card-of-book.ts'
import { dateOf, readInstant } from '../clock-times.ts'
import { BadInput, badInput, EXIT } from '../exit-codes.ts'
import { resolveNameIn } from '../names.ts'
import { readCount } from '../plan-flags.ts'
import { type Door, printJson, verb, withBook } from '../verb.ts'
import { noteDown } from './note.ts'
import { showNow } from './run-show.ts'

interface BeginFlags extends BookFlags, CardFlags {
  readonly jars: string
  readonly hold?: string
  readonly batch?: string
  readonly at?: string
}

export function addRunBegin(parent: Command, door: Door): void {
  const { terminal, words, end } = door
  withCardFlags(withBook(verb(parent, door, 'begin <canner>', 'terminal:about-run-begin'), door), door)
    .requiredOption('--jars <count>', words.say('terminal:flag-jars'))
    .option('--hold <number>', words.say('terminal:flag-hold'))
    .option('--batch <title>', words.say('terminal:flag-batch'))
    .option('--at <time>', words.say('terminal:flag-at'))
    .action((name: string, flags: BeginFlags) =>
      withOpenBook(flags, terminal, async (book) => {
        const atMs =
          flags.at === undefined ? terminal.now() : readInstant(flags.at, { now: terminal.now(), zone: terminal.zone })
        const day = dateOf(atMs, terminal.zone)
        // A gauge flag chooses among this canner's gauges; the card is the book's.
        const of = cardsOfBook(book.facts, name, { ...flags, gauge: [] }, day)[0]!
        const { outcome, canner } = of
        if (outcome.kind !== 'card' || !outcome.minutes) {
          end(EXIT.refused)
          if (flags.json) return printJson(door, { kind: 'refused', card: outcome })
          terminal.out(
            [...cardLines(of, book.words, terminal.columns), '', words.say('terminal:run-not-begun')].join('\n'),
          )
          return
        }
        const route = routeOf(outcome, flags.gauge)
        const held = settle(route, flags.hold)
        const batchId = flags.batch === undefined ? null : resolveNameIn(book.facts)('batchId', flags.batch)
        if (flags.batch !== undefined && batchId === null)
          throw badInput('terminal:no-such-name', { field: '--batch', given: flags.batch })
        const body = runBegunBody(book.facts, {
          runId: book.newId(),
          ...(batchId !== null && { batchId }),
          canner: canner!,
          jarSize: readJarSize(flags.size),
          jarCount: readCount(flags.jars),
          card: outcome,
          route,
          requiredReadingPsi: held.requiredReadingPsi,
          atMs,
          zone: terminal.zone,
        })
        await noteDown(book, 'run-begun', body as unknown as Json, atMs)
        const notes = held.notes.map(book.words.sentence)
        if (flags.json) return printJson(door, { kind: 'begun', run: body, notes })
        terminal.out([words.say('terminal:run-begun', { code: body.loadCode }), ...notes].join('\n'))
        await showNow(door, flags, body.loadCode)
      }),
    )
}

/** The gauge asked for, else the card's own first route. */
function routeOf({ routes }: CannerCard, asked: readonly string[]): GaugeCard {
  if (asked.length === 0) return routes[0]!
  const gauge = oneOf(
    '--gauge',
    asked.at(-1)!,
    routes.map((route) => route.gauge),
  )
  return routes.find((route) => route.gauge === gauge)!
}

function settle(route: GaugeCard, asked: string | undefined) {
  const card = route.holdAt?.value ?? route.set.value
  const chosen = asked === undefined ? card : Number(asked.replace(/\s*(psi|lb)$/i, ''))
  if (Number.isNaN(chosen)) throw badInput('terminal:not-a-hold', { given: asked ?? '' })
  // A dial that was never tested is held only by a number the keeper says aloud.
  if (!route.usable && asked === undefined) throw new BadInput(...route.reasons)
  const held = confirmHold(route, chosen)
  if (!held.ok) throw new BadInput(...held.why)
  return held
}
