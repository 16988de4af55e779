import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { type Cluster, POSTGRES_HERE, startCluster } from '../testing/postgres.ts'
import { openSecretTables, secretsBeside } from './secret-tables.ts'

function numbered(): () => number {
  let count = 0
  return () => {
    count += 1
    return count
  }
}

function suite(where: () => Promise<string>): void {
  test('keeps rows across closing and opening again', async () => {
    const place = await where()
    const tables = await openSecretTables(place)
    const [put] = await tables.rows<[string]>(
      'insert into person_try (who, since, tries) values ($2, $1, $3) returning who',
      [1_700_000_000_000, 'name', 1],
    )
    expect(put).toEqual(['name'])
    await tables.close()
    const again = await openSecretTables(place)
    expect(await again.rows('select who, since, tries from person_try')).toEqual([['name', 1_700_000_000_000, 1]])
    await again.close()
  })

  test('two servers may open and make it at once', async () => {
    const place = await where()
    const both = await Promise.all([openSecretTables(place), openSecretTables(place), openSecretTables(place)])
    for (const tables of both) expect(await tables.rows('select max(step) from person_schema')).toEqual([[1]])
    for (const tables of both) await tables.close()
  })

  test('tables of a newer version are refused and left alone', async () => {
    const place = await where()
    const tables = await openSecretTables(place)
    await tables.rows('insert into person_schema (step) values (99)')
    await tables.close()
    await expect(openSecretTables(place)).rejects.toMatchObject({ code: 'newer-version' })
  })
}

describe('in a file', () => {
  const folder = mkdtempSync(join(tmpdir(), 'people-'))
  afterAll(() => rmSync(folder, { recursive: true, force: true }))
  const names = numbered()
  suite(async () => join(folder, `${names()}.sqlite`))
})

describe.skipIf(!POSTGRES_HERE)('in PostgreSQL', () => {
  let cluster: Cluster
  beforeAll(async () => {
    cluster = await startCluster()
  }, 60_000)
  afterAll(() => cluster?.stop())
  const names = numbered()
  suite(() => cluster.url(`people_${names()}`))
})

test('lies beside the book, or where the book is', () => {
  expect(secretsBeside('/home/wren/corn/book.sqlite')).toBe('/home/wren/corn/people.sqlite')
  expect(secretsBeside('postgres://host/corn')).toBe('postgres://host/corn')
})
