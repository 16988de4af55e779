/** Labels of the pantry onto a label sheet: jars and packs alike, one label for each. */
import type { FoodLabel } from '@crib/planning'
import type { Reckoned } from '@crib/science'
import type { Words } from '@crib/wording'
import { type BagLabelInput, foodLabels, type JarLabelInput, type LabelSheetChoice } from '../documents/labels.ts'
import type { PrintSetting } from '../documents/said.ts'
import type { PaperDocument } from '../model.ts'

export interface LabelsBeside extends LabelSheetChoice {
  /** Boil this long before tasting here, `Min`; without it no jar can be labelled. */
  readonly boilMin?: Reckoned
}

/** @throws {RangeError} for a jar without the minutes it boils before tasting: no label leaves them out. */
export function labelsOfFood(
  labels: readonly { readonly label: FoodLabel; readonly count: number }[],
  { boilMin, ...choice }: LabelsBeside,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  const inputs = labels.flatMap(({ label, count }) => {
    const one = inputOf(label, boilMin, words)
    return Array.from({ length: Math.max(0, count) }, () => one)
  })
  return foodLabels(inputs, choice, setting, words)
}

function inputOf(label: FoodLabel, boilMin: Reckoned | undefined, words: Words): JarLabelInput | BagLabelInput {
  const { form, code, putUpOn, household, each, keep, useFirstBy, bestUntil, departed, conditions, record } = label
  const common = {
    date: putUpOn,
    contents: words.sentence(label.contents),
    ...(household !== undefined && { household }),
    departed,
    conditions,
    record,
  }
  if (form === 'jar') {
    if (!boilMin) throw new RangeError('boilMin is missing; a jar is labelled with the minutes it boils before tasting')
    return { ...common, loadCode: code, boilMin }
  }
  return {
    ...common,
    lotCode: code,
    lines: [keep],
    ...(each && { each }),
    ...(useFirstBy !== undefined && { useFirstBy }),
    ...(bestUntil !== undefined && { bestUntil }),
  }
}
