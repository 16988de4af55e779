/** What a field sheet says beside its plan: plot, corn, and the other corn of that year. */
import type { PlotFact } from '@crib/journal'
import type { Reckoned } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import type { PlannedField } from './planned-field.ts'
import { neighboursOf } from './plot-crossing.ts'

export interface FieldSheetBeside {
  readonly plot: string
  /** ISO 8601. */
  readonly date: string
  readonly cornName: string
  readonly rowsBearingDeg?: number
  readonly neighbours: readonly {
    readonly name: string
    readonly distance: Reckoned
    readonly bearingDeg?: number
    readonly halfTasselOn?: string
  }[]
}

/** @param today ISO 8601: the day it is printed. */
export function fieldSheetBeside(plot: PlotFact, planned: PlannedField, today: string): FieldSheetBeside {
  const { rowsBearingDeg } = plot
  return {
    plot: plot.name,
    date: today,
    cornName: planned.cornName,
    ...(rowsBearingDeg !== undefined && { rowsBearingDeg }),
    neighbours: neighboursOf(plot, planned.seasonYear).map(({ name, distanceM, bearingDeg, tasselledOn }) => ({
      name,
      distance: reckon({ id: 'distance', value: distanceM, unit: 'M', rounding: nearest(1), basis: 'own-record' }),
      ...(bearingDeg !== undefined && { bearingDeg }),
      ...(tasselledOn !== undefined && { halfTasselOn: tasselledOn }),
    })),
  }
}
