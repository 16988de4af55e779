/** Border rows in place of distance, as one state's certification rules print them. Looked up, never drawn between. */
import { requireInRange } from '../errors.ts'

/** Least distance from other corn for each count of rows. [ft]  wac-16-302-295 */
const ACRES_1_TO_20 = [
  ...[415, 395, 375, 355, 330, 310, 290, 270, 250, 230],
  ...[210, 185, 165, 145, 125, 105, 85],
] as const
const ACRES_21_AND_MORE = [415, 375, 330, 290, 250, 210, 165, 125, 85, 45] as const
/** Printed for "less than 45". [rows] */
const LARGE_FIELD_MOST_ROWS = 10

export type BorderRows =
  | { readonly kind: 'found'; readonly rowsCount: number }
  /** The rules name no field so small, or one between 20 and 21 acres. */
  | { readonly kind: 'field-not-in-table'; readonly smallestAcres: 1 }
  /** Nearer than any printed distance. */
  | { readonly kind: 'nearer-than-table'; readonly nearestFt: number }

/**
 * Border rows that the rules ask for at a distance from other corn. [rows]  5 acres, 250 ft: 8. Between two printed
 * distances the row count of the shorter one stands. The borders must be of the same sort and shed while silks show.
 *
 * @param distanceFt [ft] Valid: above 0 to 1e6.
 * @param fieldAcres [acre] Valid: above 0 to 1e6.
 * @throws {ValidRangeError} outside those ranges.
 * @source wac-16-302-295
 */
export function borderRows(distanceFt: number, fieldAcres: number): BorderRows {
  requireInRange('distanceFt', distanceFt, { min: Number.MIN_VALUE, max: 1e6, unit: 'ft', source: 'wac-16-302-295' })
  requireInRange('fieldAcres', fieldAcres, { min: Number.MIN_VALUE, max: 1e6, unit: 'acre', source: 'wac-16-302-295' })
  if (fieldAcres < 1 || (fieldAcres > 20 && fieldAcres < 21)) return { kind: 'field-not-in-table', smallestAcres: 1 }
  const isLarge = fieldAcres >= 21
  const least: readonly number[] = isLarge ? ACRES_21_AND_MORE : ACRES_1_TO_20
  const rowsCount = least.findIndex((feet) => distanceFt >= feet)
  if (rowsCount >= 0) return { kind: 'found', rowsCount }
  if (isLarge) return { kind: 'found', rowsCount: LARGE_FIELD_MOST_ROWS }
  return { kind: 'nearer-than-table', nearestFt: least.at(-1)! }
}
