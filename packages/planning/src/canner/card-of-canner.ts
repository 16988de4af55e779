/** The card of a canner as the book knows it: its gauges and last test, at the kitchen's elevation. */
import { headspaceRule } from '@crib/guidance'
import type { CannerFact, KitchenFact } from '@crib/journal'
import { convert } from '@crib/science'
import type { HullingAlkali, JarSize } from '../batch/input.ts'
import { type CardOutcome, cannerCard } from './card.ts'
import { dialOf } from './dial.ts'

/** Figures stamped on the weights sold with canners that have one, where the keeper told of none. [lb]  common practice, no source */
export const WEIGHTS_LB = [5, 10, 15] as const

export interface CardWish {
  /** YYYY-MM-DD, for how old the gauge test is. */
  readonly today: string
  readonly jarSize: JarSize
  readonly alkali: HullingAlkali
  /** False where the list of stages does not end with a last cook in fresh water. */
  readonly isHotPack: boolean
  /** Where the process stands was read this season and edition. */
  readonly isStandingRead: boolean
}

/** The card, or why there is none; null while the kitchen's elevation is not told. */
export function cardOfCanner(
  canner: Pick<CannerFact, 'gauges' | 'gaugeTests' | 'rim' | 'electric' | 'weightsLb'>,
  kitchen: Pick<KitchenFact, 'name' | 'elevationM' | 'elevationKnownBy'> | null,
  { today, jarSize, alkali, isHotPack, isStandingRead }: CardWish,
): CardOutcome | null {
  if (kitchen?.elevationM === undefined) return null
  return cannerCard({
    ...(kitchen.name && { siteName: kitchen.name }),
    // 820 ft kept as 249.936 m is 820 ft again.
    elevationFt: Number(convert(kitchen.elevationM, 'M', 'Ft').toFixed(6)),
    elevationKnownBy: kitchen.elevationKnownBy ?? 'map',
    ...(canner.gauges.includes('dial') && { dial: dialOf(canner, today) }),
    ...(canner.gauges.includes('weight') && { weightsLb: canner.weightsLb ?? WEIGHTS_LB }),
    rim: canner.rim,
    isElectric: canner.electric,
    conditions: {
      food: 'hominy',
      alkali,
      hotPack: isHotPack,
      fill: 'loose',
      liquidClear: true,
      headspaceIn: headspaceRule().figure.value,
      jar: jarSize,
      standingRead: isStandingRead,
    },
  })
}
