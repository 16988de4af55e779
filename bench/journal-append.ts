/**
 * How fast are durable appends, one commit for each entry, beside the bare driver committing the same rows to the same
 * tables and indexes? The two take turns in small rounds, so that whatever else the machine does hits both.
 */
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { DatabaseSync } from 'node:sqlite'
import type { StoredEntry } from '@crib/journal'
import { openSqliteStore } from '@crib/journal/sqlite'
import { madeBook } from './journal-made.ts'
import { type BenchQuestion, median } from './question.ts'

const ROUNDS_COUNT = 21
const ENTRIES_A_ROUND = 150
/** Ours may take at most 1/0.7 of the bare driver's time. */
const LIMIT_SHARE = 0.7

export const journalAppend: BenchQuestion = {
  asks: 'How fast are durable appends to the embedded book, one commit each?',
  answer: async () => {
    const folder = mkdtempSync(join(tmpdir(), 'bench-append-'))
    try {
      const store = await openSqliteStore(join(folder, 'ours.sqlite'))
      await (await openSqliteStore(join(folder, 'bare.sqlite'))).close() // the same tables and indexes
      const bare = openBare(join(folder, 'bare.sqlite'))
      const made = madeBook(ROUNDS_COUNT * ENTRIES_A_ROUND).entries()
      const ours: number[] = []
      const theirs: number[] = []
      for (let round = 0; round < ROUNDS_COUNT; round += 1) {
        const entries = Array.from({ length: ENTRIES_A_ROUND }, () => made.next().value as StoredEntry)
        const rows = entries.map(bare.rowsOf)
        const timeOurs = async () => {
          const from = performance.now()
          for (const entry of entries) await store.append([entry])
          ours.push((performance.now() - from) / ENTRIES_A_ROUND)
        }
        const timeBare = () => {
          const from = performance.now()
          for (const row of rows) bare.commit(row)
          theirs.push((performance.now() - from) / ENTRIES_A_ROUND)
        }
        if (round % 2 === 0) {
          await timeOurs()
          timeBare()
        } else {
          timeBare()
          await timeOurs()
        }
      }
      bare.close()
      const report = await store.verify()
      if (!report.ok || report.checkedCount !== ROUNDS_COUNT * ENTRIES_A_ROUND)
        throw new Error('not every entry was kept')
      await store.close()
      const bareMs = median(theirs)
      return [
        {
          what: 'one durable append to the embedded book, median',
          value: median(ours),
          unit: 'ms',
          limit: bareMs / LIMIT_SHARE,
          reference: { what: 'the bare driver committing the same rows', value: bareMs },
        },
      ]
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  },
}

/** The least a program can do to commit these rows: prepared statements, one transaction for each entry. */
function openBare(file: string) {
  const db = new DatabaseSync(file)
  // As the store sets them.
  db.exec(`pragma busy_timeout = 10000; pragma journal_mode = wal; pragma synchronous = full; pragma foreign_keys = on;
    pragma secure_delete = on; pragma cache_size = -32768; pragma wal_autocheckpoint = 4000`)
  const begin = db.prepare('begin immediate')
  const commit = db.prepare('commit')
  const entry = db.prepare(`insert into entry (id, kitchen_id, device_id, device_seq, prev_hash, person_id, kind,
    kind_version, happened_at, happened_zone, written_at, body_hash, visibility, hash)
    values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`)
  const body = db.prepare('insert into body (arrival, salt, value) values (?, ?, ?)')
  const story = db.prepare('insert into story (kitchen_id, story, arrival) values (?, ?, ?)')
  return {
    rowsOf: ({ envelope: e, hash, body }: StoredEntry) => ({
      entry: [
        e.id,
        e.kitchenId,
        e.deviceId,
        e.deviceSeq,
        e.prevHash,
        e.personId,
        e.kind,
        e.kindVersion,
        e.happenedAt.instant,
        e.happenedAt.zone,
        e.writtenAt,
        e.bodyHash,
        e.visibility,
        hash,
      ],
      salt: body!.salt,
      value: JSON.stringify(body!.value),
      kitchenId: e.kitchenId,
      story: storyOf(body!.value as Record<string, string>),
    }),
    commit(row: { entry: (string | number)[]; salt: string; value: string; kitchenId: string; story: string }) {
      begin.run()
      const arrival = entry.run(...row.entry).lastInsertRowid
      body.run(arrival, row.salt, row.value)
      story.run(row.kitchenId, row.story, arrival)
      commit.run()
    },
    close: () => db.close(),
  }
}

/** Names as long and as ordered as the store's own. */
function storyOf(body: Record<string, string>): string {
  return body.runId ? `run:${body.runId}` : body.batchId ? `batch:${body.batchId}` : `lot:${body.lotId}`
}
