/**
 * What the book says of slipping, pot by pot: rub tests, darkening, and minutes told without counts. Ash is counted as
 * minutes at one cup to a liquid qt of corn, where cups are known. Leaves out: any forecast.
 */
import type { AlkaliLotFact, BatchFact, Facts } from '@crib/journal'
import { type Dosing, minutesAtOne, type SlipPot } from '@crib/science'
import type { CornType, Hull, HullingAlkali } from './input.ts'
import { potCornLiquidQt, potWalk } from './kettle-walk.ts'
import { plannedInputs, planOfBatch } from './planned-batch.ts'

/** Slip times in print, with ash and with calcium hydroxide. [min]  @source hominy-recipes-recomputed */
const PRINTED_MIN = { low: 20, high: 300 } as const
/** Against the middle of these, by ratio: flour slips early, popcorn and thick hulls late.  common practice, no source */
const HULL_FACTOR = { easy: 0.7, thick: 1.15, unknown: 1 } as const
/** Printed with the old directions: boil 30 min, stand 20 min.  @source so-easy-to-preserve-1999 p. 66 */
const LYE_USUAL_MIN = 40

/** By when nine in ten hulls slip, before any record. [min]  The middle of a printed range is a project rule. */
export function usualSlipMin(cornType: CornType, hull: Hull | undefined, alkali: HullingAlkali): number {
  if (alkali === 'sodium-hydroxide') return LYE_USUAL_MIN
  const kind = hull ?? (cornType === 'flour' ? 'easy' : cornType === 'popcorn' ? 'thick' : 'unknown')
  return Math.sqrt(PRINTED_MIN.low * PRINTED_MIN.high) * HULL_FACTOR[kind]
}

/** One pot as the slip model takes it, and how its alkali went in. */
export interface PotRecord {
  readonly pot: SlipPot
  readonly boilAtMs: number
  /** Cups of ash to a liquid qt of corn, by minutes since the boil; empty where cups or corn are not known. */
  readonly dosings: readonly Dosing[]
}

const MS = 60_000
/** Before the boil there is nothing to count, and the model begins at half a minute. */
const EARLIEST_MIN = 0.5

/** Null before the pot has boiled. */
export function potRecordOf(facts: Facts, batch: BatchFact, potLoad: number): PotRecord | null {
  const { seen } = potWalk(batch, null, potLoad)
  const { boilAtMs } = seen
  if (boilAtMs === undefined) return null
  const inputs = plannedInputs(batch)
  const cornLotId = inputs?.cornLotId ?? batch.cornUsed[0]?.lotId
  const alkaliLotId = seen.alkaliLotId ?? inputs?.alkaliLotId
  const corn = cornLotId === undefined ? undefined : facts.cornLots[cornLotId]
  const alkali = (alkaliLotId !== undefined && facts.alkaliLots[alkaliLotId]?.alkali) || inputs?.alkali || 'ash'
  const dosings = alkali === 'ash' ? dosingsOf(batch, potLoad, boilAtMs) : []
  const minutes = (ms: number) => Math.max(EARLIEST_MIN, minutesAtOne(dosings, (ms - boilAtMs) / MS))
  const { darkeningAtMs, offHeatAtMs } = seen
  return {
    boilAtMs,
    dosings,
    pot: {
      // A lot nobody named is a lot of its own: what it teaches stays with it.
      cornLotId: cornLotId ?? `of ${batch.batchId}`,
      alkaliLotId: alkaliLotId ?? `of ${batch.batchId}`,
      usualMin: usualSlipMin(corn?.cornType ?? inputs?.cornType ?? 'unknown', inputs?.hull, dosedAs(alkali)),
      rubs: seen.rubs
        .filter(({ atMs, slippedCount, ofCount }) => isCountable(atMs, slippedCount, ofCount, seen))
        .map(({ atMs, slippedCount, ofCount }) => ({ boiledMin: minutes(atMs), slippedCount, ofCount })),
      ...(darkeningAtMs !== undefined &&
        darkeningAtMs > boilAtMs &&
        (offHeatAtMs === undefined || darkeningAtMs <= offHeatAtMs) && { darkenedMin: minutes(darkeningAtMs) }),
    },
  }
}

/** Rubbed while it boiled; what was rubbed in the rinse says nothing of the boil. */
function isCountable(
  atMs: number,
  slippedCount: number,
  ofCount: number,
  { boilAtMs, offHeatAtMs }: { readonly boilAtMs?: number; readonly offHeatAtMs?: number },
): boolean {
  return slippedCount <= ofCount && atMs > boilAtMs! && (offHeatAtMs === undefined || atMs <= offHeatAtMs)
}

/** The bought alkalis without a printed minute of their own count as calcium hydroxide does. */
function dosedAs(alkali: AlkaliLotFact['alkali']): HullingAlkali {
  return alkali === 'potassium-hydroxide' ? 'sodium-hydroxide' : alkali === 'sodium-carbonate' ? 'baking-soda' : alkali
}

function dosingsOf(batch: BatchFact, potLoad: number, boilAtMs: number): readonly Dosing[] {
  const outcome = planOfBatch(batch)
  const cornQt = potCornLiquidQt(outcome?.kind === 'planned' ? outcome : null, potLoad)
  const additions = batch.additions.filter((addition) => addition.potLoad === potLoad)
  const lots = new Set(additions.map(({ alkaliLotId }) => alkaliLotId))
  // Cups of two lots cannot be added up without their strengths.
  if (!cornQt || lots.size !== 1 || additions.some(({ cups }) => !cups)) return []
  let cups = 0
  return additions.map((addition) => {
    cups += addition.cups!
    return { fromMin: (Date.parse(addition.at.instant) - boilAtMs) / MS, amount: cups / cornQt }
  })
}

/** Every pot of the book that tells something of slipping, but for one that is being foretold. */
export function slipPots(facts: Facts, without?: { readonly batchId: string; readonly potLoad: number }): SlipPot[] {
  const rubbed = new Set<string>()
  const pots = Object.values(facts.batches).flatMap((batch) => {
    const loads = [...new Set(batch.cook.map(({ potLoad }) => potLoad))]
    return loads.flatMap((potLoad) => {
      if (batch.batchId === without?.batchId && potLoad === without.potLoad) return []
      const record = potRecordOf(facts, batch, potLoad)
      if (!record || record.pot.rubs.length === 0) return []
      rubbed.add(batch.batchId)
      return [record.pot]
    })
  })
  return [...pots, ...toldPots(facts, rubbed, without?.batchId)]
}

/** Minutes written into the ash record without a rub test of the same batch in the book. */
function toldPots(facts: Facts, rubbed: ReadonlySet<string>, without: string | undefined): SlipPot[] {
  return Object.values(facts.alkaliLots).flatMap(({ alkaliLotId, alkali, judgements }) =>
    judgements.flatMap(({ slipMin, cornLotId, batchId, cupsPerLiquidQt, at }) => {
      if (!slipMin || (batchId !== undefined && (rubbed.has(batchId) || batchId === without))) return []
      const dosings = alkali === 'ash' && cupsPerLiquidQt ? [{ fromMin: 0, amount: cupsPerLiquidQt }] : []
      return [
        {
          cornLotId: cornLotId ?? `of ${at.entryId}`,
          alkaliLotId,
          usualMin: usualSlipMin(
            (cornLotId && facts.cornLots[cornLotId]?.cornType) || 'unknown',
            undefined,
            dosedAs(alkali),
          ),
          rubs: [],
          slippedMin: Math.max(EARLIEST_MIN, minutesAtOne(dosings, slipMin)),
        },
      ]
    }),
  )
}
