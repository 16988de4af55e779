/** Another device of a kitchen: it writes a story and tells it to the house server, before any page is opened. */
import { type Author, createAuthor, createId, type StoredEntry } from '@crib/journal'
import type { House } from './harness.ts'
import { KITCHEN_ZONE } from './kitchen-day.ts'

const RANDOM = { bytes: (count: number) => crypto.getRandomValues(new Uint8Array(count)) }

export interface TellingDevice {
  readonly kitchenId: string
  readonly author: Author
  newId(): string
}

export function tellingDevice(now: () => number = Date.now): TellingDevice {
  const clock = { now }
  const newId = () => createId(clock, RANDOM)
  const kitchenId = newId()
  const author = createAuthor({
    kitchenId,
    deviceId: newId(),
    personId: newId(),
    head: null,
    clock,
    random: RANDOM,
    zone: KITCHEN_ZONE,
  })
  return { kitchenId, author, newId }
}

/** @throws {Error} when the house server does not take every line. */
export async function tellTheHouse(house: House, entries: readonly StoredEntry[]): Promise<void> {
  const response = await fetch(`${house.url}api/entries`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ entries }),
  })
  if (!response.ok) throw new Error(`the story was refused: ${await response.text()}`)
  const { results } = (await response.json()) as { results: readonly { readonly outcome: string }[] }
  const refused = results.filter(({ outcome }) => outcome !== 'accepted')
  if (refused.length > 0) throw new Error(`the story was refused: ${JSON.stringify(refused)}`)
}
