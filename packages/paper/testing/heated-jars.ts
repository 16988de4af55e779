/** Made-up jars and the demo kitchen's loads, invented, as the papers of heat have them. */
import { readFileSync } from 'node:fs'
import { demoKitchen, foldFacts, type RunFact } from '@crib/journal'
import {
  instantOfReading,
  jarHeat,
  madeUpRun,
  proposeLoggerMapping,
  replayRun,
  runHeat,
  traceLogger,
  workJar,
} from '@crib/planning'
import type { MadeUpRun } from '@crib/science'
import type { Words } from '@crib/wording'
import { handClock, repeatingRandom } from '../../journal/src/testing/invented.ts'
import { jarHeatSheet, type PaperDocument, type PaperSize, runHeatSheet } from '../src/index.ts'
import { setting } from './invented-days.ts'

const zone = 'America/Toronto'
const facts = foldFacts(
  demoKitchen({ clock: handClock('2026-11-02T13:00:00.000Z'), random: repeatingRandom(), zone }).entries,
)
const loadOf = (round: number) => Object.values(facts.runs).find(({ begun }) => begun.loadCode.endsWith(`A${round}`))!

const SAMPLES_COUNT = 512
const madeUp = (more: Partial<MadeUpRun>) => {
  const run = { ...madeUpRun(facts), ...more }
  return jarHeat(run, workJar(run, SAMPLES_COUNT))
}
const LOOSE = madeUp({ ventMin: 7 })
const SOLID = madeUp({ jar: 'quart', pack: 'packed solid', holdMin: 70 })

const FILE = readFileSync(new URL('../../../examples/ostrey-point-second-load.csv', import.meta.url), 'utf8')
const [, HEAD, FIRST] = FILE.split('\n') as [string, string, string]
const { traces } = await traceLogger([FILE], proposeLoggerMapping(HEAD, FIRST)!.mapping, ['canner', 'jar', 'gauge'])
const clock = { kind: 'clock', day: '2026-04-15', startClockMin: 0, zone } as const
const LOGGED = {
  traces: traces.map((trace) => ({
    ...trace,
    points: trace.points.map(({ atMin, value }) => ({ atMin: instantOfReading(atMin, clock) / 60_000, value })),
  })),
}
/** The second load, the lines found in its file written into its log. */
const FILLED = (() => {
  const load = loadOf(2)
  const found = replayRun({ ...LOGGED, requiredPsi: 11, elevationM: 820 * 0.3048, jar: 'quart', foodC: 80 })
  if (!found.ok) throw new Error(found.why.key)
  const lines = found.marks.map(({ atMin, event }, index) => ({
    entryId: `found-${index}`,
    personId: 'p',
    deviceId: 'd',
    event,
    instant: new Date(atMin * 60_000).toISOString(),
  }))
  return { ...load, events: [...load.events, ...lines] } as RunFact
})()

export const looseJar = (paper: PaperSize, words: Words): PaperDocument => jarHeatSheet(LOOSE, setting(paper), words)
export const solidJar = (paper: PaperSize, words: Words): PaperDocument => jarHeatSheet(SOLID, setting(paper), words)
export const loadByHand = (paper: PaperSize, words: Words): PaperDocument =>
  runHeatSheet(runHeat(facts, loadOf(1)), setting(paper), words)
export const loadByLogger = (paper: PaperSize, words: Words): PaperDocument =>
  runHeatSheet(runHeat(facts, FILLED, LOGGED), setting(paper), words)
