/** Writes docs/guidance.md. Run: npx node packages/guidance/scripts/write-guidance-page.ts */
import { writeFileSync } from 'node:fs'
import { guidancePage } from '../src/guidance-page.ts'

writeFileSync(new URL('../../../docs/guidance.md', import.meta.url), guidancePage())
