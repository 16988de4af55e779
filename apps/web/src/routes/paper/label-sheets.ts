/** Labels for what is on the shelf. Leaves out every number of its own. */
import { boilBeforeTastingMin } from '@crib/guidance'
import { type FoodLotFact, originOnLabel } from '@crib/journal'
import { bagLabels, jarLabels, type LabelSheetId, type PaperDocument } from '@crib/paper'
import { type Desk, elevationFt, settingOf } from './documents.ts'

/** One label for each jar or bag still held. */
export function labelsDocument(
  desk: Desk,
  lots: readonly FoodLotFact[],
  sheet: LabelSheetId,
  skipCount: number,
): PaperDocument {
  const { words } = desk
  const setting = settingOf(desk)
  const each = <T>(lot: FoodLotFact, label: T): T[] =>
    Array.from({ length: Math.max(0, lot.remainingCount) }, () => label)
  const shared = (lot: FoodLotFact) => ({
    date: lot.at.instant.slice(0, 10),
    contents: contentsOf(desk, lot),
    ...(lot.householdName !== undefined && { household: lot.householdName }),
    record: `crib:lot/${lot.lotId.slice(-12)}`,
  })
  if (lots.every(({ form }) => form === 'jar')) {
    const boilMin = boilBeforeTastingMin(elevationFt(desk) ?? 0)
    return jarLabels(
      lots.flatMap((lot) =>
        each(lot, {
          ...shared(lot),
          loadCode: lot.loadCode,
          boilMin,
          departed: (lot.departures?.length ?? 0) > 0,
        }),
      ),
      { sheet, skipCount },
      setting,
      words,
    )
  }
  return bagLabels(
    lots.flatMap((lot) =>
      each(lot, {
        ...shared(lot),
        lotCode: lot.loadCode,
        lines: [words.say(`pantry:label-${lot.form}`), ...conditionsOf(desk, lot)],
      }),
    ),
    { sheet, skipCount },
    setting,
    words,
  )
}

/** "Lantern flint hominy", by the corn that went in, where its lot may be named on a label; "Hominy" where not. */
export function contentsOf({ facts, words }: Pick<Desk, 'facts' | 'words'>, lot: FoodLotFact): string {
  const { corn } = originOnLabel(lot, facts)
  return corn === undefined ? words.say('pantry:hominy') : words.say('pantry:hominy-of', { name: corn })
}

/** Conditions go where the lot goes. */
function conditionsOf({ facts }: Desk, lot: FoodLotFact): readonly string[] {
  const { conditions } = originOnLabel(lot, facts)
  return conditions === undefined ? [] : [conditions]
}
