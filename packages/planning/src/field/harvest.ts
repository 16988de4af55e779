/** From a harvest to the crib, and what the plantings so far say about the next one. */
import type { BodyOf, PlantingFact } from '@crib/journal'
import { type OwnRecord, shrinkToOwn } from '../shared/own-record.ts'

type Harvest = BodyOf<'harvest-brought-in'>

/** The crib's own entry for corn brought in from a planting: the harvest names it, the crib weighs it. */
export function cribLotOfHarvest(
  harvest: Pick<Harvest, 'form' | 'massKg' | 'note'>,
  planting: Pick<PlantingFact, 'cornName'>,
  lot: {
    readonly lotId: string
    readonly cornType: BodyOf<'corn-lot-brought-in'>['cornType']
    /** The amount in the keeper's own words. */
    readonly asTyped: string
  },
): BodyOf<'corn-lot-brought-in'> {
  const { form, massKg, note } = harvest
  return {
    ...lot,
    name: planting.cornName,
    form,
    treatedSeed: false,
    ...(massKg !== undefined && { massKg }),
    ...(note !== undefined && { note }),
  }
}

export interface PlantingRecords {
  /** Plants that stood, of kernels sown. [fraction] Null before any was counted. */
  readonly standFraction: OwnRecord | null
  /** Shelled or ear corn a plant brought, of the harvests weighed in that form. [kg] Null before any. */
  readonly earsKgPerPlant: OwnRecord | null
}

/**
 * Own stand and own ears to a plant over all plantings, between the book's numbers and the keeper's own mean.
 *
 * @param book what a plan would take without records.
 */
export function plantingRecords(
  plantings: readonly PlantingFact[],
  book: { readonly standFraction: number; readonly earsKgPerPlant: number },
): PlantingRecords {
  const stands = plantings.flatMap(({ stands }) => {
    const last = stands.findLast(({ ofKernelsCount }) => ofKernelsCount !== undefined)
    return last && last.plantsCount > 0 ? [last.plantsCount / last.ofKernelsCount!] : []
  })
  const earsKg = plantings.flatMap(({ harvests, stands }) => {
    const ears = harvests.filter(({ form, massKg }) => form === 'ears' && massKg !== undefined)
    const plants =
      ears.reduce((sum, { plantsHarvestedCount = 0 }) => sum + plantsHarvestedCount, 0) ||
      (stands.findLast(({ ofKernelsCount }) => ofKernelsCount === undefined)?.plantsCount ?? 0)
    const kg = ears.reduce((sum, { massKg = 0 }) => sum + massKg, 0)
    return plants > 0 && kg > 0 ? [kg / plants] : []
  })
  return {
    standFraction: stands.length === 0 ? null : shrinkToOwn(book.standFraction, stands),
    earsKgPerPlant: earsKg.length === 0 ? null : shrinkToOwn(book.earsKgPerPlant, earsKg),
  }
}

/** The seed lot's own entry for what a planting took out of it; null where it names no lot or no count. */
export function seedSownWithPlanting(planting: BodyOf<'planting-recorded'>): BodyOf<'seed-sown'> | null {
  const { seedLotId, kernelsSownCount, plantedOn, plantingId } = planting
  if (seedLotId === undefined || kernelsSownCount === undefined) return null
  return { seedLotId, sownOn: plantedOn, kernelsCount: kernelsSownCount, plantingId }
}
