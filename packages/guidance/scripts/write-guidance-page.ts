/** Writes docs/guidance.md; with `--check` writes nothing and ends 1 when the page is stale. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { guidancePage } from '../src/guidance-page.ts'

const PAGE = new URL('../../../docs/guidance.md', import.meta.url)
const wanted = guidancePage()
const isStale = !existsSync(PAGE) || readFileSync(PAGE, 'utf8') !== wanted

if (isStale && process.argv.includes('--check')) {
  console.error('docs: docs/guidance.md is stale; run npm run docs')
  process.exit(1)
}
if (isStale) writeFileSync(PAGE, wanted)
