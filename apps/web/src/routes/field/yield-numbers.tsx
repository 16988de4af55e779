/** YieldNumbers: an estimate of a crop, stamped. Props: estimate (null: not enough is told). */
import type { Estimate } from '@crib/planning'
import { BigNumber, NumberRow, Reasons } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export function YieldNumbers({ estimate }: { readonly estimate: Estimate | null }) {
  const { say } = useWords()
  const value = (id: string) => estimate?.values.find((one) => one.id === id)
  const whole = value('harvestLb')
  const perAcre = value('yieldBuPerAcre')
  return (
    <div aria-live="polite" className="passage-body" id="yield">
      {estimate ? (
        <>
          <NumberRow>
            {whole && <BigNumber label={say('field:screen-yield-harvest')} reckoned={whole} />}
            {perAcre && <BigNumber label={say('field:screen-yield-per-acre')} reckoned={perAcre} size="small" />}
          </NumberRow>
          <Reasons sentences={[...estimate.reasons, ...estimate.warnings]} />
        </>
      ) : (
        <p>{say('field:screen-yield-needs')}</p>
      )}
    </div>
  )
}
