/** The year's corn as strands of one braid: every weight from the book, every gap named. All in kg. */
import type { CornLotFact, Facts, FoodLotFact } from '@crib/journal'
import type { MessageKey } from '@crib/wording'
import { yearOf } from '../shared/day-of.ts'

export interface Strand {
  readonly id: 'cobs' | 'sorted-out' | 'seed' | 'kettle' | 'eaten' | 'given' | 'discarded' | 'left'
  readonly name: MessageKey
  readonly massKg: number
  /** A gap is corn that became no use: cobs, tails, mould. */
  readonly isGap: boolean
}

export interface BalanceOfYear {
  readonly broughtInKg: number
  /** In the order the braid splits; the last is what still hangs. Their weights add up to `broughtInKg`. */
  readonly strands: readonly Strand[]
  /** Lots told by measure only, which no weight can be drawn for. */
  readonly unweighed: readonly CornLotFact[]
  /** Told as used beyond what there was. */
  readonly overdrawnKg: number
}

/** Years in which corn was brought in, the latest first. */
export function yearsOf({ cornLots }: Facts): readonly number[] {
  return [...new Set(Object.values(cornLots).map(yearOf))].sort((a, b) => b - a)
}

export interface Became {
  readonly form: FoodLotFact['form']
  /** Jars or packs put up, eaten since or not. */
  readonly count: number
}

/** In the order to offer them: jars last. */
const FORMS = ['tonight', 'fridge', 'freezer', 'dried', 'flour', 'roasted', 'jar'] as const satisfies Became['form'][]

/** What was put up in a year, form by form. No strand is drawn for it: a jar has no one weight of dry corn. */
export function becameInYear({ foodLots }: Facts, year: number): readonly Became[] {
  const lots = Object.values(foodLots).filter((lot) => yearOf(lot) === year)
  return FORMS.map((form) => ({
    form,
    count: lots.reduce((sum, lot) => sum + (lot.form === form ? lot.count : 0), 0),
  })).filter(({ count }) => count > 0)
}

export function balanceOfYear({ cornLots }: Facts, year: number): BalanceOfYear {
  const lots = Object.values(cornLots).filter((lot) => yearOf(lot) === year)
  const balances = lots.flatMap(({ balance }) => (balance ? [balance] : []))
  const total = (part: (balance: (typeof balances)[number]) => number) =>
    balances.reduce((sum, balance) => sum + part(balance), 0)
  const leftKg = total((balance) => balance.leftKg)
  const all: readonly Strand[] = [
    { id: 'cobs', name: 'shell:strand-cobs', massKg: total(({ cobsKg }) => cobsKg), isGap: true },
    { id: 'sorted-out', name: 'shell:strand-sorted-out', massKg: total(({ sortedOutKg }) => sortedOutKg), isGap: true },
    { id: 'seed', name: 'shell:strand-seed', massKg: total(({ seedKg }) => seedKg), isGap: false },
    { id: 'kettle', name: 'shell:strand-kettle', massKg: total((balance) => balance.usedInBatchesKg), isGap: false },
    { id: 'eaten', name: 'shell:strand-eaten', massKg: total(({ eatenKg }) => eatenKg), isGap: false },
    { id: 'given', name: 'shell:strand-given', massKg: total(({ givenKg }) => givenKg), isGap: false },
    { id: 'discarded', name: 'shell:strand-discarded', massKg: total(({ discardedKg }) => discardedKg), isGap: true },
    { id: 'left', name: 'shell:strand-left', massKg: Math.max(leftKg, 0), isGap: false },
  ]
  return {
    broughtInKg: total(({ broughtInKg }) => broughtInKg),
    strands: all.filter(({ id, massKg }) => massKg > 0 || id === 'left'),
    unweighed: lots.filter(({ balance }) => balance === null),
    overdrawnKg: Math.max(-leftKg, 0),
  }
}
