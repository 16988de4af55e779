/** Wrong input to science is thrown; an answer the keeper can act on is returned. */

export interface ValidRange {
  readonly min: number
  readonly max: number
  readonly unit: string
  readonly source: string
}

/** A number outside the range its source covers. Carries argument, value and range, so any door can word it. */
export class ValidRangeError extends RangeError {
  readonly argument: string
  readonly value: number
  readonly range: ValidRange

  constructor(argument: string, value: number, range: ValidRange) {
    super(`${argument} is ${value} ${range.unit}; ${range.source} covers ${range.min} to ${range.max} ${range.unit}`)
    this.name = 'ValidRangeError'
    this.argument = argument
    this.value = value
    this.range = range
  }
}

/** @throws {ValidRangeError} unless min <= value <= max; NaN is caught as well. */
export function requireInRange(argument: string, value: number, range: ValidRange): void {
  if (!(value >= range.min && value <= range.max)) throw new ValidRangeError(argument, value, range)
}
