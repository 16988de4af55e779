/** A percentage as a person types it into a fraction; a moisture with its basis, which is always asked and never guessed. */
import { dryToWetFraction, type Sentence } from '@crib/science'
import { say } from '../shared/say.ts'

export type MoistureBasis = 'wet' | 'dry'

export type TypedMoisture =
  | { readonly kind: 'empty' }
  | { readonly kind: 'fault'; readonly why: Sentence }
  /** `say` where it was told on the dry basis: what that is on the wet one. */
  | { readonly kind: 'moisture'; readonly wetFraction: number; readonly say: Sentence | null }

const WET = { min: 0.01, max: 0.95 } as const

/**
 * "13.5" or "13,5 %" on a basis as a wet fraction. 15 % on the dry basis is 13.04 % on the wet one.
 *
 * @source project-rule: limits of the book; the basis by dryToWetFraction
 */
export function typedMoisture(text: string, basis: MoistureBasis | null): TypedMoisture {
  const typed = text.trim()
  if (typed === '') return { kind: 'empty' }
  const fraction = percentFraction(typed)
  if (fraction === null) return { kind: 'fault', why: say('keeping:percent-unread', { typed }) }
  if (basis === null) return { kind: 'fault', why: say('keeping:moisture-basis-needed') }
  const wetFraction = basis === 'wet' ? fraction : fraction >= 0 && fraction <= 19 ? dryToWetFraction(fraction) : -1
  if (!(wetFraction >= WET.min && wetFraction <= WET.max))
    return { kind: 'fault', why: say('keeping:moisture-outside', { typed }) }
  const moisture = { value: Math.round(wetFraction * 1000) / 1000, unit: 'Fraction' } as const
  return { kind: 'moisture', wetFraction, say: basis === 'dry' ? say('keeping:moisture-on-wet', { moisture }) : null }
}

/** "75", "75 %" or "75,5" as 0.75 and 0.755; null where no number stands. Outside 0 to 100 it is still read. */
export function percentFraction(text: string): number | null {
  const match = /^(\d+(?:[.,]\d+)?)\s*%?$/.exec(text.trim())
  return match ? Number(match[1]!.replace(',', '.')) / 100 : null
}
