import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, test } from 'vitest'
import { collectChecks, writeChecks } from './write-checks.ts'

const TABLE =
  '# source: steam-2001 table 3\n# kind: published\n# printed-to: 0.1 K\n# tolerance: 0.05 K\na,b\n1,2\n3,4\n'

let root: string
const put = (path: string, text: string) => {
  mkdirSync(join(root, path, '..'), { recursive: true })
  writeFileSync(join(root, path), text)
}

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'checks-'))
  put('packages/science/sources.bib', '@book{steam-2001,\n  title = {Steam},\n  note = {seen}\n}\n')
  put('docs/kept.md', '')
})
afterEach(() => rmSync(root, { recursive: true }))

describe('the page of checks', () => {
  test('lists a table with its source, values and tolerance, and knows when it is stale', () => {
    put('packages/science/src/steam/line.csv', TABLE)
    put('packages/science/src/steam/line.test.ts', "read('./line.csv')")
    expect(writeChecks(root, { check: true })).toMatchObject({ code: 1, text: expect.stringContaining('stale') })
    expect(writeChecks(root, { check: false })).toEqual({ code: 0, text: 'checks: 1 tables, 2 values' })
    const page = readFileSync(join(root, 'docs/checks.md'), 'utf8')
    expect(page).toContain('| steam-2001 table 3 | published | 2 | 0.1 K | 0.05 K |')
    expect(page).toContain('packages/science/src/steam/line.test.ts')
    expect(writeChecks(root, { check: true }).code).toBe(0)
    put('packages/science/src/steam/line.csv', `${TABLE}5,6\n`)
    expect(writeChecks(root, { check: true }).code).toBe(1)
  })

  test('counts only the columns checked, less the rows excepted', () => {
    put('packages/science/src/a.csv', `# checks: a, b\n# excepted: 1\n${TABLE}`)
    put('packages/science/src/a.test.ts', 'a.csv')
    expect(collectChecks(root).tables[0]?.valueCount).toBe(3)
  })

  test.each([
    ['an unknown source', TABLE.replace('steam-2001', 'steam-1901'), 'a.csv', 'steam-1901'],
    ['no test that names it', TABLE, 'b.csv', 'no test'],
    ['no printed digits', TABLE.replace('# printed-to: 0.1 K\n', ''), 'a.csv', 'printed-to'],
    ['a kind of its own', TABLE.replace('kind: published', 'kind: sure'), 'a.csv', 'sure'],
    ['no rows', TABLE.split('1,2')[0] ?? '', 'a.csv', 'no rows'],
    ['a checked column it lacks', `# checks: c\n${TABLE}`, 'a.csv', '"c"'],
  ])('refuses a table with %s', (_what, table, named, complaint) => {
    put('packages/science/src/a.csv', table)
    put('packages/science/src/a.test.ts', `read('./${named}')`)
    const { code, text } = writeChecks(root, { check: false })
    expect(code).toBe(1)
    expect(text).toContain('packages/science/src/a.csv')
    expect(text).toContain(complaint)
  })

  test('finds every table of this repository tested and sourced', () => {
    const { tables, faults } = collectChecks(join(import.meta.dirname, '..'))
    expect(faults).toEqual([])
    expect(tables.length).toBeGreaterThanOrEqual(20)
  })
})
