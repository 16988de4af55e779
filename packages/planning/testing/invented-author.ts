/** Somebody who writes a book in a test, on 1 October 2026: the same ids every time. */
import { createAuthor, createId } from '@crib/journal'

const CLOCK = { now: () => Date.parse('2026-10-01T12:00:00Z') }

export function inventedAuthor() {
  let drawn = 1
  const random = {
    bytes: (count: number) =>
      Uint8Array.from({ length: count }, () => {
        drawn = (drawn * 48_271) % 2_147_483_647
        return drawn & 0xff
      }),
  }
  const newId = () => createId(CLOCK, random)
  const kitchenId = newId()
  const author = createAuthor({
    kitchenId,
    deviceId: newId(),
    personId: newId(),
    head: null,
    clock: CLOCK,
    random,
    zone: 'America/Toronto',
  })
  return { author, kitchenId, newId }
}
