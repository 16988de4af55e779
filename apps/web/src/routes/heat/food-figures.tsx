/** What a made-up run does to the food: thiamine left and the boil it is worth, each with its published spread. */
import { qualityValues } from '@crib/planning'
import { memo } from 'react'
import { BigNumber, NumberRow, SourceLine } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import type { BandWork } from './use-band.ts'

export const FoodFigures = memo(function FoodFigures({
  isStale,
  quality,
}: {
  /** The figures are of the jar before the last move. */
  readonly isStale: boolean
  readonly quality: BandWork['quality']
}) {
  const { say } = useWords()
  if (!quality) return <p role="status">{say('heat:band-first')}</p>
  const { thiamineKeptFraction, cookedMin } = qualityValues(quality.of, quality.quality)
  return (
    <div className={isStale ? 'heat-stale' : undefined} data-quality={isStale ? 'moving' : 'whole'}>
      <NumberRow>
        <BigNumber
          label={say('heat:number-cooked')}
          reckoned={cookedMin}
          size="small"
          note={say('heat:number-cooked-note')}
        />
        <BigNumber label={say('heat:number-thiamine')} reckoned={thiamineKeptFraction} size="small" />
      </NumberRow>
      <p>{say('heat:quality-of-other-foods')}</p>
      {[...cookedMin.sourceKeys, ...thiamineKeptFraction.sourceKeys].map((key) => (
        <SourceLine key={key} sourceKey={key} />
      ))}
    </div>
  )
})
