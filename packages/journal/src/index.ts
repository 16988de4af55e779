/** The pure door of the book: entries, kinds, facts and the store port. Stores have doors of their own. */
export {
  type Author,
  type AuthorSetup,
  type Clock,
  createAuthor,
  createId,
  type Randomness,
  type WriteOptions,
} from './author.ts'
export {
  type ChainReport,
  type ClockStep,
  clockSteps,
  type EntryFault,
  type EntryFaultCode,
  entryFault,
  type KnownHead,
  verifyChain,
} from './chain.ts'
export { type DemoKitchen, type DemoSetup, demoKitchen } from './demo.ts'
export {
  type Body,
  bodyHash,
  type ChainHead,
  type Envelope,
  envelopeHash,
  type HappenedAt,
  NO_PREVIOUS_HASH,
  type StoredEntry,
  sha256Hex,
  type Visibility,
} from './envelope.ts'
export {
  type AlkaliAddition,
  type AlkaliLotFact,
  type BatchFact,
  type ById,
  type CannerFact,
  type CoolingFact,
  type CornBalance,
  type CornLotFact,
  type DryingFact,
  type Facts,
  type FoodLotFact,
  type KitchenFact,
  type Ledger,
  type LedgerLine,
  type PhotoFact,
  type PlantingFact,
  type PlotFact,
  type PotFact,
  QUESTION_CODES,
  type Question,
  type QuestionCode,
  type RecallFact,
  type RunEventFact,
  type RunFact,
  type Said,
  type SeedFact,
  type SeedKernels,
  type SeedLotFact,
  type StandingFact,
  type Told,
  type UnreadEntry,
} from './fold/facts.ts'
export { applyEntries, foldFacts, NO_FACTS } from './fold/fold.ts'
export { type EntryHistory, history } from './fold/history.ts'
export { canonicalJson, type Json } from './json.ts'
export { SORT_CAUSES, TAILS_GO } from './kinds/corn-lot.ts'
export {
  type BodyOf,
  type CheckedBody,
  checkBody,
  isKind,
  KINDS,
  type Kind,
  type ReadBody,
  readBody,
  type UnreadReason,
} from './kinds/index.ts'
export { PHOTO_LONGEST_PX, PHOTO_MOST_CHARACTERS } from './kinds/photo.ts'
export type { RunEvent } from './kinds/run.ts'
export { type Member, type MemberLine, memberLines, memberStories, membersOf } from './people/members.ts'
export { factsOpenedTo } from './people/opened-to.ts'
export { createReaderView, type Reader, type ReaderView, type ViewPage } from './people/reader-view.ts'
export { createReadingIndex, type IndexedLine, type ReadingIndex, type WidthChange } from './people/reading-index.ts'
export {
  ACTS,
  type Act,
  actOfKind,
  mayDo,
  mayRead,
  ROLES,
  type Role,
  readsFrom,
  type Standing,
  VISIBILITIES,
  type Width,
  widthOf,
} from './people/roles.ts'
export {
  cornOnPaper,
  mayNameOrigin,
  mayNameTo,
  type Origin,
  originOnLabel,
  type SeedOrigin,
  type Share,
  seedOnPaper,
  shareOf,
} from './people/shares.ts'
export { type Proposal, type ProposalMoment, propose } from './propose.ts'
export { createRecorder, type Recorder, type RecorderSetup } from './record.ts'
export {
  type FoundRecord,
  findRecord,
  RECORD_KINDS,
  type RecordKind,
  recordAddress,
} from './record-address.ts'
export { BodyRefused, type GapParams, REFUSAL_CODES, type Refusal, type RefusalCode } from './refusal.ts'
export type { AppendOutcome, EntryOutcome, JournalStore, KitchenSummary, ReadPage, ReadQuery } from './store.ts'
export {
  acknowledgedBy,
  exchange,
  NOTHING_EXCHANGED,
  type RemoteBook,
  type SyncReport,
  type SyncSetup,
  type SyncState,
  unacknowledged,
} from './sync.ts'
