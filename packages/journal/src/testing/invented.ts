/** An invented kitchen for tests: a clock that is set by hand and randomness that repeats. */
import { type Author, type Clock, createAuthor, createId, type Randomness } from '../author.ts'
import { type ChainHead, envelopeHash, type StoredEntry } from '../envelope.ts'

/** A small repeating generator (xorshift32): tests must give the same ids every time. */
export function repeatingRandom(seed = 1): Randomness {
  let state = seed >>> 0 || 1
  return {
    bytes: (count) =>
      Uint8Array.from({ length: count }, () => {
        state ^= state << 13
        state ^= state >>> 17
        state ^= state << 5
        return state & 0xff
      }),
  }
}

export interface HandClock extends Clock {
  set(instant: string): void
  wait(minutes: number): void
}

export function handClock(instant = '2026-11-02T13:00:00.000Z'): HandClock {
  let nowMs = Date.parse(instant)
  return {
    now: () => nowMs,
    set: (to) => {
      nowMs = Date.parse(to)
    },
    wait: (minutes) => {
      nowMs += minutes * 60_000
    },
  }
}

export interface TestKitchen {
  readonly kitchenId: string
  readonly personId: string
  readonly clock: HandClock
  readonly random: Randomness
  /** Another device of the same kitchen, with a chain of its own. */
  author(options?: { deviceId?: string; personId?: string; head?: ChainHead | null; clock?: Clock }): Author
  newId(): string
}

export function testKitchen(seed = 1): TestKitchen {
  const clock = handClock()
  const random = repeatingRandom(seed)
  const newId = (): string => createId(clock, random)
  const kitchenId = newId()
  const personId = newId()
  return {
    kitchenId,
    personId,
    clock,
    random,
    newId,
    author: ({ deviceId = newId(), personId: who = personId, head = null, clock: own = clock } = {}) =>
      createAuthor({ kitchenId, deviceId, personId: who, head, clock: own, random, zone: 'America/Toronto' }),
  }
}

/** The entry with another envelope, whole by itself. */
export function reenveloped(entry: StoredEntry, change: Partial<StoredEntry['envelope']>): StoredEntry {
  const envelope = { ...entry.envelope, ...change }
  return { ...entry, envelope, hash: envelopeHash(envelope) }
}
