/** What a batch plan is made from: plain data, so that it can be stored with the plan and worked out again years later. */
import type { AlkaliKey, GaugeKind } from '@crib/guidance'
import type { SeedAnswer } from '../seed/seed-answer.ts'
import type { Amount } from '../shared/corn-measure.ts'
import type { Stage, WashPattern } from './stages.ts'

export type CornType = 'flint' | 'flour' | 'dent' | 'popcorn' | 'unknown'
export type Hull = 'easy' | 'thick'
export type Fill = 'loose-to-headspace' | 'half' | 'third'
export type JarSize = 'half-pint' | 'pint' | 'quart'
export type Ending = 'jars' | 'freezer' | 'dried' | 'flour' | 'roasted' | 'tonight'
/** Alkalis a batch can be hulled with. */
export type HullingAlkali = Exclude<AlkaliKey, 'none'>

export interface Spread {
  readonly low: number
  readonly middle: number
  readonly high: number
}

/** A number from the keeper's own entries, with what the book says and how many entries stand behind it. */
export interface OwnSpread extends Spread {
  readonly recordsCount?: number
}

export interface AlkaliLot {
  readonly name: string
  readonly judged?: 'works' | 'weak' | 'unknown'
  /** Own record: ash per dry liquid quart of corn. [cup] */
  readonly cupsPerLiquidQt?: number
  /** Own record: when the hulls slipped, from the boil. [min] */
  readonly slipMin?: number
  readonly burntClean?: boolean
  readonly cold?: boolean
  readonly sifted?: boolean
  readonly lidded?: boolean
  readonly onlyCleanWood?: boolean
}

export interface Pot {
  readonly name: string
  readonly volumeLiquidQt: number
  readonly material: 'stainless' | 'enamel' | 'cast-iron' | 'aluminium' | 'other'
}

/** Own record of the water one pot-load took, stage by stage. It replaces the whole default account. */
export interface WaterRecord {
  /** Dry corn in the pot-load that was recorded. [liquid qt] */
  readonly cornLiquidQt: number
  readonly rows: readonly {
    readonly stageKind: Stage['kind']
    readonly timesCount: number
    /** Each time. [US gal] */
    readonly waterLiquidGal: number
  }[]
}

/** Own timings of one canner load. [min] */
export interface CannerTimings {
  readonly heat: number
  readonly comeUp: number
  readonly coolToZero: number
  readonly unload: number
  readonly reload: number
}

export interface PlanCanner {
  readonly name: string
  readonly gauges: readonly GaugeKind[]
  readonly capacityPints: number
  readonly capacityQuarts: number
  readonly timingsMin?: CannerTimings
}

export interface EndingShare {
  readonly ending: Ending
  /** Of the hominy; all shares together make 1. */
  readonly shareFraction: number
}

export interface BatchPlanInput {
  readonly from:
    | { readonly kind: 'corn'; readonly form: 'shelled' | 'ears'; readonly amount: Amount }
    /** Jars wanted; the corn is worked back from them. */
    | { readonly kind: 'jars'; readonly jarCount: number }
  readonly seed: SeedAnswer
  readonly cornName?: string
  readonly cornType: CornType
  readonly hull?: Hull
  /** Dressed (treated) seed corn is never food. */
  readonly isTreatedSeed?: boolean
  /** The lot's own weight. [lb per liquid qt] */
  readonly lbPerLiquidQt?: number
  /** Sorted out before the pot, by weight. */
  readonly sortedOutDryFraction?: number
  /** Sorted out after hulling, by volume. */
  readonly sortedOutWetFraction?: number
  readonly shellersCount?: number
  /** Own record, shelled corn per person. [lb/h] */
  readonly shellingLbPerH?: number
  readonly alkali: HullingAlkali
  readonly alkaliLot?: AlkaliLot
  readonly pots: readonly Pot[]
  /** How full a pot is at the start, at most. Default two-thirds. */
  readonly potFillLimitFraction?: number
  /** Water to dry corn in the alkali boil, by volume. */
  readonly waterToCornRatio?: number
  readonly washPattern?: WashPattern
  /** An edited list replaces the pattern. */
  readonly stages?: readonly Stage[]
  readonly waterRecord?: WaterRecord
  /** Own record: hominy per volume of dry corn. */
  readonly hominyPerDryVolume?: OwnSpread
  readonly endings: readonly EndingShare[]
  readonly fill?: Fill
  readonly jarSize?: JarSize
  readonly canners: readonly PlanCanner[]
  readonly elevationFt?: number
  readonly elevationKnownBy?: 'map' | 'phone' | 'survey'
  /** The keeper has read where this jar process stands, this season and edition. */
  readonly isStandingRead: boolean
  readonly wantsSalt?: boolean
  readonly spareLidFraction?: number
}
