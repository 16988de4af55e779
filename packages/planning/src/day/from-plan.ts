/** A day laid out from a batch plan. Minutes without a record are common practice and named as such. */
import { lidWaitRule, ventRule } from '@crib/guidance'
import { ceilCount } from '@crib/science'
import type { CannerTimings, JarSize } from '../batch/input.ts'
import type { BatchPlan } from '../batch/plan.ts'
import { planValue } from '../batch/plan.ts'
import type { Stage } from '../batch/stages.ts'
import { say } from '../shared/say.ts'
import type { DayCanner, DayInput, DayPotLoad, DayStage } from './day-input.ts'
import { type DayPlan, dayPlan } from './day-plan.ts'

/** Laying out, carrying water, lighting the fire; washing up and putting away. [min]  common practice, no source */
export const SET_UP_MIN = 30
export const CLEAN_UP_MIN = 30
/** Filling, wiping and lidding the jars of one load. [min]  common practice, no source */
const FILL_MIN = 15

/** One load where the canner has no own timings. [min]  common practice; cool-down of heavy canners @source pnw-421 */
export function bookTimings(jarSize: JarSize): CannerTimings {
  return { heat: 20, comeUp: 8, coolToZero: jarSize === 'quart' ? 45 : 30, unload: 5, reload: 10 }
}

/** What the clock counts: the whole work, or the canners alone once the hominy is hot and the first jars are filled. */
export type DayCounts = 'whole' | 'canners'

export interface DayWish {
  readonly clock: DayInput['clock']
  readonly counts?: DayCounts
  readonly peopleCount?: number
  readonly setUpMin?: number
  readonly cleanUpMin?: number
  readonly dayLimitMin?: number
}

/** The day of a planned batch: pots, canners and people, with its range from the shortest to the longest stages. */
export function dayForPlan(plan: BatchPlan, wish: DayWish): DayPlan {
  const input = (pick: Pick) => dayInput(plan, wish, pick)
  const day = dayPlan({
    middle: input('middle'),
    low: input('low'),
    high: input('high'),
    ...(wish.dayLimitMin !== undefined && { dayLimitMin: wish.dayLimitMin }),
  })
  return wish.counts === 'canners' ? { ...day, reasons: [say('season:canners-alone'), ...day.reasons] } : day
}

type Pick = 'low' | 'middle' | 'high'

function dayInput(plan: BatchPlan, wish: DayWish, pick: Pick): DayInput {
  const isCannersAlone = wish.counts === 'canners'
  const edgeMin = isCannersAlone ? { setUp: 0, cleanUp: 0 } : { setUp: SET_UP_MIN, cleanUp: CLEAN_UP_MIN }
  const { peopleCount, setUpMin = edgeMin.setUp, cleanUpMin = edgeMin.cleanUp, clock } = wish
  const jars = plan.jars
  const potLoads = isCannersAlone ? [] : plan.kettle.potLoads
  const cornQt = potLoads.reduce((sum, { cornLiquidQt }) => sum + cornLiquidQt, 0)
  const jarCount = ceilCount(jars ? (planValue(plan, 'jars')?.value ?? 0) : 0)
  const boil = planValue(plan, 'alkaliBoilMin')!
  const alkaliMin = pick === 'middle' ? boil.value : pick === 'low' ? boil.low! : boil.high!
  const timesByKind = new Map(plan.kettle.water.map(({ stageKind, timesCount }) => [stageKind, timesCount]))
  return {
    clock,
    setUpMin,
    cleanUpMin,
    ...(peopleCount !== undefined && { peopleCount }),
    potLoads: potLoads.map(
      ({ number, potName, cornLiquidQt }): DayPotLoad => ({
        number,
        potName,
        jarCount: (jarCount * cornLiquidQt) / cornQt,
        stages: plan.kettle.stages.flatMap((stage) =>
          dayStage(
            stage,
            pick,
            alkaliMin,
            plan.input.waterRecord ? (timesByKind.get(stage.kind) ?? null) : stage.timesCount,
          ),
        ),
      }),
    ),
    canners:
      jars?.processMin === undefined
        ? []
        : plan.input.canners.map((canner) => dayCanner(canner, plan, jars.processMin!, isCannersAlone ? 0 : FILL_MIN)),
    rounds: jars?.processMin === undefined ? [] : jars.rounds,
  }
}

/** A stage in minutes; one the own water record leaves out is left out, unless it takes no water. */
function dayStage(stage: Stage, pick: Pick, alkaliMin: number, timesCount: number | null): DayStage[] {
  const times = timesCount ?? (stage.waterToCornRatio > 0 ? 0 : stage.timesCount)
  if (times === 0) return []
  const each =
    stage.kind === 'alkali-boil'
      ? alkaliMin
      : pick === 'low'
        ? stage.lowMin
        : pick === 'high'
          ? stage.highMin
          : (stage.lowMin + stage.highMin) / 2
  return [
    {
      id: stage.id,
      title: stage.title,
      minutes: times * (stage.heatUpMin + each),
      needsHands: stage.needsHands,
      canWaitAfter: stage.waits !== 'not',
      usesPot: stage.kind !== 'sort-dry',
      isHotPack: stage.isHotPack,
    },
  ]
}

/** With the canners alone the first jars are filled already, and readying for the next load holds the filling of its jars. */
function dayCanner(
  canner: BatchPlan['input']['canners'][number],
  plan: BatchPlan,
  processMin: number,
  fillMin: number,
): DayCanner {
  const own = canner.timingsMin ?? bookTimings(plan.jars?.jarSize ?? 'quart')
  return {
    name: canner.name,
    timings: {
      fill: fillMin,
      heat: own.heat,
      vent: ventRule().figure.value,
      comeUp: own.comeUp,
      process: processMin,
      coolToZero: own.coolToZero,
      lidWait: lidWaitRule().figure.value,
      unload: own.unload,
      reload: own.reload,
    },
  }
}
