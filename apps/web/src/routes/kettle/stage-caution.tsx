/** What hurts at this stage, one line each, gravest first. */
import { cautionsFor, MOMENTS, type Moment } from '@crib/guidance'
import { Caution } from '../../parts-of-the-sheet/index.ts'

export function StageCaution({ moments }: { readonly moments: readonly string[] }) {
  const known = moments.filter((moment): moment is Moment => (MOMENTS as readonly string[]).includes(moment))
  return known.flatMap((moment) => cautionsFor(moment).map((line) => <Caution key={line.key} sentence={line} />))
}
