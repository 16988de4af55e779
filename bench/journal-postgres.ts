/**
 * How many durable appends a second does PostgreSQL take from 64 writers, each in a kitchen of its own, beside pgbench
 * (64 clients, prepared) committing rows of the same size to the same tables and indexes?
 */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { StoredEntry } from '@crib/journal'
import { openPostgresStore } from '@crib/journal/postgres'
import { postgresBin, startCluster } from '../packages/journal/src/testing/postgres.ts'
import { madeBook } from './journal-made.ts'
import { type BenchQuestion, median } from './question.ts'

const WRITERS_COUNT = 64
const ROUNDS_COUNT = 3
const SECONDS_A_ROUND = 4
const ENTRIES_READY = 400
/** Ours may take at most 1/0.6 of the time of pgbench for each entry. */
const LIMIT_SHARE = 0.6

export const journalPostgres: BenchQuestion = {
  asks: 'How fast are durable appends of 64 writers to PostgreSQL?',
  answer: async () => {
    const bin = postgresBin()
    if (!bin) return { notRun: 'no PostgreSQL here; install with: apt-get install postgresql' }
    const cluster = await startCluster(['max_connections=150'])
    const folder = mkdtempSync(join(tmpdir(), 'bench-pg-'))
    try {
      const store = await openPostgresStore(await cluster.url('ours'), { poolSize: WRITERS_COUNT })
      const bareUrl = await cluster.url('bare')
      await (await openPostgresStore(bareUrl)).close() // the same tables and indexes
      const books = Array.from({ length: WRITERS_COUNT }, (_, i) =>
        madeBook(200_000, { seed: i + 1, devicesCount: 1 }).entries(),
      )
      const queues: StoredEntry[][] = books.map(() => [])
      const script = join(folder, 'append.sql')
      writeFileSync(script, SCRIPT)
      const ours: number[] = []
      const theirs: number[] = []
      for (let round = 0; round < ROUNDS_COUNT; round += 1) {
        // Entries are made beforehand: pgbench makes its rows from nothing too.
        for (const [i, queue] of queues.entries())
          while (queue.length < ENTRIES_READY) queue.push(books[i]!.next().value as StoredEntry)
        ours.push(await msEach(store, queues))
        const flags = ['-n', '-M', 'prepared', '-c', `${WRITERS_COUNT}`, '-j', '2', '-T', `${SECONDS_A_ROUND}`]
        const pgbench = ['-f', script, '-D', `round=${round}`, bareUrl]
        const said = execFileSync(join(bin, 'pgbench'), [...flags, ...pgbench], { encoding: 'utf8', stdio: 'pipe' })
        theirs.push(1000 / Number(/tps = ([\d.]+)/.exec(said)![1]))
      }
      await store.close()
      const bareMs = median(theirs)
      return [
        {
          what: 'one durable append to PostgreSQL, 64 writers, median',
          value: median(ours),
          unit: 'ms',
          limit: bareMs / LIMIT_SHARE,
          reference: { what: 'pgbench with 64 clients committing like rows', value: bareMs },
        },
      ]
    } finally {
      await cluster.stop()
      rmSync(folder, { recursive: true, force: true })
    }
  },
}

/** Wall time for each acknowledged entry while all writers write. [ms] */
async function msEach(
  store: Awaited<ReturnType<typeof openPostgresStore>>,
  queues: readonly StoredEntry[][],
): Promise<number> {
  const from = performance.now()
  let count = 0
  await Promise.all(
    queues.map(async (queue) => {
      for (;;) {
        const entry = queue.shift()
        if (!entry || performance.now() - from > SECONDS_A_ROUND * 1000) {
          if (entry) queue.unshift(entry)
          return
        }
        const { results } = await store.append([entry])
        if (results[0]!.outcome !== 'accepted') throw new Error('an entry was refused')
        count += 1
      }
    }),
  )
  return (performance.now() - from) / count
}

const HEX_64 = '0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef'
const ID = `'0190a000-0000-7000-8000-' || lpad(:n::text, 12, '0')`

/** The same rows as an append: the kitchen's number, an entry, its body, its story. */
const SCRIPT = `\\set n random(1, 999999999999)
begin;
insert into kitchen (kitchen_id, last_arrival, entry_count) values ('kitchen-' || :client_id || '-0000-7000-8000-00000000', 1, 1)
  on conflict (kitchen_id) do update set last_arrival = kitchen.last_arrival + 1, entry_count = kitchen.entry_count + 1
  returning last_arrival as arrival \\gset
insert into entry (kitchen_id, arrival, id, device_id, device_seq, prev_hash, person_id, kind, kind_version, happened_at,
  happened_zone, written_at, body_hash, visibility, hash)
  values ('kitchen-' || :client_id || '-0000-7000-8000-00000000', :arrival, ${ID}, '0190a000-0000-7000-8000-000000000002',
    :arrival, '${HEX_64}', '0190a000-0000-7000-8000-000000000003', 'run-event', 1, '2026-11-02T13:00:00.000Z',
    'America/Toronto', '2026-11-02T13:00:00.000Z', '${HEX_64}', 'keeper', '${HEX_64}');
insert into body (kitchen_id, arrival, salt, value) values ('kitchen-' || :client_id || '-0000-7000-8000-00000000', :arrival,
  '0123456789abcdef0123456789abcdef', '{"event":{"psi":11.25,"type":"reading"},"runId":"0190a000-0000-7000-8000-000000000004"}');
insert into story (kitchen_id, story, arrival) values ('kitchen-' || :client_id || '-0000-7000-8000-00000000',
  'run:0190a000-0000-7000-8000-000000000004', :arrival);
end;
`
