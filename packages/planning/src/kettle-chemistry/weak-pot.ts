/**
 * A pot whose hulls do not slip, answered from the book: with numbers where its ash was titrated and a cup of it weighed,
 * else in the same order without. Then whether enough has slipped for what the corn is for.
 */
import type { AlkaliLotFact, Facts } from '@crib/journal'
import { convert, type Reckoned, type Sentence } from '@crib/science'
import { type WeakAshInput, weakAshAdvice } from '../batch/ash-advice.ts'
import { type PotWalk, potCornLiquidQt } from '../batch/kettle-walk.ts'
import { type NoSlipCause, noSlipCauses } from '../batch/no-slip-causes.ts'
import type { BatchPlan } from '../batch/plan.ts'
import { stoodOpenMonths } from '../batch/rub.ts'
import { WANTED_FRACTION } from '../batch/slip-forecast.ts'
import { say } from '../shared/say.ts'
import { testedStrength } from './tested-lot.ts'
import { weakLotAdvice } from './weak-lot.ts'

export interface WeakPot {
  readonly facts: Facts
  readonly plan: BatchPlan | null
  readonly walk: PotWalk
  /** The ash in the pot. */
  readonly lot: AlkaliLotFact
  readonly nowMs: number
  /** YYYY-MM-DD */
  readonly today: string
  readonly isSoftening: boolean
}

export interface WeakPotAdvice {
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
  readonly judged: 'weak' | 'unknown'
  /** What keeps numbers away: a titration with its steep, the weight of a cup, the water in the pot. */
  readonly lacks: readonly ('titration' | 'cup' | 'water')[]
}

/** Null before the boil. */
export function weakPotAdvice({ facts, plan, walk, lot, nowMs, today, isSoftening }: WeakPot): WeakPotAdvice | null {
  const { seen } = walk
  if (seen.boilAtMs === undefined) return null
  const last = seen.rubs.at(-1)
  const openMonths = stoodOpenMonths(lot, today)
  const recordLot = plan?.input.alkaliLot?.slipMin === undefined ? undefined : plan.input.alkaliLot
  const lbPerLiquidQt = facts.kitchen?.shelledLbPerLiquidQt
  const input: WeakAshInput = {
    lotName: lot.name,
    dryCornLiquidQt: potCornLiquidQt(plan, walk.potLoad) ?? 1,
    ashSoFarCups: seen.alkaliCups,
    boiledMin: ((last?.atMs ?? nowMs) - seen.boilAtMs) / 60_000,
    slippedCount: last?.slippedCount ?? 0,
    rubbedCount: last?.ofCount ?? 1,
    isSoftening,
    ...(recordLot && { recordLotName: recordLot.name }),
    ...(openMonths !== undefined && { stoodOpenMonths: openMonths }),
    ...(lbPerLiquidQt !== undefined && { lbPerLiquidQt }),
  }
  const tested = testedStrength(lot)
  const gPerCup = cupOf(lot)
  const waterL = boilWaterL(walk)
  if (!tested || gPerCup === undefined || waterL === undefined) {
    const lacks = [
      ...(tested ? [] : (['titration'] as const)),
      ...(gPerCup === undefined ? (['cup'] as const) : []),
      ...(waterL === undefined ? (['water'] as const) : []),
    ]
    return { ...weakAshAdvice(input), lacks }
  }
  return {
    ...weakLotAdvice({
      ...input,
      lotEqPerKg: tested.strength.eqPerKg,
      hydroxideFraction: tested.strength.hydroxideFraction,
      gPerCup,
      waterL: waterL + seen.toppedUpL,
      ...recordOf(facts, recordLot?.name),
    }),
    lacks: [],
  }
}

function cupOf(lot: AlkaliLotFact): number | undefined {
  return lot.tests.findLast(({ gPerCup }) => gPerCup !== undefined)?.gPerCup
}

/** The lot that worked, where it too was titrated and a cup of it weighed. */
function recordOf(facts: Facts, name: string | undefined) {
  const lot = Object.values(facts.alkaliLots).findLast((each) => each.name === name)
  const tested = lot && testedStrength(lot)
  const gPerCup = lot && cupOf(lot)
  const cupsPerLiquidQt = lot?.judgements.findLast((each) => each.cupsPerLiquidQt !== undefined)?.cupsPerLiquidQt
  if (!tested || gPerCup === undefined || cupsPerLiquidQt === undefined) return {}
  return { record: { eqPerKg: tested.strength.eqPerKg.value, gPerCup, cupsPerLiquidQt } }
}

/** Causes to look at in this pot, with what the book already shows of it first. */
export function whyNoSlip(
  { facts: { kitchen }, plan, walk, lot, nowMs, today }: Omit<WeakPot, 'isSoftening'>,
  rangeLowMin: number,
): readonly NoSlipCause[] {
  const { boilAtMs } = walk.seen
  const openMonths = stoodOpenMonths(lot, today)
  const tested = testedStrength(lot)
  const cornQt = potCornLiquidQt(plan, walk.potLoad)
  const waterL = boilWaterL(walk)
  return noSlipCauses({
    alkali: lot.alkali,
    judged: lot.judged,
    rangeLowMin,
    ...(openMonths !== undefined && { stoodOpenMonths: openMonths }),
    ...(tested && { hydroxideFraction: tested.strength.hydroxideFraction }),
    ...(kitchen?.elevationM !== undefined && { elevationFt: convert(kitchen.elevationM, 'M', 'Ft') }),
    ...(plan && { cornType: plan.input.cornType, ...(plan.input.hull && { hull: plan.input.hull }) }),
    ...(cornQt !== null &&
      waterL !== undefined && { waterToCornRatio: convert(waterL + walk.seen.toppedUpL, 'L', 'LiquidQt') / cornQt }),
    ...(boilAtMs !== undefined && { boiledMin: (nowMs - boilAtMs) / 60_000 }),
  })
}

function boilWaterL(walk: PotWalk): number | undefined {
  return walk.steps.find(({ stage }) => stage.kind === 'alkali-boil')?.waterL
}

/** Whether so many slipped are enough for what the corn is for. Grinding forgives: some hull is welcome there. */
export function enoughSlipped(
  { slippedCount, ofCount }: { readonly slippedCount: number; readonly ofCount: number },
  use: keyof typeof WANTED_FRACTION,
): { readonly isEnough: boolean; readonly sentences: readonly Sentence[] } {
  const isEnough = slippedCount / ofCount >= WANTED_FRACTION[use] - 1e-9
  return { isEnough, sentences: isEnough && use === 'ground' ? [say('kettle:slip-enough-to-grind')] : [] }
}
