/** `crib sorted`: what was sorted out of a batch's pots, by cause and share, where the dry matter went, and this lot's yield. */
import type { BatchFact, Facts } from '@crib/journal'
import { cornLotOf, lotYield, mouldFound, potBalance, potTails } from '@crib/planning'
import type { CalcResult, Sentence } from '@crib/science'
import { formatReckoned, type MessageKey, type Words } from '@crib/wording'
import { type BookFlags, withFacts } from '../book.ts'
import { badInput, EXIT } from '../exit-codes.ts'
import { aligned, section, wrap } from '../lines.ts'
import { type AddVerb, printJson, verb, withBook } from '../verb.ts'

const BALANCE_NAMES: { readonly [id: string]: MessageKey } = {
  hominyPerCorn: 'kettle:yield-per-corn',
  lossFraction: 'kettle:yield-loss',
  inKg: 'kettle:yield-in',
  hominyDryKg: 'kettle:yield-hominy',
  tailsDryKg: 'kettle:yield-tails',
  lossKg: 'kettle:yield-lost',
}

export const addSorted: AddVerb = (program, door) => {
  const { terminal, end } = door
  withBook(verb(program, door, 'sorted [batch]', 'terminal:about-sorted'), door).action(
    (title: string | undefined, flags: BookFlags) =>
      withFacts(flags, terminal, async ({ facts, words }) => {
        const batch = batchNamed(facts, title)
        const pots = potsOf(facts, batch)
        const lotId = cornLotOf(batch)
        const own = lotId === undefined ? null : lotYield(facts, lotId)
        if (pots.length === 0) {
          end(EXIT.refused)
          if (flags.json) return printJson(door, { kind: 'nothing-sorted', batch: batch.plan.title })
          return terminal.out(words.say('terminal:nothing-sorted', { batch: batch.plan.title }))
        }
        if (pots.some(({ balance }) => balance?.ok === false)) end(EXIT.refused)
        if (flags.json) return printJson(door, { kind: 'sorted', batch: batch.plan.title, pots, ownYield: own })
        const lines = pots.flatMap((pot) => potLines(pot, words, terminal.columns))
        const ownLine = own && [
          [words.say('kettle:yield-own', { count: own.batchesCount }), formatReckoned(own.hominyPerCorn)],
        ]
        return terminal.out([...lines, ...(ownLine ? ['', ...aligned(ownLine)] : [])].join('\n'))
      }),
  )
}

interface SortedPot {
  readonly potLoad: number
  readonly tails: ReturnType<typeof potTails>
  readonly balance: CalcResult | null
}

function batchNamed({ batches }: Facts, title: string | undefined): BatchFact {
  const wanted = title?.toLowerCase()
  const batch = Object.values(batches).findLast(
    ({ plan }) => wanted === undefined || plan.title.toLowerCase() === wanted,
  )
  if (batch) return batch
  throw title === undefined ? badInput('terminal:no-batch-yet') : badInput('terminal:no-such-batch', { given: title })
}

function potsOf(facts: Facts, batch: BatchFact): readonly SortedPot[] {
  const loads = [...batch.cook.map(({ potLoad }) => potLoad), ...batch.sorts.map(({ potLoad = 1 }) => potLoad)]
  return [...new Set(loads)]
    .toSorted((a, b) => a - b)
    .map((potLoad) => ({
      potLoad,
      tails: potTails(facts, batch, potLoad),
      balance: potBalance(facts, batch, potLoad),
    }))
    .filter(({ tails, balance }) => tails !== null || balance !== null)
}

function potLines({ potLoad, tails, balance }: SortedPot, words: Words, columns: number): string[] {
  const { say, sentence } = words
  const told = (sentences: readonly Sentence[]) => sentences.map((each) => wrap(sentence(each), columns, '  '))
  const rows = (tails?.causes ?? []).map(({ cause, massKg, shareFraction }) => [
    say(`kettle:cause-${cause}`),
    massKg ? formatReckoned(massKg) : '',
    shareFraction ? formatReckoned(shareFraction) : '',
  ])
  const whole = tails?.shareFraction ? [[say('kettle:tails-share'), '', formatReckoned(tails.shareFraction)]] : []
  return [
    say('terminal:sorted-pot', { number: potLoad }),
    ...(rows.length + whole.length > 0 ? aligned([...whole, ...rows]) : []),
    ...(tails ? told(tails.sentences) : []),
    ...(tails?.hasMould
      ? [
          ...section(say('kettle:mould-title'), mouldFound('wet').map(sentence), columns),
          ...section(say('workbench:ask-whom'), tails.askWhom.map(sentence), columns),
        ]
      : []),
    ...(balance ? balanceLines(balance, words, columns) : []),
  ]
}

function balanceLines(balance: CalcResult, { say, sentence }: Words, columns: number): string[] {
  if (!balance.ok) return section(say('kettle:yield-refused'), balance.why.map(sentence), columns)
  const rows = balance.values.map((value) => [say(BALANCE_NAMES[value.id]!), formatReckoned(value)])
  return [
    '',
    say('kettle:yield-title'),
    ...aligned(rows),
    ...balance.reasons.map((each) => wrap(sentence(each), columns, '  ')),
  ]
}
