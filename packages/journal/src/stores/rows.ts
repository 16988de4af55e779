/** How an entry lies in a table: the same columns in every SQL store. */
import { hash } from 'node:crypto'
import type { Envelope, StoredEntry, Visibility } from '../envelope.ts'
import type { LedgerLine } from '../fold/facts.ts'
import { placeEntry, UNREAD } from '../fold/ledger.ts'
import type { Json } from '../json.ts'
import { type ReadBody, readBody } from '../kinds/index.ts'
import type { FiledLine } from '../tables/port.ts'

/** Columns of the entry table after `arrival`, in the order of `entryValues`. */
export const ENTRY_COLUMNS = [
  'id',
  'kitchen_id',
  'device_id',
  'device_seq',
  'prev_hash',
  'person_id',
  'kind',
  'kind_version',
  'happened_at',
  'happened_zone',
  'written_at',
  'body_hash',
  'visibility',
  'hash',
] as const

/** What a read selects: the entry as `e`, its body as `b`, and where it arrived. */
export const READ_COLUMNS = [...ENTRY_COLUMNS.map((column) => `e.${column}`), 'b.salt', 'b.value', 'e.arrival'].join(
  ', ',
)

/** One row of `READ_COLUMNS`. */
export type ReadRow = readonly [
  ...EntryValues,
  salt: string | null,
  value: string | null,
  arrival: number,
  ...more: unknown[],
]

export type EntryValues = readonly [
  id: string,
  kitchenId: string,
  deviceId: string,
  deviceSeq: number,
  prevHash: string,
  personId: string,
  kind: string,
  kindVersion: number,
  happenedAt: string,
  happenedZone: string,
  writtenAt: string,
  bodyHash: string,
  visibility: string,
  hash: string,
]

export function entryValues({ envelope: e, hash: own }: StoredEntry): EntryValues {
  return [
    e.id,
    e.kitchenId,
    e.deviceId,
    e.deviceSeq,
    e.prevHash,
    e.personId,
    e.kind,
    e.kindVersion,
    e.happenedAt.instant,
    e.happenedAt.zone,
    e.writtenAt,
    e.bodyHash,
    e.visibility,
    own,
  ]
}

export function entryOf(row: ReadRow): StoredEntry {
  const [id, kitchenId, deviceId, deviceSeq, prevHash, personId, kind, kindVersion] = row
  const [instant, zone, writtenAt, bodyHash, visibility, own, salt, value] = row.slice(8) as string[]
  const envelope: Envelope = {
    id,
    kitchenId,
    deviceId,
    deviceSeq,
    prevHash,
    personId,
    kind,
    kindVersion,
    happenedAt: { instant: instant!, zone: zone! },
    writtenAt: writtenAt!,
    bodyHash: bodyHash!,
    visibility: visibility as Visibility,
  }
  return { envelope, hash: own!, body: salt != null && value != null ? { salt, value: parseValue(value) } : null }
}

/** What the fold needs of an entry: fewer columns than the whole, since a million of them are read at once. */
export const LINE_COLUMNS = `e.id, concat_ws(' ', e.device_id, e.person_id, e.visibility, e.kind, e.kind_version,
  e.happened_zone), e.device_seq, e.happened_at, nullif(e.written_at, e.happened_at), e.hash, b.value, e.arrival`

export type LineRow = readonly [
  id: string,
  /** What is mostly the same from line to line, as one text: fewer texts to make and to keep. */
  likeOthers: string,
  deviceSeq: number,
  happenedAt: string,
  /** Null where it was written down as it happened. */
  writtenAt: string | null,
  hash: string,
  value: string | null,
  arrival: number,
  filedUnder?: string,
]

type LikeOthers = Pick<LedgerLine, 'deviceId' | 'personId' | 'visibility' | 'kind' | 'kindVersion' | 'zone'>

const likeOthers = new Map<string, LikeOthers>()
const MOST_KEPT = 5000
let lastText = ''
let lastRead: LikeOthers | undefined

/** Only a zone may hold spaces. */
function likeOthersOf(text: string): LikeOthers {
  // Of one story most lines are: comparing two texts costs less than looking one up.
  if (lastRead && text === lastText) return lastRead
  lastText = text
  lastRead = likeOthers.get(text)
  if (lastRead) return lastRead
  const [deviceId, personId, visibility, kind, kindVersion, ...zone] = text.split(' ') as string[]
  lastRead = {
    deviceId: deviceId!,
    personId: personId!,
    visibility: visibility as Visibility,
    kind: kind!,
    kindVersion: Number(kindVersion),
    zone: zone.join(' '),
  }
  if (likeOthers.size >= MOST_KEPT) likeOthers.clear()
  likeOthers.set(text, lastRead)
  return lastRead
}

export function filedLine(row: LineRow, kitchenId: string): FiledLine {
  const [id, text, deviceSeq, instant, writtenAt, hash, value, arrival, filedUnder] = row
  const { deviceId, personId, visibility, kind, kindVersion, zone } = likeOthersOf(text)
  const read: ReadBody | null = value === null ? null : readBody(kind, kindVersion, parseValue(value))
  const line = {
    id,
    hash,
    kitchenId,
    deviceId,
    deviceSeq,
    personId,
    visibility,
    kind,
    kindVersion,
    instant,
    zone,
    writtenAt: writtenAt ?? instant,
    body: read?.ok ? read.body : null,
  }
  if (read?.ok) return { line, story: read.entity, arrival, filedUnder }
  return { line: { ...line, why: read ? read.why : 'erased' }, story: UNREAD, arrival, filedUnder }
}

/** An entry ready to be kept: whole by itself, with the text its body is kept as. */
export interface KeepableEntry {
  readonly entry: StoredEntry
  /** Canonical JSON; null once erased. */
  readonly bodyText: string | null
}

/** The system's own, ten times faster than one written for every browser. @source fips-180-4 */
export const systemSha256 = (text: string): string => hash('sha256', text)

/** The story the entry is filed under; `unread` for what this version cannot read. */
export function storyOf(entry: StoredEntry): string {
  return placeEntry(entry).entity
}

/** A damaged text is kept as text: its hash will not hold, so verify names it. */
export function parseValue(text: string): Json {
  try {
    return JSON.parse(text) as Json
  } catch {
    return text
  }
}
