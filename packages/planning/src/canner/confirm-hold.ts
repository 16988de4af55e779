/** The number the keeper settles on for a run. It may be above the card's, never below the table's. */
import type { Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import type { GaugeCard } from './gauge-card.ts'

export type HoldConfirmed =
  | {
      readonly ok: true
      /** A dial reading below this is a dip in the run. [psi or lb] */
      readonly requiredReadingPsi: number
      /** What is written down beside the run because of the choice. */
      readonly notes: readonly Sentence[]
    }
  | { readonly ok: false; readonly why: readonly Sentence[] }

/**
 * Holds the keeper to a number. The floor is the table's number for the elevation as typed, corrected by the dial's
 * error; between it and the card's number the choice is written down. A dial that was never tested may be confirmed, and
 * is written down as untested; a refused one may not.
 *
 * @param chosenPsi what the needle will be held at, or the figure on the weight. [psi or lb]
 * @source usda-aib-539-1994 guide 4
 */
export function confirmHold(card: GaugeCard, chosenPsi: number): HoldConfirmed {
  if (!card.usable && card.verdict !== 'unknown') return { ok: false, why: card.reasons }
  const errorPsi = card.error?.value ?? 0
  const floorPsi = Number((card.table.value + errorPsi).toFixed(6))
  const unit = card.table.unit
  if (!(chosenPsi >= floorPsi)) {
    const chosen = { value: Number.isFinite(chosenPsi) ? chosenPsi : 0, unit }
    return { ok: false, why: [say('canner:below-the-table', { chosen, lowest: { value: floorPsi, unit } })] }
  }
  const cardPsi = card.required?.value ?? card.set.value
  return {
    ok: true,
    // A weight is what is stamped on it; a needle may rise above the card's number without moving the floor of the run.
    requiredReadingPsi: card.gauge === 'weight' ? chosenPsi : Math.min(chosenPsi, cardPsi),
    notes: [
      ...(chosenPsi < cardPsi
        ? [say('canner:below-the-card', { chosen: { value: chosenPsi, unit }, card: { value: cardPsi, unit } })]
        : []),
      ...(card.usable ? [] : [say('canner:dial-untested-confirmed')]),
    ],
  }
}
