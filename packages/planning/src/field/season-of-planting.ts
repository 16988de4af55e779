/** Where a planting stands in its season: what was seen, and what is looked for next. */
import type { PlantingFact } from '@crib/journal'

export const SEASON_STEPS = ['stand', 'tassel', 'silk', 'harvest'] as const
export type SeasonStep = (typeof SEASON_STEPS)[number]

type Seen = PlantingFact['silks']

/** The day half of the plants showed it; else null: a first tassel is not half. */
export function halfSeenOn(seen: Seen): string | null {
  return seen.findLast(({ howMany }) => howMany === 'half')?.seenOn ?? null
}

/** The next thing to look for; null once corn was brought in. A step passed by is not asked for again. */
export function nextSeasonStep(planting: PlantingFact): SeasonStep | null {
  const { stands, tassels, silks, harvests } = planting
  if (harvests.length > 0) return null
  if (halfSeenOn(silks) !== null) return 'harvest'
  if (halfSeenOn(tassels) !== null) return 'silk'
  return stands.length > 0 ? 'tassel' : 'stand'
}

/** Plantings of a plot, the newest first. */
export function plantingsOfPlot(
  plantings: { readonly [id: string]: PlantingFact },
  plotId: string,
): readonly PlantingFact[] {
  return Object.values(plantings)
    .filter((one) => one.plotId === plotId)
    .sort((a, b) => (a.plantedOn < b.plantedOn ? 1 : -1))
}
