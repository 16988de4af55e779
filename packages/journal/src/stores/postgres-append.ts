/** Lines of one kitchen into PostgreSQL: in one round trip where each continues a chain already seen, else in a transaction. */
import type { Pool, PoolClient } from 'pg'
import { chainKey } from '../chain.ts'
import type { EntryOutcome } from '../store.ts'
import { admit } from './admit.ts'
import { continues, type createHeads, NOTHING_YET, type SeenHead } from './heads.ts'
import { inTransaction, isTaken } from './postgres-pool.ts'
import { ENTRY_COLUMNS, entryValues, type KeepableEntry, storyOf } from './rows.ts'

type Heads = ReturnType<typeof createHeads>

export async function appendToKitchen(
  pool: Pool,
  heads: Heads,
  kitchenId: string,
  entries: readonly KeepableEntry[],
): Promise<readonly EntryOutcome[]> {
  const outcomes =
    (await inOneRoundTrip(pool, heads, kitchenId, entries)) ??
    (await inTransaction(pool, (client) => judged(client, kitchenId, entries)))
  for (const [i, { entry }] of entries.entries()) if (outcomes[i]!.outcome !== 'refused') heads.saw(entry)
  return outcomes
}

/** Null, and nothing written, when a line does not continue a head seen before, or its place or id is taken. */
async function inOneRoundTrip(
  pool: Pool,
  heads: Heads,
  kitchenId: string,
  entries: readonly KeepableEntry[],
): Promise<readonly EntryOutcome[] | null> {
  const now = new Map<string, SeenHead>()
  for (const { entry } of entries) {
    const key = chainKey(entry.envelope)
    if (!continues(entry, now.get(key) ?? heads.of(entry))) return null
    now.set(key, { deviceSeq: entry.envelope.deviceSeq, hash: entry.hash })
  }
  try {
    await pool.query(insertion(kitchenId, entries))
  } catch (cause) {
    if (isTaken(cause)) return null
    throw cause
  }
  return entries.map(({ entry: { envelope } }) => ({ id: envelope.id, outcome: 'accepted' as const }))
}

/** Each line looked at beside what is kept, under the lock of the kitchen's row. */
async function judged(
  client: PoolClient,
  kitchenId: string,
  entries: readonly KeepableEntry[],
): Promise<readonly EntryOutcome[]> {
  await client.query(
    `insert into kitchen (kitchen_id, last_arrival, entry_count) values ($1, 0, 0)
      on conflict (kitchen_id) do update set last_arrival = kitchen.last_arrival`,
    [kitchenId],
  )
  const ids = entries.map(({ entry: { envelope } }) => envelope.id)
  const devices = entries.map(({ entry: { envelope } }) => envelope.deviceId)
  const seqs = entries.map(({ entry: { envelope } }) => envelope.deviceSeq)
  const array = (text: string, values: readonly unknown[]) =>
    client.query({ text, values: [...values], rowMode: 'array' }).then(({ rows }) => rows as unknown[][])
  const sameIds = new Map(
    (await array('select id, hash from entry where kitchen_id = $1 and id = any($2)', [kitchenId, ids])) as [
      string,
      string,
    ][],
  )
  const places = new Map(
    (
      (await array(
        `select e.device_id, e.device_seq, e.id from entry e join unnest($2::text[], $3::bigint[]) as asked(device_id, device_seq)
          on e.device_id = asked.device_id and e.device_seq = asked.device_seq where e.kitchen_id = $1`,
        [kitchenId, devices, seqs],
      )) as [string, number, string][]
    ).map(([device, seq, id]) => [`${device} ${seq}`, id]),
  )
  const heads = new Map(
    (
      (await array(
        `select asked.device_id, last.device_seq, last.hash from (select distinct unnest($2::text[]) as device_id) asked
          cross join lateral (select device_seq, hash from entry e where e.kitchen_id = $1 and e.device_id = asked.device_id
            order by device_seq desc limit 1) last`,
        [kitchenId, devices],
      )) as [string, number, string][]
    ).map(([device, deviceSeq, hash]) => [device, { deviceSeq, hash }]),
  )
  const accepted: KeepableEntry[] = []
  const outcomes = entries.map((keepable) => {
    const { entry } = keepable
    const { id, deviceId, deviceSeq } = entry.envelope
    const outcome = admit(entry, {
      sameIdHash: sameIds.get(id) ?? null,
      samePlaceId: places.get(`${deviceId} ${deviceSeq}`) ?? null,
      head: heads.get(deviceId) ?? NOTHING_YET,
    })
    if (outcome.outcome === 'accepted') {
      accepted.push(keepable)
      sameIds.set(id, entry.hash)
      places.set(`${deviceId} ${deviceSeq}`, id)
      heads.set(deviceId, { deviceSeq, hash: entry.hash })
    }
    return outcome
  })
  if (accepted.length > 0) await client.query(insertion(kitchenId, accepted))
  return outcomes
}

const OWN = ENTRY_COLUMNS.filter((column) => column !== 'kitchen_id')
const TYPES: { readonly [column: string]: string } = { device_seq: 'bigint', kind_version: 'int' }
const GIVEN = [...OWN, 'salt', 'value', 'story']

/**
 * One statement: the kitchen's row moves on and is locked by it until the commit, and everything else takes its number
 * from there.
 */
const INSERT = `with given as (
    select * from unnest(${GIVEN.map((column, i) => `$${i + 3}::${TYPES[column] ?? 'text'}[]`).join(', ')})
      with ordinality as given(${GIVEN.join(', ')}, n)),
  counted as (insert into kitchen (kitchen_id, last_arrival, entry_count) values ($1, $2, $2)
    on conflict (kitchen_id) do update
      set last_arrival = kitchen.last_arrival + excluded.last_arrival, entry_count = kitchen.entry_count + excluded.entry_count
    returning last_arrival - $2::bigint as base),
  lines as (insert into entry (kitchen_id, arrival, ${OWN.join(', ')})
    select $1, base + n, ${OWN.join(', ')} from given, counted),
  bodies as (insert into body (kitchen_id, arrival, salt, value)
    select $1, base + n, salt, value from given, counted where value is not null),
  erasures as (insert into erasure (kitchen_id, arrival, how)
    select $1, base + n, 'arrived' from given, counted where value is null)
  insert into story (kitchen_id, story, arrival) select $1, story, base + n from given, counted`

function insertion(kitchenId: string, entries: readonly KeepableEntry[]) {
  const columns: unknown[][] = GIVEN.map(() => [])
  for (const { entry, bodyText } of entries) {
    const values = entryValues(entry).filter((_, i) => ENTRY_COLUMNS[i] !== 'kitchen_id')
    const row = [...values, entry.body?.salt ?? null, bodyText, storyOf(entry)]
    for (const [i, value] of row.entries()) columns[i]!.push(value)
  }
  return { name: 'keep-lines', text: INSERT, values: [kitchenId, entries.length, ...columns] }
}
