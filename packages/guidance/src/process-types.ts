/** What a process lookup asks and answers. */
import type { Sentence } from '@crib/science'
import type { Seen, Standing } from '../schema/envelope.ts'
import type { AlkaliKey, FoodKey, JarKey, PrintedJar, ProcessKey } from '../schema/process-tables.ts'
import type { FoundPressure, GaugeKind, OffTablePressure } from './pressure.ts'

export interface ProcessQuery {
  readonly food: FoodKey
  readonly alkali: AlkaliKey
  /** Hominy: kernels reheated 30 to 45 min in fresh water just before filling. */
  readonly hotPack: boolean
  readonly fill: 'loose' | 'packed-tight'
  readonly liquidClear: boolean
  readonly headspaceIn: number
  readonly jar: JarKey
  readonly gauge: GaugeKind
  readonly elevationFt: number
  /** The keeper has read where this process stands, this season and edition. */
  readonly standingRead: boolean
}

/** Minutes heard of for the same food, shown beside the printed ones and never used. */
export interface HearsayMinutes {
  readonly jar: PrintedJar
  readonly processMin: number
  readonly sourceKey: string
  readonly note: Sentence
}

export interface PublishedProcess {
  readonly key: ProcessKey
  readonly title: string
  readonly jar: JarKey
  /** The printed size whose minutes this jar takes. */
  readonly timeAs: PrintedJar
  readonly processMin: number
  readonly headspaceIn: number
  readonly pressure: FoundPressure
  readonly standing: Standing
  /** Whether the minutes were read in the source or are quoted from memory. */
  readonly seen: Seen
  readonly hearsay: readonly HearsayMinutes[]
  readonly tableId: string
  readonly sourceKeys: readonly string[]
  readonly edition: string
}

/** A condition of the printed direction that the query does not meet. */
export type UnmetCondition =
  | 'alkali-not-tested'
  | 'not-hot-pack'
  | 'packed-tight'
  | 'cloudy-liquid'
  | 'other-headspace'
  | 'jar-not-printed'

export type ProcessOutcome =
  | {
      readonly kind: 'found'
      readonly process: PublishedProcess
      /** Where it stands, worded. */
      readonly standingSentences: readonly Sentence[]
    }
  | {
      readonly kind: 'no-published-process'
      readonly why: readonly Sentence[]
      readonly unmet: readonly UnmetCondition[]
      readonly looksLike: readonly ProcessKey[]
      /** none + withdrawn for ash and lime hominy; the standing of the look-alike for this food. */
      readonly standing: Standing
      readonly standingSentences: readonly Sentence[]
      readonly askWhom: readonly Sentence[]
      /**
       * The look-alike's process, only after its standing was read and when every other condition of its direction is
       * met. Never a recommendation.
       */
      readonly openedByReading?: PublishedProcess
      readonly edition: string
    }
  | (OffTablePressure & { readonly standing: Standing; readonly standingSentences: readonly Sentence[] })
  | {
      readonly kind: 'conflict'
      readonly topic: 'process-minutes'
      readonly processes: readonly PublishedProcess[]
      readonly why: readonly Sentence[]
      readonly askWhom: readonly Sentence[]
      readonly edition: string
    }
