/** A length of the book as a person would type it into a field: in whole inches where it is one, else in metres. */
import { convert } from '@crib/science'

export function typedLength(metres: number): string {
  const inches = convert(metres, 'M', 'In')
  return Math.abs(inches - Math.round(inches)) < 1e-6 ? `${Math.round(inches)} in` : `${Number(metres.toFixed(3))} m`
}
