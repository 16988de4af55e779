/**
 * Plants on ground: how many stand on an area, and the block nearest to square that holds a number of them, since corn
 * is pollinated by wind and a single long row sets poorly. Each plant or hill owns its share of the ground.
 */
import { requireInRange } from '../errors.ts'
import { ceilCount } from '../reckoned.ts'

export interface Spacing {
  /** Between rows, or between rows of hills. [m] Valid: 0.1 to 5. */
  readonly rowSpacingM: number
  /** Between plants, or hills, in a row. [m] Valid: 0.02 to 5. */
  readonly inRowSpacingM: number
}

export interface Block {
  readonly rowsCount: number
  /** In each row; the last row may be shorter. [count] */
  readonly perRowCount: number
  /** Places in the block: at least as many as asked for. [count] */
  readonly placesCount: number
  /** Along the rows. [m] */
  readonly lengthM: number
  /** Across the rows. [m] */
  readonly widthM: number
  readonly areaM2: number
}

/** Four rows or more in a block.  garden-corn-spacing */
export const ROWS_FLOOR_COUNT = 4

/**
 * Places on an area at a spacing. [per m2]
 *
 * 1 / (row x in-row). Hills 42 in each way: 3556 an acre, 10 668 kernels at three a hill; 4 ft each way: 2722 an acre.
 *
 * @throws {ValidRangeError} outside the ranges named at Spacing.
 * @source none: area over the area of one place
 */
export function placesPerM2({ rowSpacingM, inRowSpacingM }: Spacing): number {
  requireSpacing({ rowSpacingM, inRowSpacingM })
  return 1 / (rowSpacingM * inRowSpacingM)
}

/**
 * The block nearest to square with at least `placesCount` places and at least so many rows.
 *
 * 240 places, rows 0.9 m, 0.25 m in the row, four rows or more: 8 rows of 30, 7.5 by 7.2 m. Of two as near to square
 * the one with fewer places to spare stands.
 *
 * @param placesCount plants or hills wanted. [count] Valid: 1 to 1e6.
 * @throws {ValidRangeError} outside the ranges named, or with fewer rows than one.
 * @source garden-corn-spacing: four rows or more in a block
 */
export function squarestBlock(placesCount: number, spacing: Spacing, atLeastRows: number = ROWS_FLOOR_COUNT): Block {
  requireInRange('placesCount', placesCount, { min: 1, max: 1e6, unit: 'places', source: 'project-rule' })
  requireInRange('atLeastRows', atLeastRows, { min: 1, max: 1000, unit: 'rows', source: 'project-rule' })
  requireSpacing(spacing)
  const { rowSpacingM, inRowSpacingM } = spacing
  // A square of side s has s/row rows of s/in-row places.
  const ideal = Math.sqrt((placesCount * inRowSpacingM) / rowSpacingM)
  const fewest = Math.floor(ideal / 1.5)
  const most = Math.ceil(ideal * 1.5)
  // Whole rows of whole places step past the square, so its neighbours are tried as well.
  const tried = Array.from({ length: most - fewest + 1 }, (_, more) => fewest + more).map((rows) => {
    const rowsCount = Math.max(rows, Math.min(atLeastRows, ceilCount(placesCount)), 1)
    const perRowCount = ceilCount(placesCount / rowsCount)
    const lengthM = perRowCount * inRowSpacingM
    const widthM = rowsCount * rowSpacingM
    const areaM2 = lengthM * widthM
    return { rowsCount, perRowCount, placesCount: rowsCount * perRowCount, lengthM, widthM, areaM2 }
  })
  const unlike = ({ lengthM, widthM }: Block): number => Math.abs(Math.log(lengthM / widthM))
  return tried.reduce((best, one) => {
    const less = unlike(one) - unlike(best)
    return less < -1e-9 || (less < 1e-9 && one.placesCount < best.placesCount) ? one : best
  })
}

function requireSpacing({ rowSpacingM, inRowSpacingM }: Spacing): void {
  requireInRange('rowSpacingM', rowSpacingM, { min: 0.1, max: 5, unit: 'm', source: 'project-rule' })
  requireInRange('inRowSpacingM', inRowSpacingM, { min: 0.02, max: 5, unit: 'm', source: 'project-rule' })
}
