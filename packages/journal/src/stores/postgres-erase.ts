/** Erasing in PostgreSQL: the body and every fact that quotes it, in one transaction. */
import type { PoolClient } from 'pg'
import { AMENDING, amendedStory } from '../tables/amended.ts'
import { entryOf, READ_COLUMNS, type ReadRow, storyOf } from './rows.ts'

const BODIES = 'join body b on b.kitchen_id = e.kitchen_id and b.arrival = e.arrival'

export async function erasePostgres(client: PoolClient, entryId: string, kitchenId?: string): Promise<boolean> {
  const asked = kitchenId === undefined ? await kitchensWith(client, entryId) : [kitchenId]
  if (asked.length > 1) throw new RangeError(`${entryId} is in ${asked.length} kitchens; say which`)
  const [kitchen] = asked
  if (kitchen === undefined) return false
  // The same lock as appending, so that no fold takes the line between.
  await client.query('select 1 from kitchen where kitchen_id = $1 for update', [kitchen])
  const row = await readOne(client, kitchen, entryId)
  if (!row) return false
  const arrival = row[16]
  const story = storyOf(entryOf(row))
  const run = (sql: string, ...values: unknown[]) => client.query(sql, [kitchen, ...values])
  await run(`insert into erasure (kitchen_id, arrival, how) values ($1, $2, 'here')`, arrival)
  await run('delete from body where kitchen_id = $1 and arrival = $2', arrival)
  await run('delete from story where kitchen_id = $1 and story = $2 and arrival = $3', story, arrival)
  await run(`insert into story (kitchen_id, story, arrival) values ($1, 'unread', $2)`, arrival)
  const named = new Map<string, string | null>()
  for (let each: string | null = story; each?.startsWith(AMENDING) && !named.has(each); ) {
    const id = each.slice(AMENDING.length)
    const target: ReadRow | undefined = await readOne(client, kitchen, id)
    named.set(id, target ? storyOf(entryOf(target)) : null)
    each = named.get(id) ?? null
  }
  for (const each of new Set([...amendedStory(story, (id) => named.get(id) ?? null), `${AMENDING}${entryId}`])) {
    await run('delete from fact where kitchen_id = $1 and fact_id = $2', each.slice(each.indexOf(':') + 1))
    await run('delete from question where kitchen_id = $1 and story = $2', each)
    await run('insert into stale_story (kitchen_id, story) values ($1, $2) on conflict do nothing', each)
  }
  await run('insert into stale_story (kitchen_id, story) values ($1, $2) on conflict do nothing', `unread:${entryId}`)
  await run('update fact_state set turn = turn + 1 where kitchen_id = $1')
  return true
}

async function readOne(client: PoolClient, kitchenId: string, entryId: string): Promise<ReadRow | undefined> {
  const { rows } = await client.query({
    text: `select ${READ_COLUMNS} from entry e ${BODIES} where e.kitchen_id = $1 and e.id = $2`,
    values: [kitchenId, entryId],
    rowMode: 'array',
  })
  return rows[0] as unknown as ReadRow | undefined
}

async function kitchensWith(client: PoolClient, entryId: string): Promise<string[]> {
  const { rows } = await client.query<{ kitchen_id: string }>(
    `select k.kitchen_id from kitchen k where exists
      (select 1 from entry e where e.kitchen_id = k.kitchen_id and e.id = $1)`,
    [entryId],
  )
  return rows.map((row) => row.kitchen_id)
}
