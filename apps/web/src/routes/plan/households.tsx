/** Several households in one kitchen: jars for each, load records, and where other rules begin. Names stand nowhere here. */
import { type BatchPlan, type Moved, sharedKitchen } from '@crib/planning'
import { MarginNote, NumberRow, Passage, Reasons } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { PlanNumber } from './plan-number.tsx'

export function Households({
  plan,
  householdsCount,
  moved,
}: {
  readonly plan: BatchPlan
  readonly householdsCount: number
  readonly moved: readonly Moved[]
}) {
  const { say } = useWords()
  const shared = sharedKitchen(plan, householdsCount)
  if (!shared) return null
  const numbers = shared.values.filter(({ id }) => id === 'jarsEach' || id === 'loadRecords')
  const through = shared.values.flatMap(({ id, value }) =>
    id.startsWith('jarsThrough:')
      ? [{ key: 'season:jars-through', params: { name: id.slice('jarsThrough:'.length), count: value } }]
      : [],
  )
  return (
    <Passage
      title={say('season:screen-households-title')}
      margin={<MarginNote>{say('season:screen-households-margin')}</MarginNote>}
    >
      <div className="plan-amounts">
        <NumberRow>
          {numbers.map((value) => (
            <PlanNumber key={value.id} reckoned={value} moved={moved} size="small" />
          ))}
        </NumberRow>
      </div>
      {plan.input.canners.length > 1 && <Reasons sentences={through} />}
      <Reasons sentences={[...shared.warnings, ...shared.reasons]} />
    </Passage>
  )
}
