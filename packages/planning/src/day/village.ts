/**
 * Many households, one kitchen: corn to shell, loads by canner, one card each, the day by clock, lids, salt, records.
 * Household names stay in the kitchen's book. Leaves out: who gets which load (journal).
 */

import { lidWaitRule, ventRule } from '@crib/guidance'
import type { Reckoned, Sentence } from '@crib/science'
import { batchPlan } from '../batch/batch-plan.ts'
import type { BatchPlanInput, HullingAlkali, JarSize, PlanCanner } from '../batch/input.ts'
import { type BatchPlan, type BatchRefusal, planValue } from '../batch/plan.ts'
import { nearest, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { type ElevationKnownBy, pressureValue, setPressureFor } from '../shared/set-pressure.ts'
import { type DayPlan, dayPlan } from './day-plan.ts'
import { bookTimings } from './from-plan.ts'
import { FIRST_OFFER, loadRecordValues, SHARED_TABLE, SHARED_WORK } from './shared-kitchen.ts'

export interface VillageInput {
  readonly householdsCount: number
  readonly jarsPerHouseholdCount: number
  readonly jarSize: JarSize
  readonly cornType: BatchPlanInput['cornType']
  readonly alkali: HullingAlkali
  /** Each household has put by its own seed before its corn came here. */
  readonly isSeedPutByAtHome: boolean
  /** Every household named here has read the standing of a jar plan. */
  readonly isStandingRead: boolean
  readonly sortedOutDryFraction: number
  readonly spareLidFraction: number
  readonly elevationFt: number
  readonly elevationKnownBy: ElevationKnownBy
  readonly canners: readonly PlanCanner[]
  readonly startClockMin: number
  readonly peopleCount?: number
}

export interface VillagePlan {
  readonly kind: 'planned'
  readonly plan: BatchPlan
  /** Null while the jar plan is closed. */
  readonly day: DayPlan | null
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

const FROM_PLAN = [
  'dryCornLiquidQt',
  'cleanCornLb',
  'cornToShellLb',
  'jars',
  'rounds',
  'loads',
  'lids',
  'saltTsp',
  'saltTbsp',
  'saltCups',
  'processMin',
]

/** The kitchen's day, or what stops it. Clock times leave hulling out: the hominy is hot and ready. */
export function villageDay(input: VillageInput): VillagePlan | BatchRefusal {
  if (!input.isSeedPutByAtHome) {
    return {
      kind: 'refused',
      refused: 'seed-line-unanswered',
      why: [say('seed:first'), say('season:seed-at-home')],
      askWhom: [],
    }
  }
  const plan = batchPlan(planInput(input))
  if (plan.kind === 'refused') return plan
  const first = [say('seed:first'), say('season:seed-is-at-home'), FIRST_OFFER]
  const base = plan.values.filter(({ id }) => FROM_PLAN.includes(id))
  if (!plan.jars || plan.jars.rounds.length === 0) {
    const closed = plan.jarsClosed
      ? [...plan.jarsClosed.why, ...plan.jarsClosed.askWhom]
      : plan.jars
        ? plan.jars.warnings
        : []
    return {
      kind: 'planned',
      plan,
      day: null,
      values: base,
      reasons: [...first, ...SHARED_WORK],
      warnings: [...closed, ...SHARED_TABLE],
    }
  }
  const day = dayPlan({ middle: dayInput(input, plan, plan.jars.rounds) })
  return {
    kind: 'planned',
    plan,
    day,
    values: [
      ...base,
      ...loadValues(input, plan.jars.rounds),
      ...loadRecordValues(plan),
      roundLength(input, plan),
      ...day.values.filter(({ id }) => id !== 'startClockMin'),
    ],
    reasons: [
      ...first,
      ...plan.jars.standing,
      say('season:own-card', { count: input.canners.length }),
      say('season:loads-even'),
      say('season:load-records'),
      ...SHARED_WORK,
      ...day.reasons.slice(0, 1),
    ],
    warnings: [...plan.warnings.filter(({ key }) => key.startsWith('guidance:')), ...SHARED_TABLE],
  }
}

function planInput(input: VillageInput): BatchPlanInput {
  const { householdsCount, jarsPerHouseholdCount, canners, cornType, alkali, jarSize } = input
  return {
    from: { kind: 'jars', jarCount: householdsCount * jarsPerHouseholdCount },
    seed: { how: 'by-eye', plantingsCount: 2, places: [], isAlreadyTakenOut: true },
    cornType,
    alkali,
    pots: [],
    endings: [{ ending: 'jars', shareFraction: 1 }],
    fill: 'loose-to-headspace',
    jarSize,
    canners,
    sortedOutDryFraction: input.sortedOutDryFraction,
    spareLidFraction: input.spareLidFraction,
    elevationFt: input.elevationFt,
    elevationKnownBy: input.elevationKnownBy,
    isStandingRead: input.isStandingRead,
  }
}

type Rounds = NonNullable<BatchPlan['jars']>['rounds']

function timings({ timingsMin }: PlanCanner, plan: BatchPlan) {
  const own = timingsMin ?? bookTimings(plan.jars!.jarSize)
  return {
    ...own,
    fill: 0, // reload holds it
    vent: ventRule().figure.value,
    process: planValue(plan, 'processMin')!.value,
    lidWait: lidWaitRule().figure.value,
  }
}

function dayInput(input: VillageInput, plan: BatchPlan, rounds: Rounds) {
  return {
    clock: { from: 'start' as const, clockMin: input.startClockMin },
    setUpMin: 0,
    cleanUpMin: 0,
    potLoads: [],
    canners: input.canners.map((canner) => ({ name: canner.name, timings: timings(canner, plan) })),
    rounds,
    ...(input.peopleCount !== undefined && { peopleCount: input.peopleCount }),
  }
}

/** The longest canner's round, without reloading. [min] */
function roundLength(input: VillageInput, plan: BatchPlan): Reckoned {
  const lengths = input.canners.map((canner) => {
    const { heat, vent, comeUp, process, coolToZero, lidWait, unload } = timings(canner, plan)
    return heat + vent + comeUp + process + coolToZero + lidWait + unload
  })
  return reckon({
    id: 'roundMin',
    value: Math.max(...lengths),
    unit: 'Min',
    rounding: up(1),
    basis: 'own-record',
    inputs: { canners: input.canners.length },
  })
}

function loadValues({ canners, elevationFt, elevationKnownBy }: VillageInput, rounds: Rounds): Reckoned[] {
  const loads = rounds.flat()
  const count = (id: string, value: number, inputs: Reckoned['inputs'] = {}) =>
    reckon({ id, value, unit: 'Count', rounding: nearest(1), basis: 'project-rule', inputs })
  return [
    ...loads.map((load) => count(`load:${load.cannerName}.${load.round}`, load.jarCount)),
    ...canners.flatMap(({ name, gauges }) => {
      const found = setPressureFor(gauges[0]!, elevationFt, elevationKnownBy)
      return found.kind === 'found' ? [pressureValue(`pressure:${name}`, found, elevationFt)] : []
    }),
    count('cards', canners.length),
    count(
      'roundJars',
      rounds[0]!.reduce((sum, { jarCount }) => sum + jarCount, 0),
    ),
  ]
}
