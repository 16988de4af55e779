/** A planting's calendar by degree-days: how far it has come, when it silks and when it is ripe by these temperatures. */
import {
  convert,
  degreeDaysC,
  degreeDaysToStageC,
  type MaturityGroup,
  type Reckoned,
  type Sentence,
} from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { dayText } from './days.ts'
import type { DayReading } from './temperatures.ts'

export interface DegreeDayInput {
  readonly days: readonly DayReading[]
  readonly missingDays: number
  readonly plantedDay: number
  /** Own totals from sowing, where the keeper has them. [°C·day] */
  readonly ownToSilkC?: number
  readonly ownToRipeC?: number
  readonly group: MaturityGroup
}

export interface DegreeDayStep {
  readonly day: number
  /** Since sowing. [°C·day] */
  readonly totalC: number
}

export interface DegreeDayPlan {
  readonly values: readonly Reckoned[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
  readonly calendar: readonly DegreeDayStep[]
  /** Null while these temperatures have not reached it. */
  readonly silkDay: number | null
  readonly ripeDay: number | null
}

export type DegreeDayOutcome =
  | ({ readonly kind: 'told' } & DegreeDayPlan)
  | { readonly kind: 'refused'; readonly refused: string; readonly why: readonly Sentence[] }

/** The last days that say how fast it goes now. [days] */
const LATELY_DAYS = 14

export function degreeDayPlan(input: DegreeDayInput): DegreeDayOutcome {
  const { days, missingDays, plantedDay, ownToSilkC, ownToRipeC, group } = input
  const first = days[0]
  const last = days.at(-1)
  if (!first || !last || last.day < plantedDay) {
    const why = say('field:readings-end-before-sowing', { planted: dayText(plantedDay) })
    return { kind: 'refused', refused: 'readings-end-before-sowing', why: [why] }
  }
  if (first.day > plantedDay) {
    const params = { planted: dayText(plantedDay), first: dayText(first.day) }
    return { kind: 'refused', refused: 'readings-begin-late', why: [say('field:readings-begin-late', params)] }
  }
  const printed = degreeDaysToStageC(group)
  const toSilkC = ownToSilkC ?? printed.silk
  const toRipeC = ownToRipeC ?? printed.blackLayer
  if (!(toRipeC > toSilkC))
    return { kind: 'refused', refused: 'ripe-before-silk', why: [say('field:ripe-before-silk')] }

  let totalC = 0
  const calendar = days
    .filter(({ day }) => day >= plantedDay)
    .map((reading): DegreeDayStep => {
      totalC += degreeDaysC(reading)
      return { day: reading.day, totalC }
    })
  const reached = (targetC: number): number | null =>
    calendar.find((step) => step.totalC >= targetC - 1e-9)?.day ?? null
  const silkDay = reached(toSilkC)
  const ripeDay = reached(toRipeC)
  const before = calendar.at(-1 - LATELY_DAYS)
  const latelyC = (totalC - (before?.totalC ?? 0)) / Math.min(LATELY_DAYS, calendar.length)

  const stages = [
    { name: 'silk', targetC: toSilkC, day: silkDay, isOwn: ownToSilkC !== undefined, id: 'daysToSilk' },
    { name: 'ripe', targetC: toRipeC, day: ripeDay, isOwn: ownToRipeC !== undefined, id: 'daysToRipe' },
  ] as const
  return {
    kind: 'told',
    calendar,
    silkDay,
    ripeDay,
    values: [
      value('degreeDaysSoFar', convert(totalC, 'DegreeDaysC', 'DegreeDaysF'), 'DegreeDaysF', 0.5),
      value('degreeDaysLately', convert(latelyC, 'DegreeDaysC', 'DegreeDaysF'), 'DegreeDaysF', 0.1),
      value('degreeDaysToSilk', convert(toSilkC, 'DegreeDaysC', 'DegreeDaysF'), 'DegreeDaysF', 1, stages[0].isOwn),
      value('degreeDaysToRipe', convert(toRipeC, 'DegreeDaysC', 'DegreeDaysF'), 'DegreeDaysF', 1, stages[1].isOwn),
      ...stages.flatMap(({ id, day }) => (day === null ? [] : [value(id, day - plantedDay, 'Days')])),
    ],
    reasons: stages.map(({ name, targetC, day }) => stageSentence({ name, day, leftC: targetC - totalC, latelyC })),
    warnings: [
      ...(missingDays > 0 ? [say('field:days-missing', { count: missingDays })] : []),
      ...(stages.some(({ isOwn }) => !isOwn) ? [say('field:totals-of-dent')] : []),
    ],
  }
}

interface StageOfPlan {
  readonly name: 'silk' | 'ripe'
  readonly day: number | null
  readonly leftC: number
  readonly latelyC: number
}

function stageSentence({ name, day, leftC, latelyC }: StageOfPlan): Sentence {
  if (day !== null) return say(name === 'silk' ? 'field:silk-on' : 'field:ripe-on', { day: dayText(day) })
  const left = { value: Math.round(convert(leftC, 'DegreeDaysC', 'DegreeDaysF')), unit: 'DegreeDaysF' } as const
  if (!(latelyC > 0)) return say(name === 'silk' ? 'field:silk-not-yet-cold' : 'field:ripe-not-yet-cold', { left })
  const days = Math.ceil(leftC / latelyC)
  return say(name === 'silk' ? 'field:silk-not-yet' : 'field:ripe-not-yet', { left, days })
}

function value(id: string, amount: number, unit: 'DegreeDaysF' | 'Days', step = 1, isOwn = false): Reckoned {
  return reckon({
    id,
    value: amount,
    unit,
    rounding: nearest(step),
    basis: isOwn ? 'own-record' : 'computed',
    sourceKeys: isOwn ? [] : ['iowa-agron-541', 'hprcc-corn-stages'],
  })
}
