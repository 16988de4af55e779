/** Rubs: the rub tests of a pot, newest first, each with its picture beside it. Props: at. */
import type { RubSeen } from '@crib/planning'
import { Fold } from '../../parts-of-the-sheet/index.ts'
import { Photos } from '../../records/photos.tsx'
import { useWords } from '../../words.tsx'
import { clockText, type PotAt } from './pot-at.ts'

/** The last one in sight, earlier ones folded. */
export function Rubs({ at }: { readonly at: PotAt }) {
  const { say } = useWords()
  const rubs = at.walk.seen.rubs.toReversed()
  const [last, ...earlier] = rubs
  if (!last) return null
  return (
    <>
      <Rub rub={last} at={at} />
      {earlier.length > 0 && (
        <Fold title={say('kettle:rubs-so-far')}>
          {earlier.map((rub) => (
            <Rub key={rub.entryId} rub={rub} at={at} />
          ))}
        </Fold>
      )}
    </>
  )
}

function Rub({ rub, at }: { readonly rub: RubSeen; readonly at: PotAt }) {
  const { say } = useWords()
  const { batch, walk } = at
  const clock = clockText(rub.atMs, at)
  return (
    <section className="passage-body" aria-label={`${clock} ${say('kettle:walk-rub')}`}>
      <p>
        <time dateTime={new Date(rub.atMs).toISOString()}>{clock}</time>{' '}
        {say('kettle:rub-seen', { slipped: rub.slippedCount, rubbed: rub.ofCount })}
      </p>
      <Photos
        ofId={batch.batchId}
        potLoad={walk.potLoad}
        ofEntryId={rub.entryId}
        takeWords={say('kettle:rub-picture')}
      />
    </section>
  )
}
