/** Entries over HTTP: read by cursor, brought in batches. Whoever may not read a kitchen whole is given a copy of their own. */
import { type EntryOutcome, type JournalStore, type Reader, readsFrom, type StoredEntry } from '@crib/journal'
import { requestText } from '@crib/journal/http'
import { type Context, Hono } from 'hono'
import { HTTPException } from 'hono/http-exception'
import * as v from 'valibot'
import { parse } from './parse.ts'
import type { GateEnv, Who } from './people/gate.ts'
import { faultsOfWriting } from './people/may-write.ts'
import type { People } from './people/people.ts'

/** The shape of the exchange only: the store itself checks every hash, body and chain. */
const pushed = v.object({
  entries: v.array(v.looseObject({ envelope: v.looseObject({ id: v.string() }), hash: v.string() })),
})
const cursor = v.pipe(v.string(), v.transform(Number), v.integer(), v.minValue(0))
const id = v.pipe(v.string(), v.maxLength(64))
const pulled = v.object({
  kitchen: id,
  after: v.optional(cursor, '0'),
  limit: v.optional(v.pipe(v.string(), v.transform(Number), v.integer(), v.minValue(1), v.maxValue(1000)), '500'),
  /** The device that asks; its own lines are left out of a copy. */
  device: v.optional(id, ''),
  /** The copy the cursor is of; another one is read from its beginning. */
  view: v.optional(id),
})

/** What one request may unpack to. */
const MOST_BYTES = 64 * 1024 * 1024

export function journalRoutes(store: JournalStore, people?: People): Hono<GateEnv> {
  const routes = new Hono<GateEnv>()

  routes.get('/kitchens', async (c) => {
    const who = c.get('who')
    if (who.kind !== 'person' || !people) return c.json({ kitchens: await store.kitchens() })
    const { device } = parse(v.object({ device: v.optional(id, '') }), c.req.query())
    const { personId } = who.session
    const kitchens = []
    for (const kitchenId of await people.membership.seats(personId)) {
      const role = await people.membership.standing(kitchenId, personId)
      if (role === 'outsider') continue
      if (role === 'keeper') {
        const { entryCount } = await people.store.facts.last(kitchenId)
        kitchens.push({ kitchenId, entryCount, role, whole: true })
      } else {
        const reader = { kitchenId, from: readsFrom(role), personId, deviceId: device }
        kitchens.push({ kitchenId, ...(await people.feed.summary(reader)), role, whole: false })
      }
    }
    return c.json({ kitchens })
  })

  routes.get('/entries', async (c) => {
    const { kitchen, after, limit, device, view } = parse(pulled, c.req.query())
    const reader = readerOf(c.get('who'), kitchen, device)
    if (!reader || !people) return c.json(await store.read({ kitchenId: kitchen, after, limit }))
    return c.json(await people.feed.page(reader, { after, limit, ...(view !== undefined && { view }) }))
  })

  routes.post('/entries', async (c) => {
    const given = parse(pushed, await readJson(c)).entries as unknown as StoredEntry[]
    const who = c.get('who')
    if (who.kind !== 'person' || !people) return c.json(await store.append(given))
    const faults = await faultsOfWriting(people, who.session, given)
    const taken = await store.append(given.filter((_, i) => faults[i] === null))
    const outcomes = taken.results.values()
    const results = faults.map(
      (fault): EntryOutcome =>
        fault ? { id: fault.entryId, outcome: 'refused', faults: [fault] } : outcomes.next().value!,
    )
    // Worked in while the writer waits, so that no reader's answer takes longer for what was written just now.
    for (const kitchenId of new Set(given.map(({ envelope }) => envelope.kitchenId))) {
      if ((await people.membership.standing(kitchenId, who.session.personId)) === 'keeper') {
        await people.membership.giveSeat(who.session.personId, kitchenId)
      }
      await people.feed.freshen(kitchenId)
    }
    return c.json({ results })
  })

  return routes
}

/** Null for whoever may read everything. */
function readerOf(who: Who, kitchenId: string, deviceId: string): Reader | null {
  if (who.kind !== 'person') return null
  const from = readsFrom(who.standing)
  return from === 0 ? null : { kitchenId, from, personId: who.session.personId, deviceId }
}

async function readJson(c: Context): Promise<unknown> {
  try {
    return JSON.parse(await requestText(c.req.raw, MOST_BYTES))
  } catch (cause) {
    if (cause instanceof HTTPException) throw cause
    return null
  }
}
