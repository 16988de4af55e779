/**
 * A fact as the text of its row. Who said a line, where and for whose eyes is mostly the same all through a fact: it is
 * told once and lines name it by number, which halves what a long book writes and reads.
 */
import type { Visibility } from '../envelope.ts'
import type { RunEventFact, Said } from '../fold/facts.ts'

type Teller = readonly [zone: string, personId: string, deviceId: string, visibility?: Visibility]
type PackedSaid = readonly [entryId: string, instant: string, teller: number]
type PackedEvent = readonly [event: RunEventFact['event'], ...PackedSaid]

interface Packed {
  readonly tellers: readonly Teller[]
  readonly fact: object
}

type Fields = Record<string, unknown>

/** JSON. `Said` is looked for in the fact, in what it holds and in its lists; one that lies deeper is kept in full. */
export function factText(fact: object): string {
  const tellers: Teller[] = []
  const numberOf = (said: RunEventFact | Said): number => {
    const { zone, personId, deviceId } = said
    const visibility = 'visibility' in said ? said.visibility : undefined
    for (let i = tellers.length - 1; i >= 0; i -= 1) {
      const [itsZone, itsPerson, itsDevice, itsVisibility] = tellers[i]!
      const same = zone === itsZone && personId === itsPerson && deviceId === itsDevice
      if (same && visibility === itsVisibility) return i
    }
    tellers.push(visibility === undefined ? [zone, personId, deviceId] : [zone, personId, deviceId, visibility])
    return tellers.length - 1
  }
  const packedSaid = (said: RunEventFact | Said): PackedSaid => [said.entryId, said.instant, numberOf(said)]
  const packedItem = (item: unknown): unknown => {
    if (isEvent(item)) return [item.event, ...packedSaid(item)] satisfies PackedEvent
    return isFields(item) && isSaid(item.at) ? { ...item, at: packedSaid(item.at) } : item
  }
  const packed = mapped(fact as Fields, (value) => {
    if (Array.isArray(value)) return value.map(packedItem)
    return isSaid(value) ? packedSaid(value) : packedItem(value)
  })
  return JSON.stringify({ tellers, fact: packed } satisfies Packed)
}

/** The fact of a text that `factText` made. */
export function factOf<T>(text: string): T {
  const { tellers, fact } = JSON.parse(text) as Packed
  const said = ([entryId, instant, teller]: PackedSaid): Said => {
    const [zone, personId, deviceId, visibility] = tellers[teller]!
    return { instant, zone, entryId, personId, deviceId, visibility: visibility! }
  }
  const eventOf = ([event, entryId, instant, teller]: PackedEvent): RunEventFact => {
    const [zone, personId, deviceId] = tellers[teller]!
    return { event, instant, zone, entryId, personId, deviceId }
  }
  const itemOf = (item: unknown): unknown => {
    if (isPacked<PackedEvent>(item, 4)) return eventOf(item)
    return isFields(item) && isPacked<PackedSaid>(item.at, 3) ? { ...item, at: said(item.at) } : item
  }
  return mapped(fact as Fields, (value) => {
    if (isPacked<PackedSaid>(value, 3)) return said(value)
    return Array.isArray(value) ? value.map(itemOf) : itemOf(value)
  }) as T
}

function mapped(fields: Fields, change: (value: unknown) => unknown): Fields {
  const changed: Fields = {}
  for (const name of Object.keys(fields)) changed[name] = change(fields[name])
  return changed
}

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

const isSaid = (value: unknown): value is Said => isFields(value) && 'entryId' in value && 'visibility' in value

const isEvent = (value: unknown): value is RunEventFact =>
  isFields(value) && 'event' in value && 'entryId' in value && 'deviceId' in value

/** No body holds a list of unlike things, so a list that ends like this is one of ours. */
const isPacked = <T extends PackedSaid | PackedEvent>(value: unknown, length: T['length']): value is T =>
  Array.isArray(value) &&
  value.length === length &&
  typeof value[length - 1] === 'number' &&
  typeof value[length - 2] === 'string'
