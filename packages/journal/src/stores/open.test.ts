import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { isAddress, openStore } from './open.ts'

test('[J72] a book is opened by its file or by its address, and a folder that is missing is made', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'book-open-'))
  const store = await openStore(join(folder, 'of', 'ours', 'book.sqlite'))
  expect(store.engine).toBe('sqlite')
  expect(await store.kitchens()).toEqual([])
  await store.close()
  await expect(openStore('postgresql://127.0.0.1:1/book')).rejects.toMatchObject({ code: 'unreachable' })
  expect([isAddress('postgres://x/y'), isAddress('/home/keeper/postgres')]).toEqual([true, false])
  rmSync(folder, { recursive: true, force: true })
})
