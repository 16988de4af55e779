/**
 * `npm run bench`: answers every question, each beside a reference measured in the same run, and compares the ratio with
 * the committed baseline. `--save` writes a new baseline. Ends with 1 when a limit is passed.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs'
import { availableParallelism } from 'node:os'
import { firstLoad } from './first-load.ts'
import { heatCrossSection } from './heat-cross-section.ts'
import { heatInBrowser } from './heat-in-browser.ts'
import { heatInTheJar } from './heat-in-the-jar.ts'
import { journalAppend } from './journal-append.ts'
import { journalMillion } from './journal-million.ts'
import { journalPostgres } from './journal-postgres.ts'
import { journalSync } from './journal-sync.ts'
import { kettleChemistry } from './kettle-chemistry.ts'
import { loggerInBrowser } from './logger-in-browser.ts'
import { loggerTenMillion } from './logger-ten-million.ts'
import { planOfADay } from './plan-of-a-day.ts'
import type { Measured } from './question.ts'
import { recallOfJars } from './recall.ts'
import { seedWhatIfSlider } from './seed-what-if.ts'
import { serverFirstByte } from './server-first-byte.ts'
import { thousandLabels } from './thousand-labels.ts'

const BASELINE = 'bench/baseline.json'
const QUESTIONS = [
  planOfADay,
  kettleChemistry,
  serverFirstByte,
  firstLoad,
  recallOfJars,
  thousandLabels,
  journalAppend,
  journalPostgres,
  journalMillion,
  journalSync,
  heatInTheJar,
  heatInBrowser,
  heatCrossSection,
  loggerTenMillion,
  loggerInBrowser,
  seedWhatIfSlider,
]

interface Baseline {
  readonly cores: number
  readonly measured: readonly (Measured & { readonly ratio: number })[]
}

const baseline: Baseline | null = existsSync(BASELINE) ? JSON.parse(readFileSync(BASELINE, 'utf8')) : null
const measured: (Measured & { ratio: number })[] = []
let overLimitCount = 0

for (const { asks, answer } of QUESTIONS) {
  console.log(`\n${asks}`)
  const answered = await answer()
  if ('notRun' in answered) {
    console.log(`  NOT RUN: ${answered.notRun}`)
    continue
  }
  for (const one of answered) {
    const ratio = one.value / one.reference.value
    measured.push({
      ...one,
      value: rounded(one.value),
      ratio: rounded(ratio),
      reference: { ...one.reference, value: rounded(one.reference.value) },
    })
    const before = baseline?.measured.find(({ what }) => what === one.what)
    const over = one.limit !== undefined && one.value > one.limit
    if (over) overLimitCount += 1
    console.log(`  ${one.what}: ${rounded(one.value)} ${one.unit}${limitText(one, over)}`)
    console.log(`    ${rounded(ratio)} times ${one.reference.what} (${rounded(one.reference.value)} ${one.unit})`)
    if (before)
      console.log(`    baseline: ${before.value} ${before.unit}, ${before.ratio} times, on ${baseline!.cores} cores`)
  }
}

if (process.argv.includes('--save')) {
  writeFileSync(BASELINE, `${JSON.stringify({ cores: availableParallelism(), measured }, null, 2)}\n`)
  console.log(`\nsaved as ${BASELINE}`)
}
process.exit(overLimitCount === 0 ? 0 : 1)

function limitText({ limit, unit }: Measured, over: boolean): string {
  if (limit === undefined) return ''
  return over ? `, OVER the limit of ${limit} ${unit}` : ` (limit ${limit} ${unit})`
}

/** Three digits are all that two runs share. */
function rounded(value: number): number {
  return Number(value.toPrecision(3))
}
