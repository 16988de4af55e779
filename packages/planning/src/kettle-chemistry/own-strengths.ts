/**
 * The keeper's own pot-loads in the measure of the printed recipes: alkali on the corn, and the strength of the pot.
 * Only where every lot that went in was weighed or has a weighed cup, and the ash was titrated.
 */
import type { AlkaliAddition, AlkaliLotFact, BatchFact, Facts } from '@crib/journal'
import { convert, type Reckoned, type Spread } from '@crib/science'
import { potCornLiquidQt, potWalk } from '../batch/kettle-walk.ts'
import type { BatchPlan } from '../batch/plan.ts'
import { planOfBatch } from '../batch/planned-batch.ts'
import { LB_PER_LIQUID_QT } from '../shared/corn-measure.ts'
import { boughtEq } from './alkali-dose.ts'
import { valuesOf, wider } from './fields.ts'
import { testedStrength } from './tested-lot.ts'

export interface OwnStrength {
  readonly batchId: string
  readonly title: string
  readonly potLoad: number
  readonly eqPerKg: Reckoned
  /** All of it dissolved in the water written down; absent where none was. [eq/L] */
  readonly eqPerL?: Reckoned
}

export interface OwnStrengths {
  readonly rows: readonly OwnStrength[]
  /** Pot-loads with alkali whose strength or weight nobody measured. */
  readonly unmeasuredCount: number
}

export function ownStrengths(facts: Facts): OwnStrengths {
  const rows: OwnStrength[] = []
  let unmeasuredCount = 0
  for (const batch of Object.values(facts.batches)) {
    const outcome = planOfBatch(batch)
    const plan = outcome?.kind === 'planned' ? outcome : null
    for (const potLoad of new Set(batch.additions.map((addition) => addition.potLoad))) {
      const row = strengthOf(facts, batch, plan, potLoad)
      if (row) rows.push(row)
      else unmeasuredCount += 1
    }
  }
  return { rows, unmeasuredCount }
}

/** Alkali that went into one pot-load so far. [eq]  Null where a lot was not measured. */
export function alkaliInPot(facts: Facts, batch: BatchFact, potLoad: number): Spread | null {
  let sum: Spread = { value: 0, low: 0, high: 0 }
  for (const addition of batch.additions.filter((each) => each.potLoad === potLoad)) {
    const lot = facts.alkaliLots[addition.alkaliLotId]
    const eq = lot ? alkaliOf(lot, addition) : null
    if (!eq) return null
    sum = { value: sum.value + eq.value, low: sum.low + eq.low, high: sum.high + eq.high }
  }
  return sum
}

/** Alkali in so much of a lot. [eq]  Null where it was not measured. */
export function alkaliOf(lot: AlkaliLotFact, { cups, massKg }: Pick<AlkaliAddition, 'cups' | 'massKg'>): Spread | null {
  const tested = lot.alkali === 'ash' ? testedStrength(lot) : null
  const gPerCup = lot.tests.findLast((test) => test.gPerCup !== undefined)?.gPerCup
  const kg = massKg ?? (cups !== undefined && gPerCup !== undefined ? (cups * gPerCup) / 1000 : null)
  if (kg === null) return null
  if (lot.alkali === 'ash') return tested && wider(tested.strength.eqPerKg, kg)
  const eq = boughtEq(lot.alkali, kg * 1000)
  return { value: eq, low: eq, high: eq }
}

/** Dry corn of one pot-load by weight. [kg]  Null without a plan. */
export function potCornKg({ kitchen }: Pick<Facts, 'kitchen'>, plan: BatchPlan | null, potLoad: number): number | null {
  const cornQt = potCornLiquidQt(plan, potLoad)
  return cornQt === null ? null : convert(cornQt * (kitchen?.shelledLbPerLiquidQt ?? LB_PER_LIQUID_QT), 'Lb', 'Kg')
}

function strengthOf(facts: Facts, batch: BatchFact, plan: BatchPlan | null, potLoad: number): OwnStrength | null {
  const cornKg = potCornKg(facts, plan, potLoad)
  const eq = alkaliInPot(facts, batch, potLoad)
  if (cornKg === null || !eq || eq.value === 0) return null
  const boil = potWalk(batch, plan, potLoad).steps.find(({ stage }) => stage.kind === 'alkali-boil')
  const value = valuesOf({ batchId: batch.batchId, potLoad, cornKg, waterL: boil?.waterL ?? null }, [
    'vinegar-titration-worked',
    'iupac-weights-2021',
  ])
  return {
    batchId: batch.batchId,
    title: batch.plan.title,
    potLoad,
    eqPerKg: value('eqPerKg', wider(eq, 1 / cornKg), 'EqPerKg', 0.001),
    ...(boil?.waterL && { eqPerL: value('eqPerL', wider(eq, 1 / boil.waterL), 'EqPerL', 0.001) }),
  }
}
