import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { checkBundle, FIRST_SCREEN_LIMIT_BYTES } from '../scripts/check-bundle.ts'
import { buildScreens } from './harness.ts'

const dist = mkdtempSync(join(tmpdir(), 'kettle-bundle-'))

beforeAll(() => buildScreens(dist))
afterAll(() => rmSync(dist, { recursive: true, force: true }))

test('the first screen takes less than 170 kB of compressed script, and no script asks for Node', () => {
  const { firstScreenBytes, firstScreenFiles, withNode } = checkBundle(dist)
  expect(firstScreenFiles.length).toBeGreaterThan(1)
  expect(firstScreenBytes).toBeGreaterThan(50_000)
  expect(firstScreenBytes).toBeLessThan(FIRST_SCREEN_LIMIT_BYTES)
  expect(withNode).toEqual([])
})
