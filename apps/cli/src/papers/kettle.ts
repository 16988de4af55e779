/** Papers to hang by the fire: handling alkali, a titration, a rub log. */
import type { AlkaliLotFact } from '@crib/journal'
import { lyeSheet, rubLog, titrationSheet } from '@crib/paper'
import { lyePaper, rubPaper, titrationPaper } from '@crib/planning'
import { badInput } from '../exit-codes.ts'
import { printSetting } from '../print.ts'
import { chosenBatch } from './batch.ts'
import type { Asked, MakePaper } from './paper-flags.ts'

export const KETTLE_PAPERS = {
  lye: (asked) => {
    const { setting, lot } = lotOf(asked)
    return lyeSheet({ ...lyePaper(lot), dose: [], notes: [] }, setting, asked.words)
  },
  titration: (asked) => {
    const { setting, lot } = lotOf(asked)
    const { lastFound, ...paper } = titrationPaper(lot)
    const before = lastFound ? [{ label: asked.words.say('kettle:test-value-lotEqPerKg'), value: lastFound }] : []
    return titrationSheet({ ...paper, before }, setting, asked.words)
  },
  rubs: (asked) => {
    const { batchId } = chosenBatch(asked, 'hull')
    const paper = rubPaper(asked.facts, asked.facts.batches[batchId]!, 1)
    return rubLog(paper, printSetting(asked.facts, asked.flags, asked.door), asked.words)
  },
} satisfies Record<string, MakePaper>

/** The lot named, else the one written down last. */
function lotOf({ facts, flags, door }: Asked) {
  const lots: readonly AlkaliLotFact[] = Object.values(facts.alkaliLots)
  const wanted = flags.lot?.toLowerCase()
  const lot = lots.findLast(({ name }) => wanted === undefined || name.toLowerCase() === wanted)
  if (!lot) throw badInput('terminal:no-such-alkali-lot', { names: lots.map(({ name }) => name).join(', ') || '-' })
  return { lot, setting: printSetting(facts, flags, door) }
}
