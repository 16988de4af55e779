/**
 * Where a kitchen's hominy went, in the weight of the dry corn it came from: dry matter is neither made nor lost, so every
 * pound that went into the kettle is on the shelf, used, or named as a loss. Leaves out: corn before the kettle, which the
 * lot's own balance tells.
 */
import type { Facts, FoodLotFact } from '@crib/journal'
import type { Reckoned, Sentence } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export type PlaceOfCorn = 'shelf' | 'eaten' | 'given' | 'discarded' | 'lost-in-work' | 'hulls-and-unweighed'

export interface CornStrand {
  readonly place: PlaceOfCorn
  /** The form of what stands on the shelf; null for the other places. */
  readonly form: FoodLotFact['form'] | null
  /** Kg of the dry corn it came from. */
  readonly corn: Reckoned
}

export interface WhereItWent {
  /** Corn that went into the kettle, as dry as it was then. */
  readonly corn: Reckoned
  /** Their weights add up to `corn`. The last one is what was not weighed as food: hulls, germs, wash water, unweighed packs. */
  readonly strands: readonly CornStrand[]
  /** Lots of food without a weight, by code. */
  readonly unweighedCodes: readonly string[]
  readonly reasons: readonly Sentence[]
}

/** Water of the food where nobody told it, wet basis. [fraction]  common practice, no source; flour: usda-sr */
const USUAL_WET_FRACTION: Record<FoodLotFact['form'], number> = {
  jar: 0.7,
  fridge: 0.7,
  freezer: 0.7,
  tonight: 0.7,
  dried: 0.1,
  flour: 0.0979,
  roasted: 0.03,
}
/** Of shelled corn in store where no test was told. [fraction]  common practice, no source */
const USUAL_CORN_WET_FRACTION = 0.13

type AccountFacts = Pick<Facts, 'cornLots' | 'batches' | 'foodLots'>

/**
 * All corn that went into the kettle or was made into food otherwise, and where it is. Null before any did.
 *
 * 10 kg of corn at 13 % hold 8.7 kg dry; 12 kg of drained hominy at 70 % hold 3.6 kg, which came from 4.138 kg of it.
 *
 * @source project-rule: conservation of dry matter
 */
export function whereItWent(facts: AccountFacts): WhereItWent | null {
  const { cornKg, cornDryKg, untestedNames } = cornIn(facts)
  if (!(cornDryKg > 0)) return null
  const lots = madeFromOwnCorn(facts)
  const weighed = lots.filter(({ massKg }) => massKg !== undefined)
  const dryKg = new Map<string, number>()
  const add = (key: string, kg: number) => dryKg.set(key, (dryKg.get(key) ?? 0) + kg)
  const intoDryKg = new Map<string, number>()
  for (const lot of weighed) {
    const dry = 1 - wetFractionOf(lot)
    add(`shelf ${lot.form}`, (lot.remainingKg ?? 0) * dry)
    for (const { place, kg, intoLotId } of partings(lot)) {
      if (intoLotId !== undefined) intoDryKg.set(intoLotId, (intoDryKg.get(intoLotId) ?? 0) + kg * dry)
      else if (place !== null) add(place, kg * dry)
    }
  }
  for (const [lotId, kg] of intoDryKg) {
    const made = weighed.find((lot) => lot.lotId === lotId)
    // What was made and not weighed stays among the unweighed.
    if (made) add('lost-in-work', kg - made.massKg! * (1 - wetFractionOf(made)))
  }
  const foundDryKg = [...dryKg.values()].reduce((sum, kg) => sum + kg, 0)
  add('hulls-and-unweighed', cornDryKg - foundDryKg)
  const perDry = cornKg / cornDryKg
  const untold = weighed.filter(({ wetFraction }) => wetFraction === undefined)
  return {
    corn: ownKg('cornKg', cornKg),
    strands: [...dryKg]
      .filter(([key, kg]) => Math.abs(kg) > 1e-9 || key === 'hulls-and-unweighed')
      .map(([key, kg]) => strandOf(key, kg * perDry))
      .sort((a, b) => PLACES.indexOf(a.place) - PLACES.indexOf(b.place)),
    unweighedCodes: codesOf(lots.filter(({ massKg }) => massKg === undefined)),
    reasons: [
      say('pantry:went-in-dry-corn'),
      ...(untestedNames.length > 0 ? [say('pantry:went-corn-untested', { names: untestedNames.join(', ') })] : []),
      ...(untold.length > 0 ? [say('pantry:went-water-assumed', { codes: codesOf(untold).join(', ') })] : []),
      ...(cornDryKg - foundDryKg < -1e-9 ? [say('pantry:went-more-out-than-in')] : []),
    ],
  }
}

/** Each once: several lots may have come of one load. */
function codesOf(lots: readonly { readonly loadCode: string }[]): readonly string[] {
  return [...new Set(lots.map(({ loadCode }) => loadCode))]
}

const PLACES: readonly PlaceOfCorn[] = ['shelf', 'eaten', 'given', 'discarded', 'lost-in-work', 'hulls-and-unweighed']

function strandOf(key: string, kg: number): CornStrand {
  const [place, form = null] = key.split(' ') as [PlaceOfCorn, FoodLotFact['form']?]
  return { place, form, corn: ownKg('cornKg', kg) }
}

function ownKg(id: string, value: number): Reckoned {
  return reckon({ id, value, unit: 'Kg', rounding: nearest(0.01), basis: 'own-record' })
}

function cornIn({ cornLots, batches }: AccountFacts) {
  const taken = new Map<string, number>()
  const take = (lotId: string, kg: number) => taken.set(lotId, (taken.get(lotId) ?? 0) + kg)
  for (const { cornUsed } of Object.values(batches)) for (const { lotId, massKg } of cornUsed) take(lotId, massKg)
  for (const lot of Object.values(cornLots))
    for (const { how, massKg = 0 } of lot.uses) if (how === 'made-into') take(lot.lotId, massKg)
  let cornKg = 0
  let cornDryKg = 0
  const untestedNames: string[] = []
  for (const [lotId, kg] of taken) {
    const lot = cornLots[lotId]
    const tested = lot?.moistureTests.findLast(({ wetFraction }) => wetFraction !== undefined)?.wetFraction
    if (tested === undefined && lot) untestedNames.push(lot.name)
    cornKg += kg
    cornDryKg += kg * (1 - (tested ?? USUAL_CORN_WET_FRACTION))
  }
  return { cornKg, cornDryKg, untestedNames }
}

/** Lots of a batch that took this book's corn, lots made from such corn, and all that was made from those. */
function madeFromOwnCorn({ cornLots, batches, foodLots }: AccountFacts): readonly FoodLotFact[] {
  const lotIds = new Set<string>()
  for (const { lotId, batchId } of Object.values(foodLots))
    if (batchId !== undefined && (batches[batchId]?.cornUsed.length ?? 0) > 0) lotIds.add(lotId)
  for (const { uses } of Object.values(cornLots))
    for (const { intoLotId } of uses) if (intoLotId !== undefined) lotIds.add(intoLotId)
  // A set grows while it is walked.
  for (const lotId of lotIds)
    for (const { intoLotId } of foodLots[lotId]?.uses ?? []) if (intoLotId !== undefined) lotIds.add(intoLotId)
  return [...lotIds].flatMap((lotId) => foodLots[lotId] ?? [])
}

interface Parting {
  readonly place: PlaceOfCorn | null
  readonly kg: number
  readonly intoLotId?: string
}

/** What left a weighed lot, with its weight; a use told in packs takes its share. */
function partings({ count, massKg = 0, uses, openings }: FoodLotFact): readonly Parting[] {
  const kgEach = count > 0 ? massKg / count : 0
  return [
    ...uses.map(({ how, count: taken = 0, massKg: kg = kgEach * taken, intoLotId }): Parting => {
      if (how === 'made-into' && intoLotId !== undefined) return { place: null, kg, intoLotId }
      // Food that went into a batch comes out of it again as that batch's own lots.
      if (how === 'used-in-batch' || how === 'made-into') return { place: null, kg }
      return { place: how === 'given' || how === 'discarded' ? how : 'eaten', kg }
    }),
    ...openings.map(({ found, count: taken }): Parting => {
      return { place: found === 'good' ? 'eaten' : 'discarded', kg: kgEach * taken }
    }),
  ]
}

function wetFractionOf({ form, wetFraction }: FoodLotFact): number {
  return wetFraction ?? USUAL_WET_FRACTION[form]
}
