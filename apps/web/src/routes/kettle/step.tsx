/** One stage of the walk: a line while it is folded, with its times and water beside it; its work when it is open. */
import type { WalkStep } from '@crib/planning'
import { convert } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { useId } from 'react'
import { Drawing } from '../../drawings/drawing.tsx'
import { MarginNote } from '../../parts-of-the-sheet/index.ts'
import { Earlier, LastTap } from '../../walk/taps.tsx'
import { AlkaliStep } from './alkali-step.tsx'
import { PlainStep } from './plain-step.tsx'
import { clockText, type PotAt } from './pot-at.ts'
import { useStepTitle } from './step-title.ts'

export function Step({
  step,
  at,
  isOpen,
  onOpen,
  onMoved,
}: {
  readonly step: WalkStep
  readonly at: PotAt
  readonly isOpen: boolean
  readonly onOpen: () => void
  readonly onMoved: () => void
}) {
  const id = useId()
  const title = useStepTitle()(step)
  const { begunAtMs, doneAtMs, waterL } = step
  const times = [begunAtMs, doneAtMs].filter((atMs) => atMs !== undefined).map((atMs) => clockText(atMs, at))
  return (
    <section className="passage step" data-open={isOpen || undefined} aria-labelledby={id}>
      <h2 id={id}>
        <button type="button" className="step-line" aria-expanded={isOpen} onClick={onOpen}>
          <Drawing name={doneAtMs !== undefined ? 'tick' : begunAtMs !== undefined ? 'pot' : 'kernel'} />
          <span>{title}</span>
        </button>
      </h2>
      {(times.length > 0 || waterL !== undefined) && (
        <div className="margin">
          <MarginNote>
            {times.length > 0 && <strong>{times.join(' – ')}</strong>}
            {waterL !== undefined && (
              <>
                {' '}
                {formatQuantity(
                  { value: Number(convert(waterL, 'L', 'LiquidGal').toFixed(2)), unit: 'LiquidGal' },
                  'alone',
                )}
              </>
            )}
          </MarginNote>
        </div>
      )}
      {isOpen && (
        <div className="passage-body">
          <LastTap taps={at.taps} />
          {step.stage.kind === 'alkali-boil' ? (
            <AlkaliStep step={step} at={at} onMoved={onMoved} />
          ) : (
            <PlainStep step={step} at={at} onMoved={onMoved} />
          )}
          <Earlier taps={at.taps} />
        </div>
      )}
    </section>
  )
}
