/** The few numbers of the picture, each with its band; a total only where the jar is made up. */
import { studyValues } from '@crib/planning'
import { memo } from 'react'
import { BigNumber, NumberRow } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import type { BandNow } from './use-band.ts'

export const Figures = memo(function Figures({
  isStale,
  now,
  isMadeUp,
}: {
  /** The figures are of the jar before the last move. */
  readonly isStale: boolean
  readonly now: BandNow | null
  readonly isMadeUp: boolean
}) {
  const { say } = useWords()
  if (!now) return <p role="status">{say('heat:band-first')}</p>
  const { endOfHoldC, lethalityMin, coolingShareFraction } = studyValues(now.of, now.study)
  return (
    <div
      className={isStale ? 'heat-stale' : undefined}
      data-band={isStale ? 'moving' : now.isWhole ? 'whole' : 'rough'}
    >
      <p className="field-hint" role="status">
        {isStale ? say('heat:band-of-last') : say('heat:band-of', { samples: now.study.endOfHoldC.samplesCount })}
      </p>
      <NumberRow>
        <BigNumber label={say('heat:number-end-of-hold')} reckoned={endOfHoldC} size="small" />
        {isMadeUp && (
          <BigNumber
            label={say('heat:number-lethality')}
            reckoned={lethalityMin}
            size="small"
            note={say('heat:number-lethality-note')}
          />
        )}
        {isMadeUp && <BigNumber label={say('heat:number-cooling')} reckoned={coolingShareFraction} size="small" />}
      </NumberRow>
      {!isMadeUp && <p>{say('heat:no-total')}</p>}
    </div>
  )
})
