/**
 * Own record of the field, year by year: of the sprouts a sowing should have given, those that stood to harvest. Sowings
 * without a sprouting test before them, or whose plants were never counted, are left out.
 */
import type { PlantingFact, SeedLotFact } from '@crib/journal'
import { isSameCorn } from '../seed/corn-names.ts'
import type { FieldYear } from '../seed/reserve-plan.ts'

type Facts = {
  readonly plantings: { readonly [id: string]: PlantingFact }
  readonly seedLots: { readonly [id: string]: SeedLotFact }
}

/** In order of years; several sowings of a year are one. @param cornName of the plantings, as isSameCorn reads it. */
export function fieldYears({ plantings, seedLots }: Facts, cornName: string): readonly FieldYear[] {
  const years = new Map<number, { sproutsCount: number; grownCount: number }>()
  for (const planting of Object.values(plantings)) {
    if (!isSameCorn(planting.cornName, cornName)) continue
    const sprouts = sproutsOf(planting, seedLots)
    const grown = grownOf(planting)
    if (sprouts === null || grown === null) continue
    const year = Number(planting.plantedOn.slice(0, 4))
    const before = years.get(year) ?? { sproutsCount: 0, grownCount: 0 }
    years.set(year, { sproutsCount: before.sproutsCount + sprouts, grownCount: before.grownCount + grown })
  }
  return [...years]
    .sort(([a], [b]) => a - b)
    .flatMap(([year, { sproutsCount, grownCount }]) =>
      // More plants than sprouts: a low test by chance. All of them stood then.
      grownCount > 0 ? [{ year, sproutsCount: Math.max(sproutsCount, grownCount), grownCount }] : [],
    )
}

/** Kernels sown times the germination of the newest test before the sowing. */
function sproutsOf(
  { kernelsSownCount, seedLotId, plantedOn }: PlantingFact,
  seedLots: Facts['seedLots'],
): number | null {
  const lot = seedLotId === undefined ? undefined : seedLots[seedLotId]
  const test = lot?.tests.findLast(({ testedOn }) => testedOn <= plantedOn)
  if (kernelsSownCount === undefined || !test || test.sproutedCount === 0) return null
  return Math.max(1, Math.round((kernelsSownCount * test.sproutedCount) / test.ofCount))
}

/** Plants harvested, else the last stand counted, brought from the part counted to the whole. */
function grownOf({ harvests, stands, kernelsSownCount }: PlantingFact): number | null {
  const harvested = harvests.reduce((sum, { plantsHarvestedCount = 0 }) => sum + plantsHarvestedCount, 0)
  if (harvested > 0) return harvested
  const last = stands.at(-1)
  if (!last) return null
  const { plantsCount, ofKernelsCount } = last
  if (ofKernelsCount === undefined || kernelsSownCount === undefined) return plantsCount
  return Math.round((plantsCount * Math.max(kernelsSownCount, ofKernelsCount)) / ofKernelsCount)
}

/** Of sprouts, those that stood, each year as likely as another: as a reserve counts it. [fraction] Null without a year. */
export function standFractionOfYears(years: readonly FieldYear[]): number | null {
  if (years.length === 0) return null
  return years.reduce((sum, { grownCount, sproutsCount }) => sum + grownCount / sproutsCount, 0) / years.length
}
