import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { checkImports } from './check-imports.ts'

const root = mkdtempSync(join(tmpdir(), 'import-rules-'))

function plant(path: string, text: string): void {
  mkdirSync(dirname(join(root, path)), { recursive: true })
  writeFileSync(join(root, path), text)
}

afterAll(() => rmSync(root, { recursive: true, force: true }))

test('planted upward, impure, sideways and circular imports are each found', async () => {
  plant('packages/wording/src/index.ts', "export const word = 'kernel'\n")
  plant('packages/science/src/upward.ts', "export { word } from '../../wording/src/index.ts'\n")
  plant('packages/planning/src/impure.ts', "export { readFileSync } from 'node:fs'\n")
  plant('packages/planning/src/a.ts', "import { b } from './b.ts'\nexport const a = () => b\n")
  plant('packages/planning/src/b.ts', "import { a } from './a.ts'\nexport const b = () => a\n")
  plant('packages/paper/src/reckons.ts', "export { readFileSync } from '../../planning/src/impure.ts'\n")
  plant('packages/paper/src/shapes.ts', "export type { readFileSync } from '../../planning/src/impure.ts'\n")
  plant('apps/web/src/x.ts', 'export const x = 1\n')
  plant('apps/cli/src/sideways.ts', "export { x } from '../../web/src/x.ts'\n")

  const { faults } = await checkImports(['packages', 'apps'], root)

  const foundRules = new Set(faults.map((fault) => fault.split(':')[0]))
  expect(foundRules).toEqual(
    new Set([
      'science-imports-downward-only',
      'science-has-no-dependencies',
      'pure-packages-use-no-node',
      'no-circular',
      'paper-takes-only-types-of-what-reckons',
      'apps-import-no-other-app',
    ]),
  )
  expect(faults.filter((fault) => fault.includes('packages/paper/src/shapes.ts'))).toEqual([])
})
