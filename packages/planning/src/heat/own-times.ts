/** How long a canner takes to come up and to cool by itself: what is printed, and its own runs where the book has them. */
import { coolDownRule, ruleFor } from '@crib/guidance'
import type { Facts } from '@crib/journal'
import type { Reckoned } from '@crib/science'
import { runSetupOf } from '../canner/begin-run.ts'
import { runState } from '../canner/run.ts'
import { runRecords } from '../canner/run-event.ts'
import { type OwnRecord, shrinkToOwn } from '../shared/own-record.ts'
import { nearest, reckon } from '../shared/reckon.ts'

export interface OwnTime extends OwnRecord {
  readonly reckoned: Reckoned
}

export interface CannerOwnTimes {
  /** From closing the vent to pressure. */
  readonly comeUp: OwnTime
  /** From heat off to zero, nobody forcing it, in loads of this jar size. */
  readonly coolDown: OwnTime
}

const MS_PER_MIN = 60_000
/** A line tapped late gives a time no canner has. [min] Project rule. */
const BELIEVED = { comeUp: { min: 0.5, max: 60 }, coolDown: { min: 3, max: 180 } }

/** The printed time shrunk toward the own mean; both and the number of runs come along. */
export function cannerOwnTimes(
  facts: Pick<Facts, 'runs'>,
  cannerId: string,
  jarSize: 'half-pint' | 'pint' | 'quart',
): CannerOwnTimes {
  const runs = Object.values(facts.runs).filter(({ begun }) => begun.cannerId === cannerId)
  const [comeUps, coolDowns]: [number[], number[]] = [[], []]
  for (const run of runs) {
    const { marks } = runState(runSetupOf(run), runRecords(run), 0)
    const { ventClosedAtMs, firstAtPressureAtMs, heatOffAtMs, zeroAtMs } = marks
    if (ventClosedAtMs !== undefined && firstAtPressureAtMs !== undefined) {
      const min = (firstAtPressureAtMs - ventClosedAtMs) / MS_PER_MIN
      if (isBelieved(min, BELIEVED.comeUp)) comeUps.push(min)
    }
    const isForced = run.events.some(({ event }) => event.type === 'forced-cooling')
    if (!isForced && run.begun.jarSize === jarSize && heatOffAtMs !== undefined && zeroAtMs !== undefined) {
      const min = (zeroAtMs - heatOffAtMs) / MS_PER_MIN
      if (isBelieved(min, BELIEVED.coolDown)) coolDowns.push(min)
    }
  }
  const printed = ruleFor('come-up').figure
  const cool = coolDownRule(jarSize === 'quart' ? 'heavy-quart' : 'heavy-pint').figure
  return {
    comeUp: ownTime('comeUpMin', printed.high ?? printed.value, printed.sourceKeys, comeUps),
    coolDown: ownTime('coolDownMin', cool.value, cool.sourceKeys, coolDowns),
  }
}

function ownTime(id: string, printedMin: number, sourceKeys: readonly string[], own: readonly number[]): OwnTime {
  const record = shrinkToOwn(printedMin, own)
  return {
    ...record,
    reckoned: reckon({
      id,
      value: record.value,
      unit: 'Min',
      rounding: nearest(1),
      basis: own.length > 0 ? 'own-record' : 'published',
      sourceKeys,
      inputs: { printedMin, ownMeanMin: record.ownMean, recordsCount: record.recordsCount },
    }),
  }
}

function isBelieved(min: number, range: { readonly min: number; readonly max: number }): boolean {
  return min >= range.min && min <= range.max
}
