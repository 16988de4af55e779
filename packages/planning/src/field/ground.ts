/** The ground of a plot as it is drawn: what was sown there, else what is planned, else its bare sides. */
import type { PlantingFact, PlotFact } from '@crib/journal'
import { ceilCount } from '@crib/science'
import type { PlannedField } from './planned-field.ts'

export interface PlotGround {
  readonly from: 'sown' | 'planned' | 'bare'
  /** Along and across the rows. [m] */
  readonly lengthM: number
  readonly widthM: number
  readonly areaM2: number
  /** 0 where only the sides are known. */
  readonly rowsCount: number
  readonly perRowCount: number
  readonly rowSpacingM: number
  readonly inRowSpacingM: number
  readonly pattern: 'rows' | 'hills'
  /** Clockwise from north. [°] */
  readonly rowsBearingDeg?: number
}

type Sides = Pick<PlotFact, 'lengthM' | 'widthM' | 'rowsBearingDeg'>

/** Null where neither sides, nor rows with their spacing, nor a plan were told. */
export function groundOfPlot(plot: Sides, told: Told): PlotGround | null {
  const ground = sidesOfPlot(plot, told)
  return ground && { ...ground, areaM2: ground.lengthM * ground.widthM }
}

interface Told {
  readonly planting?: PlantingFact | undefined
  readonly planned?: PlannedField | null
}

function sidesOfPlot(plot: Sides, { planting, planned }: Told): Omit<PlotGround, 'areaM2'> | null {
  const { lengthM, widthM, rowsBearingDeg } = plot
  const north = rowsBearingDeg === undefined ? {} : { rowsBearingDeg }
  const sown = planting && sownGround(planting, plot)
  if (sown) return { from: 'sown', ...sown, ...north }
  if (planned && !planting) {
    const { block, input } = { block: planned.plan.block, input: planned.input }
    const { rowsCount, perRowCount } = block
    const { rowSpacingM, inRowSpacingM, pattern } = input
    const sides = { lengthM: block.lengthM, widthM: block.widthM }
    return { from: 'planned', ...sides, rowsCount, perRowCount, rowSpacingM, inRowSpacingM, pattern, ...north }
  }
  if (lengthM === undefined || widthM === undefined) return null
  const none = { rowsCount: 0, perRowCount: 0, rowSpacingM: 0, inRowSpacingM: 0, pattern: 'rows' } as const
  return { from: 'bare', lengthM, widthM, ...none, ...north }
}

function sownGround(
  planting: PlantingFact,
  plot: Sides,
): Omit<PlotGround, 'from' | 'areaM2' | 'rowsBearingDeg'> | null {
  const { rowsCount, rowSpacingM, inRowSpacingM, pattern, hillsCount, kernelsSownCount } = planting
  if (rowsCount === undefined || rowSpacingM === undefined || inRowSpacingM === undefined) return null
  const widthM = rowsCount * rowSpacingM
  // Kernels may lie closer than plants: in rows the places follow from the length where it was told.
  const places = pattern === 'hills' ? hillsCount : kernelsSownCount
  const perRowCount =
    pattern === 'rows' && plot.lengthM !== undefined
      ? Math.max(1, Math.round(plot.lengthM / inRowSpacingM))
      : places === undefined
        ? null
        : ceilCount(places / rowsCount)
  if (perRowCount === null) return null
  const lengthM = pattern === 'rows' && plot.lengthM !== undefined ? plot.lengthM : perRowCount * inRowSpacingM
  return { lengthM, widthM, rowsCount, perRowCount, rowSpacingM, inRowSpacingM, pattern }
}
