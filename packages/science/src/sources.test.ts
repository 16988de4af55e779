/** Every exported function of this package names its source, and every key cited anywhere is in sources.bib. */
import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { parseBib, readBib } from '../testing/bib-keys.ts'
import { SCIENCE_CALCS } from './science-calcs.ts'

const ROOT = join(import.meta.dirname, '../../..')
const read = (path: string) => readFileSync(join(ROOT, path), 'utf8')
const bib = readBib()
const keys = new Set(bib.map(({ key }) => key))
/** Said where a rule is our own or there is nothing to cite. */
const NO_WORK = new Set(['project-rule', 'none'])

/** Functions that need no source, each with the reason. A folder ends in a slash. */
const EXEMPT: readonly { readonly path: string; readonly names?: readonly string[]; readonly reason: string }[] = [
  { path: 'units/', reason: 'definitions of units and reading of typed text: no model' },
  { path: 'errors.ts', reason: 'range checks: the range carries its own source' },
  { path: 'reckoned.ts', reason: 'rounding: a project rule, documented there' },
  { path: 'lethality/lethality.ts', names: ['hasEqualSteps'], reason: 'a question about the record, no model' },
]

interface Exported {
  readonly path: string
  readonly name: string
  readonly doc: string
}

/** Functions named in index.ts, with the doc comment that stands above each. */
function exportedFunctions(): readonly Exported[] {
  const index = read('packages/science/src/index.ts')
  return [...index.matchAll(/export \{([^}]+)\} from '\.\/([^']+)'/g)].flatMap(([, list = '', path = '']) => {
    const source = read(`packages/science/src/${path}`)
    return list.split(',').flatMap((entry) => {
      const name = entry.trim()
      const at = source.search(new RegExp(`^export function ${name}\\b`, 'm'))
      if (name === '' || at < 0) return []
      const above = source.slice(0, at).trimEnd()
      const doc = above.endsWith('*/') ? above.slice(above.lastIndexOf('/**')) : ''
      return [{ path, name, doc }]
    })
  })
}

/** Every key has a hyphen, so that prose after `@source` ("the row's own") is not taken for one. */
const citedIn = (doc: string) =>
  [...doc.matchAll(/@source\s+([a-z0-9]+(?:-[a-z0-9]+)+|none\b)/g)].map(([, key]) => key!)
const isExempt = ({ path, name }: Exported) =>
  EXEMPT.some(
    (e) => (e.path.endsWith('/') ? path.startsWith(e.path) : path === e.path) && (e.names?.includes(name) ?? true),
  )

describe('sources', () => {
  const functions = exportedFunctions()

  test('are named by every exported function of this package', () => {
    expect(functions.length).toBeGreaterThanOrEqual(30)
    const without = functions.filter((f) => !isExempt(f) && citedIn(f.doc).length === 0)
    expect(without.map(({ path, name }) => `${path}: ${name}`)).toEqual([])
  })

  test('are missing only where an exemption still has something to exempt', () => {
    const stale = EXEMPT.filter(
      (e) =>
        !functions.some((f) => isExempt(f) && (e.path.endsWith('/') ? f.path.startsWith(e.path) : f.path === e.path)),
    )
    expect(stale).toEqual([])
  })

  test('name works that sources.bib has, in all code and guidance data', () => {
    const missing: string[] = []
    let citedCount = 0
    const cite = (path: string, key: string) => {
      citedCount += 1
      if (!keys.has(key) && !NO_WORK.has(key)) missing.push(`${path}: ${key}`)
    }
    for (const path of globSync('packages/*/src/**/*.ts', { cwd: ROOT })) {
      if (path.endsWith('.test.ts')) continue
      const text = read(path)
      for (const key of citedIn(text)) cite(path, key)
      for (const [, list = ''] of text.matchAll(/\b(?:sourceKeys|SWELLING_KEYS)\s*[:=]\s*\[([^\]]*)\]/g)) {
        for (const [, key = ''] of list.matchAll(/'([a-z0-9]+(?:-[a-z0-9]+)+)'/g)) cite(path, key)
      }
      for (const [, key = ''] of text.matchAll(/\blimitSource:\s*'([^']+)'/g)) cite(path, key)
      if (!path.startsWith('packages/science/')) continue
      for (const [, key = ''] of text.matchAll(/\b(?:source:|SOURCE =)\s*'([^']+)'/g)) cite(path, key)
    }
    for (const path of globSync('packages/guidance/data/**/*.json', { cwd: ROOT })) {
      JSON.parse(read(path), (name, value) => {
        if (name === 'source' && typeof value === 'string') cite(path, value)
        if (name === 'sourceKeys' && Array.isArray(value)) for (const key of value) cite(path, String(key))
        return value
      })
    }
    expect(citedCount).toBeGreaterThan(50)
    expect(missing).toEqual([])
  })

  test('stand in sources.bib once each and say whether they were seen', () => {
    expect(bib.map(({ key }) => key).filter((key, i, all) => all.indexOf(key) !== i)).toEqual([])
    expect(
      bib.filter(({ note }) => !/seen|from memory, not re-read|invented/.test(note ?? '')).map(({ key }) => key),
    ).toEqual([])
  })

  test('of every calculation are in sources.bib', () => {
    expect(SCIENCE_CALCS.flatMap(({ sourceKeys }) => sourceKeys).filter((key) => !keys.has(key))).toEqual([])
  })

  test('are read from a bibliography entry by entry', () => {
    expect(parseBib('% text\n@book{a-1,\n note = {seen}\n}\n@misc{b-2,\n title = {B}\n}\n')).toMatchObject([
      { key: 'a-1', note: 'seen' },
      { key: 'b-2', note: null },
    ])
  })
})
