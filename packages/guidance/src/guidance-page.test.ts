import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { guidancePage } from './guidance-page.ts'
import { GUIDANCE_TABLES } from './tables.ts'

test('docs/guidance.md is what the data files say today', () => {
  const page = readFileSync(new URL('../../../docs/guidance.md', import.meta.url), 'utf8')
  expect(page, 'run npm run docs').toBe(guidancePage())
})

test('the page shows every table, with its standing and its check', () => {
  const page = guidancePage()
  for (const table of GUIDANCE_TABLES) expect(page).toContain(`## ${table.title}`)
  expect(page).toContain('standing: made for lye hominy; withdrawn')
  expect(page).toContain('checked: not yet')
  expect(page).toContain('| pint | 60 |')
})

test('a changed row changes the page', () => {
  const [first, ...others] = GUIDANCE_TABLES
  const changed = { ...first!, rows: [{ jar: 'pint', processMin: 61 }] }
  expect(guidancePage([changed, ...others])).not.toBe(guidancePage())
})
