/**
 * What the book says, folded from its entries: plain JSON, records keyed by id, ids in order of their making. The same
 * set of entries gives the same facts whatever the order they arrived in.
 */
import type { HappenedAt, Visibility } from '../envelope.ts'
import type { Json } from '../json.ts'
import type { BodyOf, UnreadReason } from '../kinds/index.ts'
import type { RunEvent } from '../kinds/run.ts'
import type { GapParams } from '../refusal.ts'

/** Which entry said so, and when it happened. */
export interface Said extends HappenedAt {
  readonly entryId: string
  readonly personId: string
  readonly deviceId: string
  readonly visibility: Visibility
}

/** A body with the entry that said it. */
export type Told<Body> = Body & { readonly at: Said }

export type KitchenFact = Omit<BodyOf<'kitchen-noted'>, 'kitchenId'> & {
  readonly kitchenId: string
  /** Empty until the kitchen's opening has arrived. */
  readonly name: string
  readonly demo: boolean
}

/** Where a lot's corn went, every gram named. Σ of the rest = `broughtInKg`. All in kg. */
export interface CornBalance {
  readonly broughtInKg: number
  /** Cobs, silk and dust: ears shelled less kernels got. */
  readonly cobsKg: number
  readonly sortedOutKg: number
  readonly seedKg: number
  readonly usedInBatchesKg: number
  readonly eatenKg: number
  readonly givenKg: number
  readonly discardedKg: number
  /** Ears where `leftAs` is ears. Below zero when more is told than there was; then a question stands. */
  readonly leftKg: number
  readonly leftAs: 'ears' | 'shelled' | 'both'
  /** Part of `leftKg` that plans not yet begun have spoken for. */
  readonly setAsideKg: number
}

export interface CornLotFact extends Told<BodyOf<'corn-lot-brought-in'>> {
  readonly sorts: readonly Told<BodyOf<'corn-sorted'>>[]
  readonly shellings: readonly Told<BodyOf<'corn-shelled'>>[]
  readonly uses: readonly Told<BodyOf<'lot-used'>>[]
  /** By the day of the test; the last one is the present one. */
  readonly moistureTests: readonly Told<BodyOf<'moisture-tested'>>[]
  /** By the day it began to lie so. */
  readonly storeNotes: readonly Told<BodyOf<'store-condition-noted'>>[]
  /** Null where the lot was told by volume only: a weight is needed to balance. */
  readonly balance: CornBalance | null
}

export type SeedFact = Told<BodyOf<'seed-put-by'>>

export interface AlkaliLotFact extends Told<BodyOf<'alkali-lot-recorded'>> {
  /** In order of happening; the last one stands. */
  readonly judgements: readonly Told<BodyOf<'alkali-lot-judged'>>[]
  /** How strong it was found, in order of happening. */
  readonly tests: readonly Told<BodyOf<'alkali-lot-tested'>>[]
  /** The last judgement; `unknown` before any. */
  readonly judged: 'works' | 'weak' | 'unknown'
}

export type PotFact = Told<BodyOf<'pot-recorded'>>

export interface CannerFact extends Told<BodyOf<'canner-recorded'>> {
  /** By the day of the test; the last one is the present one. */
  readonly gaugeTests: readonly Told<BodyOf<'gauge-tested'>>[]
}

export type StandingFact = Told<BodyOf<'standing-read'>>

export interface AlkaliAddition {
  readonly potLoad: number
  readonly alkaliLotId: string
  readonly cups?: number
  readonly massKg?: number
  readonly at: Said
}

export interface BatchFact {
  readonly batchId: string
  /** The plan that stands: the last one. */
  readonly plan: Told<BodyOf<'batch-planned'>>
  readonly earlierPlans: readonly Told<BodyOf<'batch-planned'>>[]
  readonly stages: readonly Told<BodyOf<'stage-noted'>>[]
  readonly cook: readonly Told<BodyOf<'cook-noted'>>[]
  readonly sorts: readonly Told<BodyOf<'corn-sorted'>>[]
  readonly additions: readonly AlkaliAddition[]
  /** Something was done at the kettle, not only planned. */
  readonly begun: boolean
  /** Corn used, by lot: as told by lot-used entries, else, once begun, as planned. */
  readonly cornUsed: readonly { readonly lotId: string; readonly massKg: number }[]
}

export interface RunEventFact {
  readonly event: RunEvent
  readonly instant: string
  readonly zone: string
  readonly entryId: string
  readonly personId: string
  readonly deviceId: string
}

export interface RunFact {
  readonly runId: string
  readonly begun: Told<BodyOf<'run-begun'>>
  /** In order of happening, then device and its sequence, then id. */
  readonly events: readonly RunEventFact[]
}

export interface FoodLotFact extends Told<BodyOf<'food-put-up'>> {
  readonly uses: readonly Told<BodyOf<'lot-used'>>[]
  /** What was found on opening, in order of happening. */
  readonly openings: readonly Told<BodyOf<'food-opened'>>[]
  /** How it was ground or roasted, where it was. */
  readonly workings: readonly Told<BodyOf<'food-worked'>>[]
  /** Jars or packs told as used or opened. */
  readonly usedCount: number
  /** Put up less used; below zero when more is told than there was; then a question stands. */
  readonly remainingCount: number
  /** Only where the lot has a weight. [kg] */
  readonly remainingKg?: number
}

export interface PlotFact extends Told<BodyOf<'plot-recorded'>> {
  /** Other corn near by, the latest word on each. */
  readonly neighbours: readonly Told<BodyOf<'neighbour-corn-recorded'>>[]
  /** What it is to be planted with, the latest word on each year, by year. */
  readonly plans: readonly Told<BodyOf<'field-planned'>>[]
}

export interface PlantingFact extends Told<BodyOf<'planting-recorded'>> {
  /** In order of happening, as are the lists below. */
  readonly stands: readonly Told<BodyOf<'stand-counted'>>[]
  readonly tassels: readonly Told<BodyOf<'tassel-seen'>>[]
  readonly silks: readonly Told<BodyOf<'silk-seen'>>[]
  readonly harvests: readonly Told<BodyOf<'harvest-brought-in'>>[]
}

/** Where a seed lot's kernels went: put by = tested + given + sown + left. */
export interface SeedKernels {
  readonly putByCount: number
  readonly testedCount: number
  readonly givenCount: number
  readonly sownCount: number
  /** Below zero when more is told than there was; a count of kernels by weight is never exact. */
  readonly leftCount: number
}

export interface SeedLotFact extends Told<BodyOf<'seed-lot-recorded'>> {
  /** By the day of the test; the last one is the newest. */
  readonly tests: readonly Told<BodyOf<'germination-tested'>>[]
  readonly storeNotes: readonly Told<BodyOf<'seed-store-noted'>>[]
  readonly given: readonly Told<BodyOf<'seed-given'>>[]
  readonly sown: readonly Told<BodyOf<'seed-sown'>>[]
  readonly offTypes: readonly Told<BodyOf<'off-types-counted'>>[]
  /** Null where neither a count nor a weight with its kernels was told. */
  readonly kernels: SeedKernels | null
}

/** A pan that cools or cooled. */
export interface CoolingFact {
  readonly coolingId: string
  readonly what: string
  readonly batchId?: string
  /** When it left the heat. */
  readonly at: Said
  /** In order of happening. */
  readonly readings: readonly { readonly temperatureC: number; readonly aroundC?: number; readonly at: Said }[]
  /** Null while it still cools. */
  readonly ended: { readonly how: 'fridge' | 'freezer' | 'eaten' | 'thrown-out'; readonly at: Said } | null
}

/** Something that dries or dried. All weights without the tray. */
export interface DryingFact extends Omit<Extract<BodyOf<'drying-noted'>['seen'], { type: 'begun' }>, 'type'> {
  readonly dryingId: string
  readonly at: Said
  /** In order of happening. */
  readonly weights: readonly { readonly massKg: number; readonly at: Said }[]
  /** Null while it still dries. */
  readonly ended: { readonly how: 'dry' | 'stopped' | 'thrown-out'; readonly at: Said } | null
}

/** A picture without its bytes, which stay in the entry `at.entryId`. */
export type PhotoFact = Told<Omit<BodyOf<'photo-taken'>, 'image'>>

export type RecallFact = Told<BodyOf<'recall-noted'>>

export const QUESTION_CODES = [
  'question-two-canners-one-name',
  'question-corn-used-beyond',
  'question-seed-over-lot',
  'question-lot-eaten-twice',
  'question-treated-seed-used',
  'question-two-heat-off-times',
  'question-story-without-beginning',
  'question-happened-after-written',
  'question-correction-unreadable',
  'question-two-entries-one-id',
] as const

export type QuestionCode = (typeof QUESTION_CODES)[number]

/** Where the entries do not agree with each other: both are kept, and people are asked. */
export interface Question {
  readonly code: QuestionCode
  /** What the message's gaps take (messages/en/errors.json). */
  readonly params: GapParams
  readonly entryIds: readonly string[]
  /** The stories it is about, such as `run:0190...`. */
  readonly entities: readonly string[]
}

/** An entry that is kept and not among the facts. */
export interface UnreadEntry {
  readonly entryId: string
  readonly kind: string
  readonly kindVersion: number
  readonly why: UnreadReason | 'erased'
}

/** One entry as the fold keeps it. */
export interface LedgerLine {
  readonly id: string
  readonly hash: string
  readonly kitchenId: string
  readonly deviceId: string
  readonly deviceSeq: number
  readonly personId: string
  readonly visibility: Visibility
  readonly kind: string
  readonly kindVersion: number
  readonly instant: string
  readonly zone: string
  readonly writtenAt: string
  /** At the kind's present version; null when erased or unread. */
  readonly body: Json
  /** Why it is not read, where it is not. */
  readonly why?: UnreadReason | 'erased'
  /** Another line claims the same id. */
  readonly twin?: true
}

/** The entries behind the facts, by story and in order, so that a late one refolds only its own. */
export interface Ledger {
  readonly byEntity: { readonly [entity: string]: readonly LedgerLine[] }
  /** The story of each entry; `unread` for one that has none. */
  readonly entityOf: { readonly [entryId: string]: string }
  /** What must be asked about one story by itself. */
  readonly questionsOf: { readonly [entity: string]: readonly Question[] }
}

export type ById<T> = { readonly [id: string]: T }

export interface Facts {
  /** Null until anything about the kitchen is told. */
  readonly kitchen: KitchenFact | null
  readonly cornLots: ById<CornLotFact>
  readonly seed: ById<SeedFact>
  readonly alkaliLots: ById<AlkaliLotFact>
  readonly pots: ById<PotFact>
  readonly canners: ById<CannerFact>
  readonly standings: ById<StandingFact>
  readonly batches: ById<BatchFact>
  readonly runs: ById<RunFact>
  readonly foodLots: ById<FoodLotFact>
  readonly plots: ById<PlotFact>
  readonly plantings: ById<PlantingFact>
  readonly seedLots: ById<SeedLotFact>
  readonly recalls: ById<RecallFact>
  readonly coolings: ById<CoolingFact>
  readonly dryings: ById<DryingFact>
  readonly photos: ById<PhotoFact>
  /** All entries, read or not. */
  readonly entryCount: number
  readonly questions: readonly Question[]
  readonly unread: readonly UnreadEntry[]
  readonly ledger: Ledger
}
