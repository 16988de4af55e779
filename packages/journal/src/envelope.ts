/**
 * One line of the book: an envelope that never changes and a body that may be erased. The envelope names the body by a
 * salted hash, so the chain over envelopes stays provable when a body has gone and nobody can guess what it said.
 * Leaves out: what a body means (kinds/), and whether lines follow each other (chain.ts).
 */
import { sha256 } from '@noble/hashes/sha2.js'
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js'
import * as v from 'valibot'
import { canonicalJson, type Json } from './json.ts'

/** Who may see a line: the keeper alone unless said otherwise. */
export type Visibility = 'keeper' | 'family' | 'community' | 'open'

/** A moment in UTC, to the millisecond, with the zone the people were in (an IANA name such as `America/Toronto`). */
export interface HappenedAt {
  readonly instant: string
  readonly zone: string
}

export interface Envelope {
  /** UUIDv7, made by the author. */
  readonly id: string
  readonly kitchenId: string
  /** One per installation. */
  readonly deviceId: string
  /** 1, 2, 3 ... without gaps, within one kitchen and device. */
  readonly deviceSeq: number
  /** `hash` of the line before it on the same kitchen and device; 64 zeros for the first. */
  readonly prevHash: string
  readonly personId: string
  readonly kind: string
  readonly kindVersion: number
  readonly happenedAt: HappenedAt
  readonly writtenAt: string
  readonly bodyHash: string
  readonly visibility: Visibility
}

export interface Body {
  /** 32 hex digits, random for each line. */
  readonly salt: string
  readonly value: Json
}

export interface StoredEntry {
  readonly envelope: Envelope
  /** SHA-256 of the canonical JSON of the envelope, in hex. */
  readonly hash: string
  /** Null once erased. */
  readonly body: Body | null
}

/** `prevHash` of a first line. */
export const NO_PREVIOUS_HASH = '0'.repeat(64)

/** Where a chain stands: what the next line must continue. */
export interface ChainHead {
  readonly deviceSeq: number
  readonly hash: string
  readonly writtenAt: string
}

/** SHA-256 of the text's UTF-8 bytes, in hex. @source fips-180-4 */
export function sha256Hex(text: string): string {
  return bytesToHex(sha256(utf8ToBytes(text)))
}

/** Hash of an envelope, in hex: over all its fields, in canonical JSON. */
export function envelopeHash(envelope: Envelope): string {
  return sha256Hex(canonicalJson(envelope))
}

/** Hash of a body, in hex: over its salt and its value in canonical JSON. */
export function bodyHash({ salt, value }: Body): string {
  return sha256Hex(salt + canonicalJson(value))
}

const uuid = v.pipe(v.string(), v.regex(/^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/))
const uuidV7 = v.pipe(v.string(), v.regex(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/))
const hex64 = v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/))
const instant = v.pipe(
  v.string(),
  v.regex(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/),
  v.check((text) => !Number.isNaN(Date.parse(text)) && new Date(text).toISOString() === text),
)

const envelopeSchema = v.strictObject({
  id: uuidV7,
  kitchenId: uuid,
  deviceId: uuid,
  deviceSeq: v.pipe(v.number(), v.safeInteger(), v.minValue(1)),
  prevHash: hex64,
  personId: uuid,
  kind: v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{0,63}$/)),
  kindVersion: v.pipe(v.number(), v.safeInteger(), v.minValue(1), v.maxValue(9999)),
  happenedAt: v.strictObject({ instant, zone: v.pipe(v.string(), v.minLength(1), v.maxLength(64)) }),
  writtenAt: instant,
  bodyHash: hex64,
  visibility: v.picklist(['keeper', 'family', 'community', 'open']),
})

const entrySchema = v.strictObject({
  envelope: envelopeSchema,
  hash: hex64,
  body: v.nullable(
    v.strictObject({ salt: v.pipe(v.string(), v.regex(/^[0-9a-f]{32}$/)), value: v.custom<Json>(() => true) }),
  ),
})

/** Null when `value` has the shape of an entry, else the field that is wrong, for example `envelope.deviceSeq`. */
export function malformedField(value: unknown): string | null {
  const parsed = v.safeParse(entrySchema, value, { abortEarly: true })
  return parsed.success ? null : (v.getDotPath(parsed.issues[0]) ?? 'entry')
}
