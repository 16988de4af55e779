import type { JournalStore, StoredEntry } from '@crib/journal'
import { createWords } from '@crib/wording'
import { Hono } from 'hono'
import { HTTPException } from 'hono/http-exception'
import * as v from 'valibot'

/** The shape of the exchange only: the store itself checks every hash, body and chain. */
const pushed = v.object({
  entries: v.array(v.looseObject({ envelope: v.looseObject({ id: v.string() }), hash: v.string() })),
})
const pulled = v.object({
  kitchen: v.string(),
  after: v.optional(v.string()),
  limit: v.optional(v.pipe(v.string(), v.transform(Number), v.integer(), v.minValue(1), v.maxValue(1000))),
})

export function journalRoutes(store: JournalStore): Hono {
  const routes = new Hono()

  routes.get('/kitchens', async (c) => c.json({ kitchens: await store.kitchens() }))

  routes.get('/entries', async (c) => {
    const { kitchen, after, limit } = parse(pulled, c.req.query())
    return c.json(await store.read({ kitchenId: kitchen, ...(after && { after: Number(after) }), limit: limit ?? 500 }))
  })

  routes.post('/entries', async (c) => {
    const { entries } = parse(pushed, await c.req.json().catch(() => null))
    return c.json(await store.append(entries as unknown as StoredEntry[]))
  })

  return routes
}

function parse<Schema extends v.GenericSchema>(schema: Schema, given: unknown): v.InferOutput<Schema> {
  const read = v.safeParse(schema, given)
  if (read.success) return read.output
  const faults = v.flatten(read.issues)
  throw new HTTPException(400, {
    message: createWords().say('common:bad-request', { faults: JSON.stringify(faults.nested ?? faults.root ?? []) }),
  })
}
