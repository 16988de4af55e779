/** Canner cards from the book, or from flags where nothing is written yet. */
import type { CannerFact, Facts } from '@crib/journal'
import {
  type CardOutcome,
  cardOfCanner,
  type HullingAlkali,
  isStandingRead,
  type JarSize,
  seasonYearOf,
} from '@crib/planning'
import { convert, parseQuantity } from '@crib/science'
import type { Command } from 'commander'
import { badInput } from './exit-codes.ts'
import { collect, type Door } from './verb.ts'

export interface CardFlags {
  readonly alkali: string
  readonly size: string
  /** Commander's name for --not-hot-packed. */
  readonly notHotPacked?: true
  readonly elevation?: string
  readonly knownBy?: string
  readonly gauge: readonly string[]
}

export interface CardOfCanner {
  readonly name: string
  /** Absent for a canner told by flags only. */
  readonly canner?: CannerFact
  readonly outcome: CardOutcome
}

const ALKALIS = [
  'ash',
  'calcium-hydroxide',
  'sodium-hydroxide',
  'baking-soda',
] as const satisfies readonly HullingAlkali[]
const SIZES = ['half-pint', 'pint', 'quart'] as const satisfies readonly JarSize[]
const KNOWN_BY = ['map', 'phone', 'survey'] as const
const GAUGES = ['dial', 'weight'] as const

export function withCardFlags(command: Command, { words }: Door): Command {
  return command
    .option('--alkali <alkali>', words.say('terminal:flag-alkali', { known: ALKALIS.join(', ') }), 'ash')
    .option('--size <jar>', words.say('terminal:flag-size', { known: SIZES.join(', ') }), 'quart')
    .option('--not-hot-packed', words.say('terminal:flag-not-hot-packed'))
    .option('--elevation <height>', words.say('terminal:flag-elevation'))
    .option('--known-by <how>', words.say('terminal:flag-known-by', { known: KNOWN_BY.join(', ') }))
    .option('--gauge <kind>', words.say('terminal:flag-gauge', { known: GAUGES.join(', ') }), collect, [])
}

/** One of a short list of words, or a fault that names them all. */
export function oneOf<Word extends string>(flag: string, given: string, known: readonly Word[]): Word {
  if ((known as readonly string[]).includes(given)) return given as Word
  throw badInput('terminal:not-one-of', { flag, given, known: known.join(', ') })
}

export function readAlkali(given: string): HullingAlkali {
  return oneOf('--alkali', given, ALKALIS)
}

export function readJarSize(given: string): JarSize {
  return oneOf('--size', given, SIZES)
}

/** A card for each canner asked about: by name, else all of the book, else one told by flags. */
export function cardsOfBook(facts: Facts, name: string | undefined, flags: CardFlags, today: string): CardOfCanner[] {
  const alkali = readAlkali(flags.alkali)
  const wish = {
    today,
    jarSize: readJarSize(flags.size),
    alkali,
    isHotPack: !flags.notHotPacked,
    isStandingRead: isStandingRead(facts, alkali, seasonYearOf(facts, today)),
  }
  const kitchen = kitchenOf(facts, flags)
  const told = cannerToldByFlags(flags)
  const canners = Object.values(facts.canners).filter((canner) => name === undefined || sameName(canner.name, name))
  if (told) return [{ name: name ?? flags.gauge.join(' + '), outcome: outcomeOf(told) }]
  if (canners.length === 0) {
    const names = Object.values(facts.canners).map((canner) => canner.name)
    throw badInput('terminal:no-such-canner', { given: name ?? '-', names: names.join(', ') || '-' })
  }
  return canners.map((canner) => ({ name: canner.name, canner, outcome: outcomeOf(canner) }))

  function outcomeOf(canner: Parameters<typeof cardOfCanner>[0]): CardOutcome {
    const outcome = cardOfCanner(canner, kitchen, wish)
    if (!outcome) throw badInput('terminal:no-elevation')
    return outcome
  }
}

function cannerToldByFlags({ gauge }: CardFlags): Parameters<typeof cardOfCanner>[0] | null {
  if (gauge.length === 0) return null
  const gauges = gauge.map((kind) => oneOf('--gauge', kind, GAUGES))
  return { gauges, gaugeTests: [], rim: 'gasket', electric: false }
}

function kitchenOf({ kitchen }: Facts, { elevation, knownBy }: CardFlags): Parameters<typeof cardOfCanner>[1] {
  if (elevation === undefined) return kitchen
  const parsed = parseQuantity(elevation, 'length', { allowNegative: true })
  if (!parsed.ok) throw badInput('terminal:not-a-height', { given: elevation })
  const elevationM = convert(parsed.quantity.value, parsed.quantity.unit, 'M')
  return { name: kitchen?.name ?? '', elevationM, elevationKnownBy: oneOf('--known-by', knownBy ?? 'map', KNOWN_BY) }
}

function sameName(a: string, b: string): boolean {
  return a.trim().toLowerCase() === b.trim().toLowerCase()
}
