/** A field plan onto its sheet. */
import type { FieldPlan, FieldPlanInput } from '@crib/planning'
import type { MessageKey, Words } from '@crib/wording'
import { type FieldSheetInput, fieldSheet } from '../documents/field-sheet.ts'
import type { LabelledValue, PrintSetting } from '../documents/said.ts'
import type { PaperDocument } from '../model.ts'

/** What the plan itself does not hold. */
export interface FieldBeside extends Pick<FieldSheetInput, 'plot' | 'date' | 'cornName' | 'neighbours' | 'record'> {
  readonly rowsBearingDeg?: number
}

/** In the order of the sheet. */
const AMOUNTS: readonly (readonly [id: string, label: MessageKey])[] = [
  ['plants', 'field:amount-plants'],
  ['kernelsToSow', 'field:amount-kernels'],
  ['kernelsToSowOz', 'field:amount-kernels-weight'],
  ['kernelSpacingIn', 'field:amount-kernel-every'],
  ['hills', 'field:amount-hills'],
  ['kernelsInHill', 'field:amount-kernels-in-hill'],
  ['rowFeetFt', 'field:amount-row-feet'],
  ['areaFt2', 'field:amount-area'],
  ['beanSeeds', 'field:amount-beans'],
  ['squashSeeds', 'field:amount-squash'],
  ['harvestLb', 'field:amount-harvest'],
]

export function fieldSheetOfPlan(
  plan: FieldPlan,
  input: FieldPlanInput,
  { rowsBearingDeg, ...beside }: FieldBeside,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  const { block, values, reasons, warnings } = plan
  const amounts = AMOUNTS.flatMap(([id, key]): LabelledValue[] => {
    const value = values.find((one) => one.id === id)
    return value ? [{ label: { key }, value }] : []
  })
  const [seed, ...others] = reasons
  return fieldSheet(
    {
      ...beside,
      seedLines: seed ? [seed] : [],
      ground: {
        ...block,
        rowSpacingM: input.rowSpacingM,
        inRowSpacingM: input.inRowSpacingM,
        pattern: input.pattern,
        ...(rowsBearingDeg !== undefined && { rowsBearingDeg }),
      },
      amounts,
      notes: [...others, ...warnings],
    },
    setting,
    words,
  )
}
