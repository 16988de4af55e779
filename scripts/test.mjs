/**
 * `npm test`: installs what is missing, builds what changed, runs every test, says plainly what could not run here.
 * With REQUIRE_ALL=1 (as in CI) a test that could not run is a failure, and the number that ran may not fall.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { ensureInstalled, ensureWebBuilt, makeFolder, ROOT } from './house.mjs'

const requireAll = process.env.REQUIRE_ALL === '1'
ensureInstalled()
ensureWebBuilt()

const report = join(makeFolder('.kettle'), 'test-report.json')
rmSync(report, { force: true })
const vitest = spawnSync('npm', ['run', '--silent', 'test:all', '--', ...process.argv.slice(2)], {
  cwd: ROOT,
  stdio: 'inherit',
  shell: process.platform === 'win32',
})
if (!existsSync(report)) {
  console.error('The tests did not start: no report was written.')
  process.exit(1)
}

const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = JSON.parse(readFileSync(report, 'utf8'))
const notRunCount = numPendingTests + numTodoTests
let ok = vitest.status === 0 && numFailedTests === 0 && numPassedTests > 0

if (notRunCount > 0) {
  console.log(`NOT RUN: ${notRunCount} tests, install with: apt-get install chromium poppler-utils postgresql strace`)
  if (requireAll) {
    console.error('REQUIRE_ALL=1: every test must run.')
    ok = false
  }
}
if (requireAll) {
  const { executedCountAtLeast } = JSON.parse(readFileSync(join(ROOT, 'scripts/test-count.json'), 'utf8'))
  if (numPassedTests + numFailedTests < executedCountAtLeast) {
    console.error(
      `${numPassedTests + numFailedTests} tests ran; scripts/test-count.json asks for ${executedCountAtLeast}.`,
    )
    ok = false
  }
}
console.log(`${numPassedTests} passed, ${numFailedTests} failed, ${notRunCount} skipped`)
process.exit(ok ? 0 : 1)
