/**
 * `npm run docs` writes the pages that are made from the code: the list of calculations, the list of checks, the guidance
 * page and the changelog. `--check` writes nothing and fails when one of them is stale.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { CATALOGUE } from '@crib/catalogue'
import { calculationsPage } from './docs/calculations-page.ts'
import { changelogPage } from './docs/changelog-page.ts'

/** Generators that live beside what they describe; each takes `--check` as well. */
const OTHER_GENERATORS = ['scripts/write-checks.ts', 'packages/guidance/scripts/write-guidance-page.ts']
const CHANGES = 'changes'

const check = process.argv.includes('--check')
let staleCount = 0

function fragments(): { name: string; text: string }[] {
  const names = existsSync(CHANGES) ? readdirSync(CHANGES).filter((name) => name.endsWith('.md')) : []
  return names.sort().map((name) => ({ name, text: readFileSync(`${CHANGES}/${name}`, 'utf8') }))
}

const pages = {
  'docs/calculations.md': calculationsPage(CATALOGUE),
  'CHANGELOG.md': changelogPage(fragments()),
}

for (const [file, wanted] of Object.entries(pages)) {
  const found = existsSync(file) ? readFileSync(file, 'utf8') : null
  if (found === wanted) continue
  staleCount += 1
  if (check) console.error(`docs: ${file} is stale; run npm run docs`)
  else writeFileSync(file, wanted)
}

for (const generator of OTHER_GENERATORS) {
  const { status } = spawnSync(process.execPath, [generator, ...(check ? ['--check'] : [])], { stdio: 'inherit' })
  if (status !== 0) process.exit(status ?? 1)
}
console.log(
  `docs: ${Object.keys(pages).length + OTHER_GENERATORS.length} pages, ${staleCount} ${check ? 'stale' : 'written anew'}`,
)
process.exit(check && staleCount > 0 ? 1 : 0)
