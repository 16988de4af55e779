import { spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { expect, test } from 'vitest'
import { openSqliteStore } from './sqlite.ts'

const CHILD = fileURLToPath(new URL('./kill.child.ts', import.meta.url))
const KITCHEN = '0190a000-0000-7000-8000-000000000001'
const DEVICE = '0190a000-0000-7000-8000-000000000002'

/** Ids printed before the kill; a line cut short by it was not acknowledged to anyone. */
async function appendUntilKilled(file: string, afterMs: number, deviceId = DEVICE): Promise<string[]> {
  const child = spawn(process.execPath, [CHILD, file, KITCHEN, deviceId], { stdio: ['ignore', 'pipe', 'inherit'] })
  let printed = ''
  child.stdout.on('data', (chunk) => {
    if (printed === '') setTimeout(() => child.kill('SIGKILL'), afterMs) // counted from the first acknowledgement
    printed += chunk
  })
  const [, signal] = await once(child, 'close')
  expect(signal).toBe('SIGKILL')
  return printed.split('\n').slice(0, -1)
}

test('[J45] no acknowledged entry is missing after twenty kills in the midst of writing, and the book opens whole', {
  timeout: 60_000,
}, async () => {
  const folder = mkdtempSync(join(tmpdir(), 'book-kill-'))
  try {
    const file = join(folder, 'book.sqlite')
    const acknowledged: string[] = []
    for (let round = 0; round < 20; round += 1) {
      // 1 to 58 ms, unlike from round to round: the kill lands at different places of a commit.
      acknowledged.push(...(await appendUntilKilled(file, 1 + 3 * round)))
    }
    const store = await openSqliteStore(file)
    const kept = new Set<string>()
    for (let after = 0, more = true; more; ) {
      const page = await store.read({ kitchenId: KITCHEN, after })
      for (const { envelope } of page.entries) kept.add(envelope.id)
      more = page.entries.length > 0
      after = page.next
    }
    expect(acknowledged.filter((id) => !kept.has(id))).toEqual([])
    expect(acknowledged.length).toBeGreaterThanOrEqual(20)
    // A line may be on disk whose acknowledgement was cut off: at most one a kill.
    expect(kept.size - acknowledged.length).toBeLessThanOrEqual(20)
    expect(await store.verify()).toEqual({ ok: true, checkedCount: kept.size, erasedCount: 0 })
    await store.close()
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
})

test('[J45] two programs may make and write one new book at once', { timeout: 60_000 }, async () => {
  const folder = mkdtempSync(join(tmpdir(), 'book-two-'))
  try {
    const file = join(folder, 'book.sqlite')
    const other = DEVICE.replace(/2$/, '3')
    const [mine, theirs] = await Promise.all([appendUntilKilled(file, 200), appendUntilKilled(file, 200, other)])
    const store = await openSqliteStore(file)
    const report = await store.verify()
    expect(report.ok).toBe(true)
    expect(report.checkedCount).toBeGreaterThanOrEqual(mine.length + theirs.length)
    expect(Math.min(mine.length, theirs.length)).toBeGreaterThan(0)
    await store.close()
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
})
