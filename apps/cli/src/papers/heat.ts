/** Papers of heat: a made-up jar at the kitchen's height, and a load of the book as temperatures. */
import { jarHeatSheet, runHeatSheet } from '@crib/paper'
import { jarHeat, madeUpRun, runHeat } from '@crib/planning'
import { printSetting } from '../print.ts'
import { chosenRun } from '../run-of-book.ts'
import type { MakePaper } from './paper-flags.ts'

export const HEAT_PAPERS = {
  'jar-heat': ({ facts, flags, door, words }) =>
    jarHeatSheet(jarHeat(madeUpRun(facts)), printSetting(facts, flags, door), words),
  'load-heat': ({ facts, flags, door, words }) => {
    const { run } = chosenRun({ facts }, flags.load, door.terminal.now())
    return runHeatSheet(runHeat(facts, run), printSetting(facts, flags, door), words)
  },
} satisfies Record<string, MakePaper>
