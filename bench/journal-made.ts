/** An invented kitchen's book of any length for the benches: loads, batches, lots and jars in the shares of a busy year. */
import { type Author, createAuthor, createId, type StoredEntry } from '@crib/journal'

export interface MadeBook {
  readonly kitchenId: string
  entries(): Generator<StoredEntry>
}

/** Repeatable ids and salts (xorshift32). */
function repeating(seed: number) {
  let state = seed >>> 0 || 1
  return {
    bytes: (count: number) =>
      Uint8Array.from({ length: count }, () => {
        state ^= state << 13
        state ^= state >>> 17
        state ^= state << 5
        return state & 0xff
      }),
  }
}

const MINUTE_MS = 60_000

/** `count` lines of `devicesCount` devices: of 60, one lot, one batch of 11 lines, one load of 42, jars and their uses. */
export function madeBook(count: number, { seed = 1, devicesCount = 8 } = {}): MadeBook {
  const random = repeating(seed)
  let nowMs = Date.parse('2020-01-01T06:00:00.000Z')
  const clock = { now: () => nowMs }
  const newId = (): string => createId(clock, random)
  const kitchenId = newId()
  const personId = newId()
  function* entries(): Generator<StoredEntry> {
    const authors = Array.from({ length: devicesCount }, () =>
      createAuthor({ kitchenId, deviceId: newId(), personId, head: null, clock, random, zone: 'America/Toronto' }),
    )
    let made = 0
    for (let round = 0; made < count; round += 1) {
      for (const entry of oneRound(authors[round % devicesCount]!, round)) {
        yield entry
        made += 1
        if (made === count) return
      }
    }
  }
  function* oneRound(author: Author, round: number): Generator<StoredEntry> {
    const next = (minutes: number) => {
      nowMs += minutes * MINUTE_MS
    }
    const lotId = newId()
    const batchId = newId()
    const runId = newId()
    const cannerId = newId()
    const jars = newId()
    const lot = { cornType: 'flint', form: 'shelled', massKg: 40, asTyped: '40 kg', treatedSeed: false } as const
    yield author.write('corn-lot-brought-in', { lotId, name: `Lantern flint ${round}`, ...lot })
    next(5)
    const corn = [{ lotId, massKg: 4.08 }]
    const plan = { title: `batch ${round}`, inputs: { corn }, edition: 'guidance-2026-11', codeVersion: '0', shown: {} }
    yield author.write('batch-planned', { batchId, ...plan, corn })
    for (let i = 0; i < 10; i += 1) {
      next(6)
      const seen = i < 9 ? ({ type: 'rubbed', slippedCount: i, ofCount: 10 } as const) : ({ type: 'boil' } as const)
      yield author.write('cook-noted', { batchId, potLoad: 1, seen })
    }
    const run = { batchId, cannerId, cannerName: 'dial', loadCode: `L${round}`, jarSize: 'quart', jarCount: 7 } as const
    const held = {
      gauge: 'dial',
      requiredReadingPsi: 11,
      ventMin: 10,
      processMin: 85,
      edition: 'e',
      cardShown: {},
    } as const
    yield author.write('run-begun', { runId, ...run, ...held })
    for (let i = 0; i < 40; i += 1) {
      next(3)
      const event = i < 39 ? ({ type: 'reading', psi: 11 + (i % 4) / 4 } as const) : ({ type: 'jars-out' } as const)
      yield author.write('run-event', { runId, event })
    }
    yield author.write('food-put-up', { lotId: jars, batchId, runId, loadCode: `L${round}`, form: 'jar', count: 7 })
    for (let i = 0; i < 5; i += 1) {
      next(60)
      yield author.write('lot-used', { lotId: jars, count: 1, how: 'eaten' })
    }
    yield author.write('lot-used', { lotId, massKg: 4, how: 'used-in-batch', batchId })
  }
  return { kitchenId, entries }
}
