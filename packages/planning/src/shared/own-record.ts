/**
 * The keeper's own records beside the book's number: shrinkage of the printed prior toward the own mean.
 * Leaves out: which records belong together; the caller picks them.
 */

export interface OwnRecord {
  /** Between the book's number and the keeper's own mean, in the unit of both. */
  readonly value: number
  readonly bookValue: number
  readonly ownMean: number
  readonly recordsCount: number
}

/** How many records the book's number counts for. Project rule: after two own records they weigh as much as the book. */
export const BOOK_WEIGHT_COUNT = 2

/**
 * Mean of own records shrunk toward the book's number: (w * book + sum of records) / (w + n), w = 2. Unit of the inputs.
 * Both numbers and n come along, to be shown together.
 *
 * @throws {RangeError} when a record is not a finite number above zero.
 */
export function shrinkToOwn(bookValue: number, records: readonly number[]): OwnRecord {
  for (const record of records) {
    if (!(record > 0 && Number.isFinite(record))) {
      throw new RangeError(`an own record is ${record}; a finite number above 0 is needed (project rule)`)
    }
  }
  const sum = records.reduce((total, record) => total + record, 0)
  const recordsCount = records.length
  return {
    value: (BOOK_WEIGHT_COUNT * bookValue + sum) / (BOOK_WEIGHT_COUNT + recordsCount),
    bookValue,
    ownMean: recordsCount === 0 ? bookValue : sum / recordsCount,
    recordsCount,
  }
}
