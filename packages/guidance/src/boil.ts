/** Boiling before tasting: for canned food that no current federal process covers, which all canned hominy is. */
import { type Reckoned, requireInRange } from '@crib/science'
import { printedFigure } from './figures.ts'
import { ruleFor } from './rules.ts'

/** Lowest and highest dry ground, so that a typing slip is caught. [ft]  Project rule. */
export const GROUND_MIN_FT = -1_500
export const GROUND_MAX_FT = 29_100

/**
 * Minutes of boiling before canned hominy is tasted. [min]
 *
 * 10 below 1,000 ft and 1 more for each further 1,000 ft; a step begins at its line (1,000.0 ft: 11). The rule prints no
 * upper end, so none is set here but that of the ground itself.
 *
 * @param elevationFt elevation of the kitchen. [ft]  Valid: -1,500 to 29,100.
 * @throws {ValidRangeError} outside that range.
 * @source usda-aib-539-1994 guide 1
 */
export function boilBeforeTastingMin(elevationFt: number): Reckoned {
  requireInRange('elevationFt', elevationFt, {
    min: GROUND_MIN_FT,
    max: GROUND_MAX_FT,
    unit: 'ft',
    source: 'project-rule',
  })
  const base = ruleFor('boil-before-tasting', 'below-first-line')
  const step = ruleFor('boil-before-tasting', 'each-further-line').figure.value
  const lineFt = ruleFor('boil-before-tasting', 'line-every').figure.value
  const steps = Math.max(0, Math.floor(elevationFt / lineFt))
  return printedFigure({
    id: 'boilBeforeTastingMin',
    value: base.figure.value + steps * step,
    unit: 'Min',
    seen: base.seen,
    sourceKeys: base.sourceKeys,
    inputs: { elevationFt },
  })
}
