/** A planting's own degree-days to what was seen of it: the next year's plan goes by them instead of a dent hybrid's. */
import { convert, type Reckoned } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { dayNumber } from './days.ts'
import type { DegreeDayPlan } from './degree-day-plan.ts'

/** Total from sowing to the end of a day. [°F·day] Null where the temperatures do not reach it. */
export function totalOnDay(
  { calendar }: Pick<DegreeDayPlan, 'calendar'>,
  { id, isoDay }: { readonly id: 'ownToSilk' | 'ownToRipe'; readonly isoDay: string },
): Reckoned | null {
  const step = calendar.find(({ day }) => day === dayNumber(isoDay))
  if (!step) return null
  return reckon({
    id,
    value: convert(step.totalC, 'DegreeDaysC', 'DegreeDaysF'),
    unit: 'DegreeDaysF',
    rounding: nearest(1),
    basis: 'own-record',
    sourceKeys: ['iowa-agron-541'],
  })
}
