/**
 * Why hulls do not slip, as a cook can find out: each cause with a check to do at the pot and what to do then. What the
 * book already shows stands first; nothing is ruled out by silence. Leaves out: any minute.
 */

import type { Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import type { CornType, Hull } from './input.ts'

const CAUSES = [
  'not-boiling',
  'too-little-liquid',
  'weak-lot',
  'mostly-carbonate',
  'unbaked-soda',
  'lime-settled',
  'too-little-alkali',
  'high-kitchen',
  'thick-hull',
  'old-dry-corn',
  'too-early',
] as const

export type NoSlipCauseId = (typeof CAUSES)[number]

export interface NoSlipCause {
  readonly id: NoSlipCauseId
  /** The book already shows it: it stands first. */
  readonly isShownByBook: boolean
  readonly cause: Sentence
  /** What the cook can look at now. */
  readonly check: Sentence
  readonly action: Sentence
  /** Keys of sources.bib; empty: common practice, no source. */
  readonly sourceKeys: readonly string[]
}

/** What is known of the pot; whatever is left out is not known. */
export interface NoSlipKnown {
  readonly alkali:
    | 'ash'
    | 'calcium-hydroxide'
    | 'sodium-hydroxide'
    | 'potassium-hydroxide'
    | 'baking-soda'
    | 'sodium-carbonate'
  readonly judged?: 'works' | 'weak' | 'unknown'
  readonly stoodOpenMonths?: number
  /** Of the lot's alkali, as hydroxide. [fraction] */
  readonly hydroxideFraction?: number
  readonly elevationFt?: number
  readonly cornType?: CornType
  readonly hull?: Hull
  readonly cornWetFraction?: number
  /** Water to dry corn, by volume. */
  readonly waterToCornRatio?: number
  readonly boiledMin?: number
  /** Where the foretold range begins. [min] */
  readonly rangeLowMin?: number
}

const SOURCES: Partial<Record<NoSlipCauseId, readonly string[]>> = {
  'not-boiling': ['singh-1997'],
  'mostly-carbonate': ['steenari-1999'],
  'lime-settled': ['bates-1956'],
  'high-kitchen': ['quast-silva-1977'],
}

/** A lot whose alkali is mostly carbonate bites far less.  project rule */
const MOSTLY_CARBONATE_FRACTION = 0.3
/** From here on water boils cool enough to tell.  project rule */
const HIGH_FT = 2000
/** Drier than crib corn; it takes up water slowly.  common practice, no source */
const VERY_DRY_WET_FRACTION = 0.11
/** Less water than this leaves kernels bare as it boils away.  common practice, no source */
const LITTLE_WATER_RATIO = 3

/** Every cause that can be meant with this alkali: those the book shows first, then in the order they are quickest to look at. */
export function noSlipCauses(known: NoSlipKnown): readonly NoSlipCause[] {
  const all = CAUSES.filter((id) => canBe(id, known.alkali)).map((id): NoSlipCause => {
    return {
      id,
      isShownByBook: isShown(id, known),
      cause: say(`kettle:no-slip-${id}`),
      check: say(`kettle:no-slip-check-${id}`),
      action: say(`kettle:no-slip-do-${id}`),
      sourceKeys: SOURCES[id] ?? [],
    }
  })
  return [...all.filter(({ isShownByBook }) => isShownByBook), ...all.filter((cause) => !cause.isShownByBook)]
}

function canBe(id: NoSlipCauseId, alkali: NoSlipKnown['alkali']): boolean {
  if (id === 'weak-lot' || id === 'mostly-carbonate') return alkali === 'ash'
  if (id === 'unbaked-soda') return alkali === 'baking-soda'
  return id !== 'lime-settled' || alkali === 'calcium-hydroxide'
}

function isShown(id: NoSlipCauseId, known: NoSlipKnown): boolean {
  const { hydroxideFraction, elevationFt, cornWetFraction, waterToCornRatio, boiledMin, rangeLowMin } = known
  switch (id) {
    case 'weak-lot':
      return known.judged === 'weak' || (known.stoodOpenMonths ?? 0) >= 1
    case 'mostly-carbonate':
      return hydroxideFraction !== undefined && hydroxideFraction < MOSTLY_CARBONATE_FRACTION
    case 'unbaked-soda':
      return known.alkali === 'baking-soda'
    case 'high-kitchen':
      return elevationFt !== undefined && elevationFt >= HIGH_FT
    case 'thick-hull':
      return known.hull === 'thick' || known.cornType === 'popcorn'
    case 'old-dry-corn':
      return cornWetFraction !== undefined && cornWetFraction < VERY_DRY_WET_FRACTION
    case 'too-little-liquid':
      return waterToCornRatio !== undefined && waterToCornRatio < LITTLE_WATER_RATIO
    case 'too-early':
      return boiledMin !== undefined && rangeLowMin !== undefined && boiledMin < rangeLowMin
    case 'not-boiling':
    case 'lime-settled':
    case 'too-little-alkali':
      return false
  }
}
