/** Where a process stands, in words: for which food it was made, and where it stands now. */
import type { Sentence } from '@crib/science'
import type { Standing } from '../schema/envelope.ts'
import { sentence } from './sentence.ts'

const MADE_FOR = {
  'this-food': 'guidance:made-for-this-food',
  'lye-hominy': 'guidance:made-for-lye-hominy',
  'neighbouring-food': 'guidance:made-for-neighbouring-food',
  none: 'guidance:made-for-none',
} as const

const NOW = {
  current: 'guidance:now-current',
  withdrawn: 'guidance:now-withdrawn',
  custom: 'guidance:now-custom',
} as const

/** Ash or lime hominy: nothing was tested for it, and what it looks like was withdrawn. */
export const UNTESTED_ALKALI_STANDING: Standing = { madeFor: 'none', now: 'withdrawn' }

/** Nothing printed comes near it. */
export const NOBODYS_STANDING: Standing = { madeFor: 'none', now: 'custom' }

export function standingSentences({ madeFor, now }: Standing): readonly Sentence[] {
  // Nothing was tested for it, and yet it carries minutes: say whose they are.
  const borrowed = madeFor === 'none' && now === 'withdrawn' ? [sentence('guidance:looks-like-lye-hominy')] : []
  return [sentence(MADE_FOR[madeFor]), ...borrowed, sentence(NOW[now])]
}
