/**
 * What does a long book cost: making all its facts from nothing, starting with them in tables and up to 1,000 new
 * entries, and any screen's question? BENCH_ENTRIES says how long; the limits are those of a million.
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { StoredEntry } from '@crib/journal'
import { openSqliteStore } from '@crib/journal/sqlite'
import { madeBook } from './journal-made.ts'
import type { BenchQuestion } from './question.ts'

const ENTRIES_COUNT = Number(process.env.BENCH_ENTRIES ?? 100_000)
const NEW_COUNT = 1000
const APPENDED_AT_ONCE = 5000
const LIMIT = { coldMs: 5000, peakKb: 600_000, warmMs: 100, p99Ms: 50 }

export const journalMillion: BenchQuestion = {
  asks: `What does a book of ${ENTRIES_COUNT} entries cost?`,
  answer: async () => {
    const folder = mkdtempSync(join(tmpdir(), 'bench-million-'))
    try {
      const file = join(folder, 'book.sqlite')
      const { kitchenId, entries } = madeBook(ENTRIES_COUNT + NEW_COUNT)
      const made = entries()
      await append(file, made, ENTRIES_COUNT)
      const readMs = await readAllMs(file, kitchenId)
      const cold = fold(file, kitchenId, 'cold')
      await append(file, made, NEW_COUNT)
      const warm = fold(file, kitchenId, 'warm')
      const reading = { what: `the same entries read through once (${ENTRIES_COUNT})`, value: readMs }
      const bare = { what: 'a program that only tells it', value: bareKb() }
      return [
        {
          what: 'all facts made from nothing',
          value: cold.firstMs,
          unit: 'ms',
          limit: LIMIT.coldMs,
          reference: reading,
        },
        { what: 'most memory while making them', value: cold.peakKb, unit: 'kB', limit: LIMIT.peakKb, reference: bare },
        {
          what: `start with ${NEW_COUNT} new entries to the first answer`,
          value: warm.firstMs,
          unit: 'ms',
          limit: LIMIT.warmMs,
          reference: reading,
        },
        {
          what: 'a screen’s question, 99th percentile',
          value: warm.p99Ms,
          unit: 'ms',
          limit: LIMIT.p99Ms,
          reference: { what: 'a screen’s question, median', value: warm.medianMs },
        },
      ]
    } finally {
      rmSync(folder, { recursive: true, force: true })
    }
  },
}

async function append(file: string, made: Generator<StoredEntry>, count: number): Promise<void> {
  const store = await openSqliteStore(file)
  for (let left = count; left > 0; left -= APPENDED_AT_ONCE) {
    const entries = Array.from({ length: Math.min(left, APPENDED_AT_ONCE) }, () => made.next().value as StoredEntry)
    const { results } = await store.append(entries)
    if (results.some(({ outcome }) => outcome !== 'accepted')) throw new Error('an entry was refused')
  }
  await store.close()
}

async function readAllMs(file: string, kitchenId: string): Promise<number> {
  const store = await openSqliteStore(file)
  const from = performance.now()
  for (let after = 0, more = true; more; ) {
    const page = await store.read({ kitchenId, after, limit: 5000 })
    more = page.entries.length > 0
    after = page.next
  }
  const ms = performance.now() - from
  await store.close()
  return ms
}

interface Folded {
  readonly firstMs: number
  readonly peakKb: number
  readonly p99Ms: number
  readonly medianMs: number
}

function fold(file: string, kitchenId: string, does: 'cold' | 'warm'): Folded {
  const child = ['bench/journal-million.child.ts', file, kitchenId, does]
  const { stdout, stderr, status } = spawnSync(process.execPath, child, { encoding: 'utf8' })
  if (status !== 0) throw new Error(stderr)
  return JSON.parse(stdout) as Folded
}

function bareKb(): number {
  const told = "import { peakKb } from './bench/peak-memory.ts'; console.log(peakKb())"
  const { stdout } = spawnSync(process.execPath, ['--input-type=module', '-e', told], { encoding: 'utf8' })
  return Number(stdout)
}
