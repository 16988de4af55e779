/** Off-types counted in a corn over its lots and years. */
import type { SeedLotFact } from '@crib/journal'
import type { CalcResult, OffTypeCount } from '@crib/science'
import { isSameCorn } from './corn-names.ts'
import { offTypeTrend } from './line-advice.ts'

export type OffTypeKind = SeedLotFact['offTypes'][number]['what']

/** Counts of one sort of thing in every lot of this corn, by the year they were counted in. */
export function offTypeCounts(
  seedLots: { readonly [id: string]: SeedLotFact },
  cornName: string,
  what: OffTypeKind,
): readonly OffTypeCount[] {
  return Object.values(seedLots)
    .filter(({ name }) => isSameCorn(name, cornName))
    .flatMap(({ offTypes }) => offTypes)
    .filter((one) => one.what === what)
    .map(({ countedOn, offTypesCount, ofCount }) => ({ year: Number(countedOn.slice(0, 4)), offTypesCount, ofCount }))
    .sort((a, b) => a.year - b.year)
}

/** Their trend; null before any was counted. */
export function offTypesOfCorn(
  seedLots: { readonly [id: string]: SeedLotFact },
  cornName: string,
  what: OffTypeKind,
): CalcResult | null {
  const counts = offTypeCounts(seedLots, cornName, what)
  return counts.length === 0 ? null : offTypeTrend({ counts })
}
