/**
 * Writing a line: the author alone makes ids and continues the chain, never a server for a client. Time and randomness
 * are handed in. Leaves out: keeping the line (store.ts).
 */
import { bytesToHex } from '@noble/hashes/utils.js'
import { v7 } from 'uuid'
import {
  bodyHash,
  type ChainHead,
  type Envelope,
  envelopeHash,
  NO_PREVIOUS_HASH,
  type StoredEntry,
  type Visibility,
} from './envelope.ts'
import { type Json, plain } from './json.ts'
import { type BodyOf, checkBody, KINDS, type Kind } from './kinds/index.ts'
import { BodyRefused } from './refusal.ts'

export interface Clock {
  /** Milliseconds since 1970 in UTC. */
  now(): number
}

export interface Randomness {
  bytes(count: number): Uint8Array
}

export interface AuthorSetup {
  readonly kitchenId: string
  readonly deviceId: string
  readonly personId: string
  /** Where this device's chain stands in this kitchen; null before its first line. */
  readonly head: ChainHead | null
  readonly clock: Clock
  readonly random: Randomness
  /** IANA name of the zone the device is in. */
  readonly zone: string
}

export interface WriteOptions {
  /** When it happened, where that is not now: milliseconds since 1970, or an ISO 8601 instant. */
  readonly happenedAt?: { readonly instant: string | number; readonly zone?: string }
  readonly visibility?: Visibility
}

export interface Author {
  /**
   * The next line of the chain.
   *
   * @throws {BodyRefused} when the kind does not take the body; it carries every reason.
   * @throws {RangeError} when the instant or the zone is none.
   */
  write<K extends Kind>(kind: K, body: BodyOf<K>, options?: WriteOptions): StoredEntry
  head(): ChainHead | null
}

/** A new id, ordered by time (UUIDv7). @source rfc-9562 */
export function createId(clock: Clock, random: Randomness): string {
  return v7({ msecs: clock.now(), rng: () => random.bytes(16) })
}

export function createAuthor({ kitchenId, deviceId, personId, head, clock, random, zone }: AuthorSetup): Author {
  requireZone(zone)
  let last = head

  function write<K extends Kind>(kind: K, given: BodyOf<K>, options: WriteOptions = {}): StoredEntry {
    const checked = checkBody(kind, withoutUndefined(given))
    if (!checked.ok) throw new BodyRefused(kind, checked.refusals)
    const writtenAt = toInstant(clock.now())
    const body = { salt: bytesToHex(random.bytes(16)), value: checked.body as Json }
    const envelope: Envelope = {
      id: createId(clock, random),
      kitchenId,
      deviceId,
      deviceSeq: (last?.deviceSeq ?? 0) + 1,
      prevHash: last?.hash ?? NO_PREVIOUS_HASH,
      personId,
      kind,
      kindVersion: KINDS[kind].version,
      happenedAt: {
        instant: options.happenedAt ? toInstant(options.happenedAt.instant) : writtenAt,
        zone: options.happenedAt?.zone ? requireZone(options.happenedAt.zone) : zone,
      },
      writtenAt,
      bodyHash: bodyHash(body),
      visibility: options.visibility ?? 'keeper',
    }
    const hash = envelopeHash(envelope)
    last = { deviceSeq: envelope.deviceSeq, hash, writtenAt }
    return { envelope, hash, body }
  }

  return { write, head: () => last }
}

/** @throws {RangeError} when `instant` is no moment. */
export function toInstant(instant: string | number): string {
  const date = new Date(instant)
  if (Number.isNaN(date.getTime())) throw new RangeError(`"${instant}" is no instant`)
  return date.toISOString()
}

/** Undefined members go; a NaN stays, so that its kind can name the field it is in. */
function withoutUndefined(body: unknown): unknown {
  try {
    return plain(body)
  } catch {
    return body
  }
}

function requireZone(zone: string): string {
  new Intl.DateTimeFormat('en', { timeZone: zone }) // throws RangeError on an unknown name
  return zone
}
