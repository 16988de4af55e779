/**
 * What a pot and a lot of corn yielded by the keeper's own scales: hominy for dry corn, and where the dry matter went.
 * Leaves out: hominy nobody weighed at the kettle (batch/own-records.ts counts jars and bags).
 */
import type { BatchFact, Facts } from '@crib/journal'
import type { CalcResult, Reckoned } from '@crib/science'
import { HOMINY_LB_PER_LIQUID_QT } from '../batch/corn.ts'
import { plannedInputs, planOfBatch } from '../batch/planned-batch.ts'
import { LB_PER_LIQUID_QT } from '../shared/corn-measure.ts'
import { cookBalanceCalc } from './cook-balance.calc.ts'
import { valuesOf } from './fields.ts'
import { potCornKg } from './own-strengths.ts'
import { hominyWeighed, tailsWeighed } from './pot-tails.ts'

/** Where one pot's dry matter went; null before its hominy was weighed, or without a plan that tells its corn. */
export function potBalance(facts: Facts, batch: BatchFact, potLoad: number): CalcResult | null {
  const hominy = hominyWeighed(batch, potLoad)
  const cornKg = cornOfPot(facts, batch, potLoad)
  if (!hominy || cornKg === null) return null
  const cornWetFraction = moistureOf(facts, cornLotOf(batch))
  return cookBalanceCalc.run({
    cornKg,
    hominyKg: hominy.massKg,
    tailsKg: tailsWeighed(batch, potLoad).removedKg,
    ...(cornWetFraction !== undefined && { cornWetFraction }),
    ...(hominy.wetFraction !== undefined && { hominyWetFraction: hominy.wetFraction }),
  })
}

export interface WeighedYield {
  readonly batchId: string
  readonly cornLotId?: string
  /** Wet hominy for each weight of dry corn, of all pots whose hominy was weighed. [kg/kg] */
  readonly hominyPerCorn: number
}

/** One yield for each batch of which hominy was weighed; a pot whose weights contradict each other is left out. */
export function weighedYields(facts: Facts): readonly WeighedYield[] {
  return Object.values(facts.batches).flatMap((batch) => {
    const pots = [
      ...new Set(batch.cook.flatMap(({ seen, potLoad }) => (seen.type === 'hominy-weighed' ? [potLoad] : []))),
    ]
    const weighed = pots.flatMap((potLoad) => {
      const cornKg = cornOfPot(facts, batch, potLoad)
      const hominyKg = hominyWeighed(batch, potLoad)?.massKg
      const isBalanced = potBalance(facts, batch, potLoad)?.ok === true
      return cornKg === null || hominyKg === undefined || !isBalanced ? [] : [{ cornKg, hominyKg }]
    })
    const cornKg = weighed.reduce((sum, pot) => sum + pot.cornKg, 0)
    if (cornKg === 0) return []
    const cornLotId = cornLotOf(batch)
    const hominyPerCorn = weighed.reduce((sum, { hominyKg }) => sum + hominyKg, 0) / cornKg
    return [{ batchId: batch.batchId, hominyPerCorn, ...(cornLotId !== undefined && { cornLotId }) }]
  })
}

export interface LotYield {
  /** Mean over the batches of this corn lot; low and high are the least and most. [kg/kg, as a count] */
  readonly hominyPerCorn: Reckoned
  /** How far one batch strays from the mean; absent for a single one. [kg/kg, as a count] */
  readonly spread?: Reckoned
  readonly batchesCount: number
}

/** The keeper's own yield of one corn lot; null before a batch of it was weighed. */
export function lotYield(facts: Facts, cornLotId: string): LotYield | null {
  const own = weighedYields(facts)
    .filter((each) => each.cornLotId === cornLotId)
    .map(({ hominyPerCorn }) => hominyPerCorn)
  if (own.length === 0) return null
  const value = valuesOf({ cornLotId, batchesCount: own.length }, [])
  const record = { basis: 'own-record', sourceKeys: [] } as const
  const range = { value: meanOf(own), low: Math.min(...own), high: Math.max(...own) }
  return {
    hominyPerCorn: value('ownHominyPerCorn', range, 'Count', 0.01, record),
    ...(own.length > 1 && {
      spread: value('ownYieldSpread', straying(own), 'Count', 0.01, record),
    }),
    batchesCount: own.length,
  }
}

function meanOf(all: readonly number[]): number {
  return all.reduce((sum, each) => sum + each, 0) / all.length
}

/** Standard deviation of a sample. */
function straying(all: readonly number[]): number {
  const mean = meanOf(all)
  return Math.sqrt(all.reduce((sum, each) => sum + (each - mean) ** 2, 0) / (all.length - 1))
}

/** The same by volume, as plans reckon: hominy drained, for one volume of dry corn. */
export function yieldByVolume(hominyPerCorn: number, lbPerLiquidQt: number = LB_PER_LIQUID_QT): number {
  return (hominyPerCorn * lbPerLiquidQt) / HOMINY_LB_PER_LIQUID_QT
}

function cornOfPot(facts: Facts, batch: BatchFact, potLoad: number): number | null {
  const outcome = planOfBatch(batch)
  return potCornKg(facts, outcome?.kind === 'planned' ? outcome : null, potLoad)
}

/** The lot a batch is of; a batch of several is of none. */
export function cornLotOf(batch: BatchFact): string | undefined {
  const planned = plannedInputs(batch)?.cornLotId
  return planned ?? (batch.cornUsed.length === 1 ? batch.cornUsed[0]?.lotId : undefined)
}

function moistureOf({ cornLots }: Facts, lotId: string | undefined): number | undefined {
  if (lotId === undefined) return undefined
  return cornLots[lotId]?.moistureTests.findLast(({ wetFraction }) => wetFraction !== undefined)?.wetFraction
}
