/** The code on every jar of a load: short, unique in its kitchen, and easily said aloud over a noisy bench. */

export interface LoadCodeParts {
  readonly kitchenName: string
  /** YYYY-MM-DD */
  readonly day: string
  readonly letter: string
  /** 1 for the canner's first load of that day. */
  readonly round: number
}

/**
 * Kitchen mark, day, canner letter and round: `MILL-261003-B2` is Millrind's canner B, second load, 3 October 2026.
 *
 * @throws {RangeError} for a day that is not YYYY-MM-DD or a round below 1.
 * @source project-rule
 */
export function loadCode({ kitchenName, day, letter, round }: LoadCodeParts): string {
  const date = /^\d{2}(\d{2})-(\d{2})-(\d{2})$/.exec(day)
  if (!date || Number.isNaN(Date.parse(day))) throw new RangeError(`day is "${day}"; a date as YYYY-MM-DD is needed`)
  if (!Number.isInteger(round) || round < 1) throw new RangeError(`round is ${round}; a whole number from 1 is needed`)
  return `${kitchenMark(kitchenName)}-${date.slice(1).join('')}-${letter}${round}`
}

/** A to Z, then AA, AB and on. */
export function cannerLetter(index: number): string {
  const last = String.fromCharCode(65 + (index % 26))
  return index < 26 ? last : cannerLetter(Math.floor(index / 26) - 1) + last
}

/** Up to four letters of the kitchen's name, without accents; a kitchen named in another script is `CRIB`. */
function kitchenMark(name: string): string {
  const letters = name
    .normalize('NFD')
    .toUpperCase()
    .replace(/[^A-Z]/g, '')
  return letters.slice(0, 4) || 'CRIB'
}
