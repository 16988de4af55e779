/** Papers of heat: a made-up jar cut open, and a run of the book as temperatures. Leaves out every number of its own. */
import type { RunFact } from '@crib/journal'
import { jarHeatSheet, type PaperDocument, runHeatSheet } from '@crib/paper'
import { jarHeat, type LoggedRun, runHeat, type WorkedJar } from '@crib/planning'
import type { MadeUpRun } from '@crib/science'
import { type Desk, settingOf } from './documents.ts'

export function jarHeatDocument(desk: Desk, run: MadeUpRun, worked?: WorkedJar): PaperDocument {
  return jarHeatSheet(jarHeat(run, worked), settingOf(desk), desk.words)
}

/** `logged`: a logger's file, where one is open for this run. */
export function runHeatDocument(desk: Desk, run: RunFact, logged?: LoggedRun): PaperDocument {
  return runHeatSheet(runHeat(desk.facts, run, logged), settingOf(desk), desk.words)
}
