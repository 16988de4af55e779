/** Will a plot's corn cross this year: its neighbours and its own silk as the book tells them. */
import type { PlantingFact, PlotFact } from '@crib/journal'
import { dayNumber } from './days.ts'
import { type IsolationInput, type IsolationOutcome, isolation } from './isolation.ts'
import { halfSeenOn } from './season-of-planting.ts'

/** Other corn told of for a year. */
export function neighboursOf(plot: Pick<PlotFact, 'neighbours'>, seasonYear: number): PlotFact['neighbours'] {
  return plot.neighbours.filter((one) => one.seasonYear === seasonYear)
}

export interface PlotCrossing {
  readonly seasonYear: number
  readonly planting?: PlantingFact | undefined
  /** Where the wind mostly comes from, clockwise from north. [°] */
  readonly windFromDeg?: number
  /** To try. [rows] */
  readonly borderRowsCount?: number
}

/** The crossing band of a plot; refused, with what to do, where no neighbour is told of or one stands in the same plot. */
export function crossingOfPlot(plot: PlotFact, told: PlotCrossing): IsolationOutcome {
  const { planting, seasonYear, windFromDeg, borderRowsCount } = told
  const silk = planting && halfSeenOn(planting.silks)
  const { lengthM, widthM } = plot
  const input: IsolationInput = {
    neighbours: neighboursOf(plot, seasonYear).map(({ name, distanceM, bearingDeg, tasselledOn, wouldShow }) => ({
      name,
      distanceM,
      ...(bearingDeg !== undefined && { bearingDeg }),
      ...(tasselledOn !== undefined && { halfTasselDay: dayNumber(tasselledOn)! }),
      ...(wouldShow !== undefined && { wouldShow }),
    })),
    ...(silk && { ownHalfSilkDay: dayNumber(silk)! }),
    ...(lengthM !== undefined && { plotLengthM: lengthM }),
    ...(widthM !== undefined && { plotWidthM: widthM }),
    ...(planting?.rowSpacingM !== undefined && { rowSpacingM: planting.rowSpacingM }),
    ...(windFromDeg !== undefined && { windFromDeg }),
    ...(borderRowsCount !== undefined && { borderRowsCount }),
  }
  return isolation(input)
}
