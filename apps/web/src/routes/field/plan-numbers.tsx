/** PlanNumbers: what a plan of a field comes to, stamped. Props: plan. */
import type { FieldPlan } from '@crib/planning'
import { BigNumber, NumberRow } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

const STAMPED = [
  ['plants', 'field:screen-plan-plants'],
  ['kernelsToSow', 'field:screen-plan-kernels'],
  ['kernelsOnAverage', 'field:screen-plan-kernels-average'],
  ['kernelsToSowOz', 'field:amount-kernels-weight'],
  ['rows', 'field:screen-plan-rows'],
  ['plantsInRow', 'field:screen-plan-plants-in-row'],
  ['kernelSpacingIn', 'field:amount-kernel-every'],
  ['rowsOfHills', 'field:screen-plan-rows-of-hills'],
  ['hillsInRow', 'field:screen-plan-hills-in-row'],
  ['kernelsInHill', 'field:screen-plan-kernels-in-hill'],
  ['lengthFt', 'field:screen-plan-length'],
  ['widthFt', 'field:screen-plan-width'],
  ['areaFt2', 'field:amount-area'],
  ['beanSeeds', 'field:amount-beans'],
  ['squashSeeds', 'field:amount-squash'],
  ['harvestLb', 'field:amount-harvest'],
] as const

export function PlanNumbers({ plan }: { readonly plan: FieldPlan }) {
  const { say } = useWords()
  return (
    <NumberRow>
      {STAMPED.map(([id, key]) => {
        const reckoned = plan.values.find((one) => one.id === id)
        return reckoned && <BigNumber key={id} label={say(key)} reckoned={reckoned} size="small" />
      })}
    </NumberRow>
  )
}
