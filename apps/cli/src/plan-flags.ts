/** What `crib plan` was asked, read into a wish; everything else is remembered by the book or assumed. */
import type { Facts } from '@crib/journal'
import type { BatchPlanInput, BatchWish, DayWish, Ending, Fill, Hull, SeedAnswer } from '@crib/planning'
import { convert, parseQuantity, type Unit } from '@crib/science'
import type { Command } from 'commander'
import { oneOf, readAlkali, readJarSize } from './card-of-book.ts'
import { badInput } from './exit-codes.ts'
import { resolveNameIn } from './names.ts'
import { unitName } from './unit-name.ts'
import { collect, type Door } from './verb.ts'

export interface PlanFlags {
  readonly corn?: string
  readonly amount?: string
  readonly ears?: true
  readonly jars?: string
  readonly ending: readonly string[]
  readonly alkali?: string
  readonly ash?: string
  readonly size?: string
  readonly fill?: string
  readonly hull?: string
  readonly salt?: true
  readonly canner: readonly string[]
  readonly seed?: string
  readonly places?: string
  readonly reason?: string
  readonly pot: readonly string[]
  readonly start?: string
  readonly finish?: string
  readonly people?: string
  readonly days: string
}

const ENDINGS = ['jars', 'freezer', 'dried', 'flour', 'roasted', 'tonight'] as const satisfies readonly Ending[]
const FILLS = ['loose-to-headspace', 'half', 'third'] as const satisfies readonly Fill[]
const HULLS = ['easy', 'thick'] as const satisfies readonly Hull[]

export function withPlanFlags(command: Command, { words }: Door): Command {
  return command
    .option('--corn <lot>', words.say('terminal:flag-corn'))
    .option('--amount <amount>', words.say('terminal:flag-amount'))
    .option('--ears', words.say('terminal:flag-ears'))
    .option('--jars <count>', words.say('terminal:flag-jars-wanted'))
    .option('--ending <ending=share>', words.say('terminal:flag-ending', { known: ENDINGS.join(', ') }), collect, [])
    .option('--alkali <alkali>', words.say('terminal:flag-alkali-else'))
    .option('--ash <lot>', words.say('terminal:flag-ash'))
    .option('--size <jar>', words.say('terminal:flag-size', { known: 'half-pint, pint, quart' }))
    .option('--fill <how>', words.say('terminal:flag-fill', { known: FILLS.join(', ') }))
    .option('--hull <kind>', words.say('terminal:flag-hull', { known: HULLS.join(', ') }))
    .option('--salt', words.say('terminal:flag-salt'))
    .option('--canner <name>', words.say('terminal:flag-canner'), collect, [])
    .option('--seed <answer>', words.say('terminal:flag-seed'))
    .option('--places <places>', words.say('terminal:flag-places'))
    .option('--reason <reason>', words.say('terminal:flag-reason'))
    .option('--pot <size>', words.say('terminal:flag-pot'), collect, [])
    .option('--start <clock>', words.say('terminal:flag-start'))
    .option('--finish <clock>', words.say('terminal:flag-finish'))
    .option('--people <count>', words.say('terminal:flag-people'))
    .option('--days <count>', words.say('terminal:flag-days'), '1')
}

export function readWish(flags: PlanFlags, facts: Facts): BatchWish {
  const idOf = (field: string, flag: string, name: string): string => {
    const id = resolveNameIn(facts)(field, name)
    if (id === null) throw badInput('terminal:no-such-name', { field: flag, given: name })
    return id
  }
  const { corn, amount, jars, alkali, ash, size, fill, hull, seed } = flags
  return {
    endings: readEndings(flags.ending),
    ...(corn !== undefined && { cornLotId: idOf('cornLotId', '--corn', corn) }),
    ...(amount !== undefined && { amount: readAmount(amount, facts) }),
    ...(flags.ears && { form: 'ears' as const }),
    ...(jars !== undefined && { jarsWantedCount: readCount(jars) }),
    ...(alkali !== undefined && { alkali: readAlkali(alkali) }),
    ...(ash !== undefined && { alkaliLotId: idOf('alkaliLotId', '--ash', ash) }),
    ...(size !== undefined && { jarSize: readJarSize(size) }),
    ...(fill !== undefined && { fill: oneOf('--fill', fill, FILLS) }),
    ...(hull !== undefined && { hull: oneOf('--hull', hull, HULLS) }),
    ...(seed !== undefined && { seed: readSeed(seed, flags) }),
    ...(flags.salt && { wantsSalt: true }),
    ...(flags.canner.length > 0 && { cannerIds: flags.canner.map((name) => idOf('cannerId', '--canner', name)) }),
  }
}

/** Pots told by flags stand beside those of the book. */
export function withPots(input: BatchPlanInput, { pot }: PlanFlags): BatchPlanInput {
  const told = pot.map((size, index) => ({
    name: `${index + 1}`,
    volumeLiquidQt: measured(size, 'volume', 'LiquidQt', '--pot'),
    material: 'stainless' as const,
  }))
  return { ...input, pots: [...input.pots, ...told] }
}

/** Null when neither a start nor a finish was named. */
export function readDayWish({ start, finish, people }: PlanFlags): DayWish | null {
  if (start !== undefined && finish !== undefined) throw badInput('terminal:start-or-finish')
  const typed = start ?? finish
  if (typed === undefined) return null
  return {
    clock: { from: start === undefined ? 'finish' : 'start', clockMin: readClock(typed) },
    ...(people !== undefined && { peopleCount: readCount(people) }),
  }
}

/** 2: hull today, can tomorrow. */
export function readDayCount({ days }: PlanFlags): 1 | 2 {
  if (days === '1') return 1
  if (days === '2') return 2
  throw badInput('terminal:not-one-of', { flag: '--days', given: days, known: '1, 2' })
}

function readEndings(endings: readonly string[]): BatchWish['endings'] {
  const typed = endings.flatMap((text) => text.split(','))
  return typed.map((text) => {
    const [ending = '', share] = text.split('=').map((part) => part.trim())
    const shareFraction = share === undefined ? 1 / typed.length : readShare(share)
    return { ending: oneOf('--ending', ending, ENDINGS), shareFraction }
  })
}

/** `0.5`, `50 %` or `1/2`. */
function readShare(text: string): number {
  const percent = /^([\d.]+)\s*%$/.exec(text)
  const over = /^(\d+)\s*\/\s*(\d+)$/.exec(text)
  const share = percent ? Number(percent[1]) / 100 : over ? Number(over[1]) / Number(over[2]) : Number(text)
  if (!(share > 0 && share <= 1)) throw badInput('terminal:bad-share', { given: text })
  return share
}

function readAmount(text: string, { kitchen }: Facts): NonNullable<BatchWish['amount']> {
  const vague = kitchen?.vagueQuart ?? 'liquid'
  const parsed = parseQuantity(text, ['mass', 'volume'], { vague })
  if (!parsed.ok) throw badInput('terminal:not-an-amount-of-corn', { given: text })
  return { ...parsed.quantity, ...(parsed.assumed && { assumed: parsed.assumed }) }
}

function readSeed(text: string, { places, reason }: PlanFlags): SeedAnswer {
  const list = (places ?? '')
    .split(',')
    .map((place) => place.trim())
    .filter((place) => place !== '')
  const common = { plantingsCount: 2, places: list, ...(reason !== undefined && { reason }) }
  if (text === 'by-eye') return { how: 'by-eye', ...common }
  if (text === 'not-this-year') return { how: 'not-this-year', ...common, plantingsCount: 0 }
  return { how: 'by-weight', massKg: measured(text, 'mass', 'Kg', '--seed'), ...common }
}

function measured(text: string, measure: 'mass' | 'volume', unit: Unit, flag: string): number {
  const parsed = parseQuantity(text, measure)
  if (!parsed.ok) throw badInput('terminal:not-an-amount', { field: flag, given: text, unit: unitName(unit) })
  return convert(parsed.quantity.value, parsed.quantity.unit, unit)
}

export function readCount(given: string): number {
  const count = Number(given)
  if (!Number.isInteger(count) || count < 1) throw badInput('terminal:bad-count', { given })
  return count
}

function readClock(text: string): number {
  const match = /^(\d{1,2}):(\d{2})$/.exec(text.trim())
  const hours = Number(match?.[1])
  const minutes = Number(match?.[2])
  if (!match || hours > 23 || minutes > 59) throw badInput('workbench:not-a-clock', { field: '--start', given: text })
  return hours * 60 + minutes
}
