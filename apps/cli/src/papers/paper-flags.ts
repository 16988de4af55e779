/** The flags of `crib paper`, beside those of every print. A paper reads the ones it needs. */
import { type Facts, VISIBILITIES, type Visibility } from '@crib/journal'
import type { PaperDocument } from '@crib/paper'
import type { Words } from '@crib/wording'
import type { Command } from 'commander'
import type { BookFlags } from '../book.ts'
import { oneOf } from '../card-of-book.ts'
import type { PrintFlags } from '../print.ts'
import type { Door } from '../verb.ts'

/** Whose eyes a sheet is for, where it may be for others than the keeper. */
const AUDIENCES = VISIBILITIES

export interface PaperFlags extends BookFlags, PrintFlags {
  readonly out: string
  readonly batch?: string
  readonly canner?: string
  readonly load?: string
  readonly year?: string
  readonly corn?: string
  readonly seed?: string
  readonly plot?: string
  readonly lot?: string
  readonly contact?: string
  readonly for: string
  readonly size: string
  readonly alkali: string
  readonly labels?: string
  readonly skip: string
}

/** What a paper is made from. */
export interface Asked {
  readonly facts: Facts
  readonly flags: PaperFlags
  readonly door: Door
  /** With the keeper's own nouns. */
  readonly words: Words
}

export type MakePaper = (asked: Asked) => PaperDocument

export function withPaperFlags(command: Command, { words }: Door): Command {
  return command
    .option('--batch <title>', words.say('terminal:flag-batch-to-print'))
    .option('--canner <name>', words.say('terminal:flag-canner'))
    .option('--load <code>', words.say('terminal:flag-load-to-print'))
    .option('--year <year>', words.say('terminal:flag-year-to-print'))
    .option('--corn <name>', words.say('terminal:flag-corn-in-doubt'))
    .option('--seed <name>', words.say('terminal:flag-seed-to-print'))
    .option('--plot <name>', words.say('terminal:flag-plot-to-print'))
    .option('--lot <name>', words.say('terminal:flag-lot-to-print'))
    .option('--contact <words>', words.say('terminal:flag-contact'), '')
    .option('--for <whom>', words.say('terminal:flag-for-whom', { known: AUDIENCES.join(', ') }), 'keeper')
    .option('--size <jar>', words.say('terminal:flag-size', { known: 'half-pint, pint, quart' }), 'quart')
    .option('--alkali <alkali>', words.say('terminal:flag-alkali-else'), 'ash')
    .option('--labels <sheet>', words.say('terminal:flag-labels'))
    .option('--skip <count>', words.say('terminal:flag-skip'), '0')
}

export function readAudience({ flags }: Pick<Asked, 'flags'>): Visibility {
  return oneOf('--for', flags.for, AUDIENCES)
}
