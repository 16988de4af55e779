/**
 * Every kind of entry this version knows, and reading a body by its kind. A kind or version from a newer program is
 * kept as it is, never dropped, and shown as written by a newer version.
 */
import * as v from 'valibot'
import type { Json } from '../json.ts'
import type { Refusal } from '../refusal.ts'
import { alkaliLotJudged, alkaliLotRecorded } from './alkali-lot.ts'
import { alkaliLotTested } from './alkali-lot-tested.ts'
import { entryCorrected, entryWithdrawn } from './amendment.ts'
import { batchPlanned, cookNoted, stageNoted } from './batch.ts'
import { cannerRecorded, gaugeTested } from './canner.ts'
import { cornLotBroughtIn, cornShelled, cornSorted } from './corn-lot.ts'
import {
  fieldPlanned,
  harvestBroughtIn,
  neighbourCornRecorded,
  plantingRecorded,
  plotRecorded,
  silkSeen,
  standCounted,
  tasselSeen,
} from './field.ts'
import { foodPutUp, lotUsed } from './food-lot.ts'
import { foodOpened, moistureTested, recallNoted, storeConditionNoted } from './keeping.ts'
import { coolingNoted, dryingNoted, foodMoved, foodWorked } from './keeping-work.ts'
import { type Frozen, issuesToRefusals, type KindDefinition } from './kind.ts'
import { kitchenNoted, kitchenOpened } from './kitchen.ts'
import { personInvited, personJoined, personLeft, roleChanged } from './people.ts'
import { photoTaken } from './photo.ts'
import { potRecorded } from './pot.ts'
import { quickParser, UNFIT } from './quick-parse.ts'
import { runBegun, runEventHappened } from './run.ts'
import { germinationTested, offTypesCounted, seedGiven, seedLotRecorded, seedSown, seedStoreNoted } from './seed-lot.ts'
import { seedPutBy } from './seed-put-by.ts'
import { standingRead } from './standing-read.ts'
import { visibilitySet } from './visibility-set.ts'

export const KINDS = {
  'kitchen-opened': kitchenOpened,
  'kitchen-noted': kitchenNoted,
  'corn-lot-brought-in': cornLotBroughtIn,
  'corn-sorted': cornSorted,
  'corn-shelled': cornShelled,
  'seed-put-by': seedPutBy,
  'alkali-lot-recorded': alkaliLotRecorded,
  'alkali-lot-judged': alkaliLotJudged,
  'alkali-lot-tested': alkaliLotTested,
  'pot-recorded': potRecorded,
  'canner-recorded': cannerRecorded,
  'gauge-tested': gaugeTested,
  'standing-read': standingRead,
  'batch-planned': batchPlanned,
  'stage-noted': stageNoted,
  'cook-noted': cookNoted,
  'run-begun': runBegun,
  'run-event': runEventHappened,
  'food-put-up': foodPutUp,
  'lot-used': lotUsed,
  'entry-corrected': entryCorrected,
  'entry-withdrawn': entryWithdrawn,
  'person-invited': personInvited,
  'person-joined': personJoined,
  'role-changed': roleChanged,
  'person-left': personLeft,
  'visibility-set': visibilitySet,
  'plot-recorded': plotRecorded,
  'field-planned': fieldPlanned,
  'neighbour-corn-recorded': neighbourCornRecorded,
  'planting-recorded': plantingRecorded,
  'stand-counted': standCounted,
  'tassel-seen': tasselSeen,
  'silk-seen': silkSeen,
  'harvest-brought-in': harvestBroughtIn,
  'seed-lot-recorded': seedLotRecorded,
  'germination-tested': germinationTested,
  'seed-store-noted': seedStoreNoted,
  'seed-given': seedGiven,
  'seed-sown': seedSown,
  'off-types-counted': offTypesCounted,
  'moisture-tested': moistureTested,
  'store-condition-noted': storeConditionNoted,
  'food-opened': foodOpened,
  'recall-noted': recallNoted,
  'cooling-noted': coolingNoted,
  'drying-noted': dryingNoted,
  'food-worked': foodWorked,
  'food-moved': foodMoved,
  'photo-taken': photoTaken,
} as const

export type Kind = keyof typeof KINDS

/** The body of a kind, as facts and doors see it. */
export type BodyOf<K extends Kind> = Frozen<v.InferOutput<(typeof KINDS)[K]['schema']>>

export type CheckedBody<K extends Kind> =
  | { readonly ok: true; readonly body: BodyOf<K> }
  | { readonly ok: false; readonly refusals: readonly Refusal[] }

/** Why a stored body is not among the facts: written by a newer version, or not readable by its own kind's rules. */
export type UnreadReason = 'unknown-kind' | 'newer-version' | 'unreadable-body'

export type ReadBody =
  | { readonly ok: true; readonly kind: Kind; readonly body: Json; readonly entity: string }
  | { readonly ok: false; readonly why: UnreadReason }

export function isKind(kind: string): kind is Kind {
  return Object.hasOwn(KINDS, kind)
}

/** A body of the present version checked by its kind: shape and limits. */
export function checkBody<K extends Kind>(kind: K, value: unknown): CheckedBody<K> {
  const parsed = v.safeParse(KINDS[kind].schema, value)
  if (!parsed.success) return { ok: false, refusals: issuesToRefusals(parsed.issues) }
  return { ok: true, body: parsed.output as BodyOf<K> }
}

/** A stored body brought to the present version and checked. The stored entry itself is never changed. */
export function readBody(kind: string, kindVersion: number, value: Json): ReadBody {
  if (!isKind(kind)) return { ok: false, why: 'unknown-kind' }
  const definition = KINDS[kind] as unknown as KindDefinition
  if (kindVersion > definition.version) return { ok: false, why: 'newer-version' }
  const migrated = definition.migrate.slice(kindVersion - 1).reduce((body, step) => step(body), value)
  const quick = quickParserOf(kind)(migrated)
  if (quick !== UNFIT) return { ok: true, kind, body: quick as Json, entity: definition.entity(quick as never) }
  const checked = checkBody(kind, migrated)
  if (!checked.ok) return { ok: false, why: 'unreadable-body' }
  return { ok: true, kind, body: checked.body as Json, entity: definition.entity(checked.body) }
}

const quickParsers = new Map<Kind, ReturnType<typeof quickParser>>()

function quickParserOf(kind: Kind): ReturnType<typeof quickParser> {
  const known = quickParsers.get(kind) ?? quickParser(KINDS[kind].schema)
  quickParsers.set(kind, known)
  return known
}
