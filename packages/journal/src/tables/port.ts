/** Facts in tables: what a store offers to whoever folds into them (catch-up.ts) and reads from them (book.ts). */
import type { LedgerLine } from '../fold/facts.ts'

export interface FactState {
  /** Of the fold that made them; empty while they are being made anew. */
  readonly version: string
  /** Cursor: entries that arrived up to it are folded in. */
  readonly upTo: number
  readonly entryCount: number
  readonly turn: number
}

/** A line as the fold takes it. */
export interface FiledLine {
  readonly line: LedgerLine
  /** The story it belongs to by this version's reading. */
  readonly story: string
  /** The story it was filed under when it arrived, where that was asked for. */
  readonly filedUnder?: string | undefined
  readonly arrival: number
}

export interface FactRow {
  readonly part: string
  readonly id: string
  /** Something of it is left, or still to come: what lists show first. */
  readonly open: boolean
  /** As fact-text.ts writes it; null removes the row. */
  readonly value: string | null
}

export interface QuestionRows {
  readonly story: string
  /** 0 of the story by itself; 1 and up across stories, in the order questions are listed. */
  readonly rank: number
  /** JSON; they take the place of all there were of this story and rank. */
  readonly values: readonly string[]
}

export interface RefRows {
  readonly from: string
  readonly to: readonly string[]
}

export interface FactChange {
  readonly kitchenId: string
  /** The turn the change was worked out from; 0 where there is no state yet. */
  readonly fromTurn: number
  readonly next: Omit<FactState, 'turn'>
  /** Remove every fact of the kitchen first. */
  readonly anew?: boolean
  readonly facts?: readonly FactRow[]
  readonly questions?: readonly QuestionRows[]
  readonly refs?: readonly RefRows[]
  /** No longer stale. */
  readonly fresh?: readonly string[]
  /** Filed under `from` by a program that could not read it. */
  readonly refiled?: readonly { readonly arrival: number; readonly from: string; readonly to: string }[]
}

export interface FactPage {
  /** Id of the last fact of the page before. */
  readonly after?: string
  readonly limit: number
  readonly newestFirst: boolean
  readonly onlyOpen: boolean
}

export interface FactTables {
  state(kitchenId: string): Promise<FactState | null>
  /** Before everything is read: lets the engine look how much there is, so that it reads by its indexes. */
  prepare(): Promise<void>
  /** Where the entries themselves stand. */
  last(kitchenId: string): Promise<{ readonly upTo: number; readonly entryCount: number }>
  /** Entries after a cursor, in order of arrival. */
  arrivals(kitchenId: string, after: number, limit: number): Promise<readonly FiledLine[]>
  /** Entries of the stories named. */
  ofStories(kitchenId: string, stories: readonly string[], upTo: number): Promise<readonly FiledLine[]>
  /** Entries in order of story, then arrival, after a place; without their hashes, which no fact needs. */
  inStoryOrder(kitchenId: string, page: StoryPage): Promise<readonly FiledLine[]>
  /** Stories whose name begins so. */
  storiesBeginning(kitchenId: string, beginning: string): Promise<readonly string[]>
  byId(kitchenId: string, entryIds: readonly string[]): Promise<readonly FiledLine[]>
  refs(
    kitchenId: string,
    stories: readonly string[],
  ): Promise<readonly { readonly from: string; readonly to: string }[]>
  stale(kitchenId: string): Promise<readonly string[]>
  /** False, and nothing changed, when another fold was faster or a body was erased meanwhile. */
  change(change: FactChange): Promise<boolean>
  /**
   * Folds a long book in several threads, where the engine has them; `take` gets rows to write, one call at a time.
   * The number of stories.
   */
  inLanes?(job: LaneJob, take: (rows: LaneRows) => Promise<void>): Promise<number>
  /** Texts of facts by id. */
  facts(kitchenId: string, part: string, ids: readonly string[]): Promise<ReadonlyMap<string, string>>
  page(
    kitchenId: string,
    part: string,
    page: FactPage,
  ): Promise<readonly { readonly id: string; readonly value: string }[]>
  counts(kitchenId: string): Promise<readonly { readonly part: string; readonly all: number; readonly open: number }[]>
  /** By rank, then story: JSON. */
  questions(kitchenId: string, limit: number): Promise<readonly string[]>
}

export interface StoryPage {
  /** Begin after this story's line of that arrival. */
  readonly story: string
  readonly arrival: number
  readonly upTo: number
  readonly limit: number
}

export interface LaneJob {
  readonly kitchenId: string
  readonly upTo: number
}

export type LaneRows = Pick<FactChange, 'facts' | 'questions' | 'refs'>
