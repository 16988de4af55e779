/**
 * The walk at the kettle, read from the book: which step of which pot-load is done, what was seen, and how much water.
 * Leaves out: what the keeper does next by clock (day/) and every word.
 */
import type { BatchFact } from '@crib/journal'
import { convert, type Quantity, type Reckoned } from '@crib/science'
import type { BatchPlan } from './plan.ts'
import { WATER_TO_CORN_RATIO } from './pots.ts'
import { builtInStages, type Stage } from './stages.ts'

export interface WalkStep {
  /** The stage's id, with a running number where it is done several times: `re-boil-2`. Notes are written under it. */
  readonly stepId: string
  readonly stage: Stage
  readonly number: number
  readonly ofCount: number
  readonly begunAtMs?: number
  readonly doneAtMs?: number
  /** Written down. [L] */
  readonly waterL?: number
  /** As planned for this pot-load. [US gal] */
  readonly plannedWater?: Quantity
  readonly entryIds: readonly string[]
}

export interface RubSeen {
  readonly entryId: string
  readonly atMs: number
  readonly slippedCount: number
  readonly ofCount: number
}

/** What was seen at one pot. */
export interface PotSeen {
  readonly boilAtMs?: number
  readonly darkeningAtMs?: number
  readonly rubs: readonly RubSeen[]
  readonly offHeatAtMs?: number
  /** As last written down. */
  readonly waitsAs?: 'hot' | 'chilled'
  readonly hotPackAtMs?: number
  /** Alkali put in so far, all together; 0 where none of that measure was written down. */
  readonly alkaliCups: number
  readonly alkaliKg: number
  /** The lot put in last. */
  readonly alkaliLotId?: string
  readonly toppedUpL: number
}

export interface PotWalk {
  readonly potLoad: number
  readonly steps: readonly WalkStep[]
  readonly seen: PotSeen
  /** Every litre written down for this pot-load: stages, top-ups and rinses. [L] */
  readonly waterL: number
  /** The first step not done; undefined once all are. */
  readonly openStepId?: string
}

/** The walk of one pot-load. A batch whose plan cannot be read walks the common-practice list. */
export function potWalk(batch: BatchFact, plan: BatchPlan | null, potLoad: number): PotWalk {
  const notes = batch.stages.filter((note) => note.potLoad === potLoad)
  const cook = batch.cook.filter((note) => note.potLoad === potLoad)
  const rinsedL = cook.reduce((sum, { seen }) => sum + (seen.type === 'rinsed' ? seen.waterL : 0), 0)
  const seen = potSeen(cook)
  const steps = stagesOf(plan).flatMap((stage) => stepsOf(stage, plan, potLoad, notes))
  const stageL = notes.reduce((sum, { waterL = 0 }) => sum + waterL, 0)
  const open = steps.find(({ doneAtMs }) => doneAtMs === undefined)
  return { potLoad, steps, seen, waterL: stageL + seen.toppedUpL + rinsedL, ...(open && { openStepId: open.stepId }) }
}

function stagesOf(plan: BatchPlan | null): readonly Stage[] {
  return (
    plan?.kettle.stages ??
    builtInStages({
      pattern: 'common-practice',
      cornType: 'unknown',
      alkali: 'ash',
      waterToCornRatio: WATER_TO_CORN_RATIO,
    })
  )
}

function stepsOf(stage: Stage, plan: BatchPlan | null, potLoad: number, notes: BatchFact['stages']): WalkStep[] {
  const planned = timesPlanned(stage, plan)
  const isNumbered = planned > 1
  const idOf = (number: number) => (isNumbered || number > 1 ? `${stage.id}-${number}` : stage.id)
  let ofCount = planned
  // One more rinse than planned is the keeper's to give.
  while (ofCount > 0 && notes.some(({ stageId }) => stageId === idOf(ofCount + 1))) ofCount += 1
  const plannedWater = waterFor(stage, plan, potLoad)
  return Array.from({ length: ofCount }, (_, index): WalkStep => {
    const stepId = idOf(index + 1)
    const own = notes.filter(({ stageId }) => stageId === stepId)
    const begunAtMs = instantOf(own.find(({ what }) => what === 'begun'))
    const doneAtMs = instantOf(own.findLast(({ what }) => what === 'done'))
    const waterL = own.reduce((sum, note) => sum + (note.waterL ?? 0), 0)
    return {
      stepId,
      stage,
      number: index + 1,
      ofCount,
      ...(begunAtMs !== undefined && { begunAtMs }),
      ...(doneAtMs !== undefined && { doneAtMs }),
      ...(own.some((note) => note.waterL !== undefined) && { waterL }),
      ...(plannedWater && { plannedWater }),
      entryIds: own.map(({ at }) => at.entryId),
    }
  })
}

/** As the day is planned: an own water record says how often a stage with water is done; one it leaves out is left out. */
function timesPlanned(stage: Stage, plan: BatchPlan | null): number {
  if (!plan?.input.waterRecord || stage.waterToCornRatio === 0) return stage.timesCount
  return plan.kettle.water.find(({ stageKind }) => stageKind === stage.kind)?.timesCount ?? 0
}

/** The plan's water is for its largest pot-load; a smaller one takes its share. */
function waterFor(stage: Stage, plan: BatchPlan | null, potLoad: number): Quantity | null {
  const planned = plan?.kettle.water.find(({ stageKind }) => stageKind === stage.kind)
  const load = plan?.kettle.potLoads.find(({ number }) => number === potLoad)
  if (!plan || !planned || !load) return null
  const largestQt = Math.max(...plan.kettle.potLoads.map(({ cornLiquidQt }) => cornLiquidQt))
  const value = (planned.eachLiquidGal * load.cornLiquidQt) / largestQt
  return { value: Math.round(value * 100) / 100, unit: 'LiquidGal' }
}

function potSeen(cook: BatchFact['cook']): PotSeen {
  const first = (type: string) => instantOf(cook.find(({ seen }) => seen.type === type))
  const additions = cook.flatMap(({ seen }) => (seen.type === 'alkali-added' ? [seen] : []))
  const sum = (amounts: readonly (number | undefined)[]) => amounts.reduce<number>((all, each) => all + (each ?? 0), 0)
  const offHeat = cook.find(({ seen }) => seen.type === 'off-heat')
  const lastOff = cook.findLast(({ seen }) => seen.type === 'off-heat')?.seen
  const alkaliLotId = additions.at(-1)?.alkaliLotId
  const times = {
    boilAtMs: first('boil'),
    darkeningAtMs: first('darkening'),
    offHeatAtMs: instantOf(offHeat),
    hotPackAtMs: first('hot-pack-ready'),
  }
  return {
    ...known(times),
    ...(lastOff?.type === 'off-heat' && { waitsAs: lastOff.then }),
    rubs: cook.flatMap(({ seen, at }) =>
      seen.type === 'rubbed'
        ? [
            {
              entryId: at.entryId,
              atMs: Date.parse(at.instant),
              slippedCount: seen.slippedCount,
              ofCount: seen.ofCount,
            },
          ]
        : [],
    ),
    alkaliCups: sum(additions.map(({ cups }) => cups)),
    alkaliKg: sum(additions.map(({ massKg }) => massKg)),
    ...(alkaliLotId !== undefined && { alkaliLotId }),
    toppedUpL: sum(cook.map(({ seen }) => (seen.type === 'topped-up' ? seen.waterL : 0))),
  }
}

function known<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as never
}

function instantOf(note: { readonly at: { readonly instant: string } } | undefined): number | undefined {
  return note && Date.parse(note.at.instant)
}

/** The ids of what a plan doses, one of which every plan has. */
const DOSE_IDS = ['ashCups', 'calciumHydroxideG', 'sodiumHydroxideOz', 'bakingSodaTbsp']

/** The alkali for one pot-load: its share, by dry corn, of what the plan says for the whole batch. Null without a plan. */
export function potDose(plan: BatchPlan | null, potLoad: number): Reckoned | null {
  const whole = plan?.values.find(({ id }) => DOSE_IDS.includes(id))
  const loads = plan?.kettle.potLoads ?? []
  const cornQt = loads.find(({ number }) => number === potLoad)?.cornLiquidQt
  if (!whole || cornQt === undefined) return null
  const share = cornQt / loads.reduce((sum, load) => sum + load.cornLiquidQt, 0)
  return {
    ...whole,
    value: whole.value * share,
    ...(whole.low !== undefined && { low: whole.low * share }),
    ...(whole.high !== undefined && { high: whole.high * share }),
    inputs: { ...whole.inputs, dryCornLiquidQt: cornQt, potLoad },
  }
}

/** What a pot-load has taken of the corn. [liquid qt]  Null without a plan. */
export function potCornLiquidQt(plan: BatchPlan | null, potLoad: number): number | null {
  return plan?.kettle.potLoads.find(({ number }) => number === potLoad)?.cornLiquidQt ?? null
}

/** What a pot-load that went off the heat says of its ash lot. Null without a boil, an end, or cups of ash. */
export function lotWorked(
  { boilAtMs, offHeatAtMs, alkaliCups }: PotSeen,
  cornLiquidQt: number | null,
): { readonly cupsPerLiquidQt: number; readonly slipMin: number } | null {
  if (boilAtMs === undefined || offHeatAtMs === undefined || !cornLiquidQt || alkaliCups === 0) return null
  const slipMin = Math.round((offHeatAtMs - boilAtMs) / 60_000)
  if (!(slipMin > 0)) return null
  return { cupsPerLiquidQt: Math.round((alkaliCups / cornLiquidQt) * 100) / 100, slipMin }
}

/** A dose as an entry keeps it: cups of ash, else kilograms. A spoon measure has no weight here and is left to the note. */
export function doseInEntry({ value, unit }: Quantity): { readonly cups?: number; readonly massKg?: number } {
  if (unit === 'Cup') return { cups: value }
  return unit === 'G' || unit === 'Oz' || unit === 'Kg' || unit === 'Lb' ? { massKg: convert(value, unit, 'Kg') } : {}
}
