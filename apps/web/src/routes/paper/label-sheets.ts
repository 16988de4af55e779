/** Labels for what is on the shelf. Leaves out every number of its own. */
import { boilBeforeTastingMin } from '@crib/guidance'
import type { FoodLotFact } from '@crib/journal'
import { type LabelSheetId, labelsOfFood, type PaperDocument } from '@crib/paper'
import { foodLabel } from '@crib/planning'
import { type Desk, elevationFt, settingOf } from './documents.ts'

/** One label for each jar or pack still held; null for a jar while the elevation it boils at is not told. */
export function labelsDocument(
  desk: Desk,
  lots: readonly FoodLotFact[],
  sheet: LabelSheetId,
  skipCount: number,
): PaperDocument | null {
  const ft = elevationFt(desk)
  if (ft === undefined && lots.some(({ form }) => form === 'jar')) return null
  return labelsOfFood(
    lots.map((lot) => ({ label: foodLabel(lot, desk.facts), count: lot.remainingCount })),
    { sheet, skipCount, ...(ft !== undefined && { boilMin: boilBeforeTastingMin(ft) }) },
    settingOf(desk),
    desk.words,
  )
}
