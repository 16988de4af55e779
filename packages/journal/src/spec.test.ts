import { globSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'

const FOLDER = join(import.meta.dirname, '..')

test('every rule of SPEC.md has a test, and every number in a test has a rule', () => {
  const spec = readFileSync(join(FOLDER, 'SPEC.md'), 'utf8')
  const rules = [...spec.matchAll(/^- \*\*(J\d+)\*\*/gm)].map(([, rule]) => rule!)
  const tests = globSync('src/**/*.test.ts', { cwd: FOLDER }).map((path) => readFileSync(join(FOLDER, path), 'utf8'))
  const proved = new Set(tests.flatMap((text) => [...text.matchAll(/\(['"`]\[(J\d+)\]/g)].map(([, rule]) => rule!)))
  expect(rules.length).toBeGreaterThan(40)
  expect(new Set(rules).size).toBe(rules.length)
  expect(rules.filter((rule) => !proved.has(rule))).toEqual([])
  expect([...proved].filter((rule) => !rules.includes(rule))).toEqual([])
})
