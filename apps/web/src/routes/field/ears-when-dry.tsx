/** EarsWhenDry: what husked ears will be as dry shelled corn. Props: earCornKg, kernelMoistureFraction (wet basis). */
import { harvestWeightCalc } from '@crib/planning'
import { BigNumber, NumberRow, Reasons, Refusal } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

/** Dry enough to keep a year: reference of the crib. [fraction, wet basis] */
const DRIED_TO = 0.13

const STAMPED = [
  ['shelledDryLb', 'field:screen-harvest-dry'],
  ['shelledNowLb', 'field:screen-harvest-shelled-now'],
  ['cobsLb', 'field:screen-harvest-cobs'],
  ['waterOffLb', 'field:screen-harvest-water'],
] as const

export function EarsWhenDry(ears: { readonly earCornKg: number; readonly kernelMoistureFraction: number }) {
  const { say } = useWords()
  const result = harvestWeightCalc.run({ ...ears, basis: 'wet', driedToWetFraction: DRIED_TO })
  const title = say('field:screen-harvest-expect')
  if (!result.ok) return <Refusal title={title} why={result.why} askWhom={result.askWhom} />
  return (
    <div aria-live="polite" className="passage-body" id="ears-when-dry">
      <p className="line-title">{title}</p>
      <NumberRow>
        {STAMPED.map(([id, key]) => {
          const reckoned = result.values.find((one) => one.id === id)
          return reckoned && <BigNumber key={id} label={say(key)} reckoned={reckoned} size="small" />
        })}
      </NumberRow>
      <Reasons sentences={[...result.reasons, ...result.warnings]} />
    </div>
  )
}
