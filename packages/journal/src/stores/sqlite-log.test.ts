import { copyFileSync, mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import { type OpenedDatabase, openDatabase } from './sqlite-driver.ts'
import { createLongLog } from './sqlite-log.ts'

let folder: string
let file: string
let db: OpenedDatabase
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'book-log-'))
  file = join(folder, 'book.sqlite')
  db = openDatabase(file)
  db.exec('create table t (text text)')
})
afterEach(() => {
  db.close()
  rmSync(folder, { recursive: true, force: true })
})

const MEGABYTE = 'a'.repeat(1_000_000)
const write = (megabytes: number): void => {
  for (let i = 0; i < megabytes; i += 1) db.run('insert into t values (?)', [MEGABYTE])
}
/** In the file by itself, without the log beside it. */
function megabytesInFile(): number {
  const copy = join(folder, 'copy.sqlite')
  copyFileSync(file, copy)
  const alone = openDatabase(copy)
  try {
    return alone.all<[number]>('select count(*) from t')[0]![0]
  } finally {
    alone.close()
  }
}
const logBytes = (): number => statSync(`${file}-wal`).size

test('usually the log is taken into the file as it fills', () => {
  write(40)
  expect(logBytes()).toBeLessThan(25_000_000)
})

test('[J76] while all is folded anew the log grows, and afterwards it is taken into the file and cut back', async () => {
  const log = createLongLog(db, file)
  await log.during(async () => write(80))
  expect(logBytes()).toBeGreaterThan(80_000_000)
  await log.settled()
  expect(megabytesInFile()).toBe(80)
  expect(db.all('pragma wal_autocheckpoint')).toEqual([[4000]])
  write(1)
  expect(logBytes()).toBeLessThanOrEqual(64 * 1024 * 1024)
})

test('[J76] a fold that fails leaves the log as usual', async () => {
  const log = createLongLog(db, file)
  await expect(log.during(() => Promise.reject(new Error('overtaken')))).rejects.toThrow('overtaken')
  await log.settled()
  expect(db.all('pragma wal_autocheckpoint')).toEqual([[4000]])
})
