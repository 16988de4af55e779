/**
 * Writes docs/checks.md: every table of reference values that a test reproduces, with source, count and tolerance.
 * Reads the `# name: value` lines of the CSV tables beside the tests; refuses a table no test names or with no known source.
 * `--check` writes nothing and fails when the page is stale.
 */
import { existsSync, globSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { parseBib } from '../packages/science/testing/bib-keys.ts'
import { splitReferenceTable } from '../packages/science/testing/reference-table.ts'

export interface CheckedTable {
  readonly table: string
  readonly source: string
  /** `published`: read from the work. `worked`: worked out separately from its equations. `from-memory`: not re-read. */
  readonly kind: string
  readonly valueCount: number
  readonly printedTo: string
  readonly tolerance: string
  readonly note: string
  readonly test: string
}

export interface Checks {
  readonly tables: readonly CheckedTable[]
  readonly faults: readonly string[]
}

const KINDS = ['published', 'worked', 'from-memory']

export function collectChecks(root: string): Checks {
  const keys = new Set(parseBib(readFileSync(join(root, 'packages/science/sources.bib'), 'utf8')).map(({ key }) => key))
  const tables: CheckedTable[] = []
  const faults: string[] = []
  for (const path of globSync('packages/*/src/**/*.csv', { cwd: root }).toSorted()) {
    const { headers, columnNames, cells } = splitReferenceTable(readFileSync(join(root, path), 'utf8'))
    const folder = dirname(path)
    const tests = readdirSync(join(root, folder))
      .filter((file) => /\.test\.tsx?$/.test(file))
      .filter((file) => readFileSync(join(root, folder, file), 'utf8').includes(basename(path)))
    const fault = (what: string) => faults.push(`${path}: ${what}`)
    const source = headers.source ?? ''
    const key = source.split(/[\s,:;]/)[0] ?? ''
    if (!keys.has(key)) fault(`its "# source:" must begin with a key of sources.bib, not "${key}"`)
    const kind = headers.kind ?? 'published'
    if (!KINDS.includes(kind)) fault(`"# kind:" is ${kind}, not one of ${KINDS.join(', ')}`)
    if (headers['printed-to'] === undefined) fault('needs "# printed-to:"')
    if (cells.length === 0) fault('has no rows')
    if (tests.length === 0) fault('no test in its folder names it')
    const checked = headers.checks?.split(',').map((name) => name.trim()) ?? columnNames.slice(1)
    for (const name of checked) if (!columnNames.includes(name)) fault(`has no column "${name}" to check`)
    tables.push({
      table: path,
      source,
      kind,
      valueCount: Number(headers.values ?? cells.length * checked.length) - Number(headers.excepted ?? 0),
      printedTo: headers['printed-to'] ?? '',
      tolerance: headers.tolerance ?? 'as printed',
      note: headers.note ?? '',
      test: tests.map((file) => join(folder, file)).join(', '),
    })
  }
  return { tables, faults }
}

export function renderChecks({ tables }: Checks): string {
  const total = (kind: string) => tables.filter((t) => t.kind === kind).reduce((sum, t) => sum + t.valueCount, 0)
  const cell = (text: string) => text.replaceAll('|', '\\|')
  const rows = tables.map(
    (t) =>
      `| ${[t.source, t.kind, String(t.valueCount), t.printedTo, t.tolerance, t.note].map(cell).join(' | ')} | [table](../${t.table}), [test](../${t.test.split(', ')[0]}) |`,
  )
  return [
    '# What the tests check against',
    '',
    'Made by `scripts/write-checks.ts` from the tables that lie beside the tests; do not edit by hand.',
    'Works are named by their keys in [sources.bib](../packages/science/sources.bib).',
    '',
    `*Published*: read from the work or a faithful copy, ${total('published')} values. *Worked*: worked out separately from the`,
    `equations of the work named, which prints no such table, ${total('worked')} values. *From memory*: not re-read,`,
    `${total('from-memory')} values.`,
    '',
    '| source | kind | values | given to | tolerance | note | where |',
    '|---|---|---|---|---|---|---|',
    ...rows,
    '',
  ].join('\n')
}

/** Exit code and what to print. */
export function writeChecks(root: string, { check }: { readonly check: boolean }): { code: 0 | 1; text: string } {
  const checks = collectChecks(root)
  if (checks.faults.length > 0) return { code: 1, text: checks.faults.join('\n') }
  const page = join(root, 'docs/checks.md')
  const text = renderChecks(checks)
  const count = checks.tables.reduce((sum, { valueCount }) => sum + valueCount, 0)
  const summary = `checks: ${checks.tables.length} tables, ${count} values`
  if (!check) writeFileSync(page, text)
  else if (!existsSync(page) || readFileSync(page, 'utf8') !== text) {
    return { code: 1, text: 'docs/checks.md is stale: run node scripts/write-checks.ts' }
  }
  return { code: 0, text: summary }
}

if (import.meta.main) {
  const { code, text } = writeChecks(join(import.meta.dirname, '..'), { check: process.argv.includes('--check') })
  console.log(text)
  process.exit(code)
}
