/** What hurts at this stage, one line each: the gravest in sight, the others behind a tap. */
import { cautionsFor, MOMENTS, type Moment } from '@crib/guidance'
import { Caution, Fold } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

/** More than this before the next tap is a wall that nobody reads. */
const IN_SIGHT = 3

export function StageCaution({ moments }: { readonly moments: readonly string[] }) {
  const { say } = useWords()
  const known = moments.filter((moment): moment is Moment => (MOMENTS as readonly string[]).includes(moment))
  const lines = known.flatMap(cautionsFor).map((line) => <Caution key={line.key} sentence={line} />)
  return (
    <>
      {lines.slice(0, IN_SIGHT)}
      {lines.length > IN_SIGHT && (
        <Fold title={say('kettle:walk-more-cautions', { count: lines.length - IN_SIGHT })}>
          {lines.slice(IN_SIGHT)}
        </Fold>
      )}
    </>
  )
}
