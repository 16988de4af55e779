/** Papers to hang by the fire: handling alkali, a titration, a rub log. Leaves out what they say (planning). */
import type { AlkaliLotFact, BatchFact } from '@crib/journal'
import { lyeSheet, type PaperDocument, rubLog, titrationSheet } from '@crib/paper'
import { doseOf, lyePaper, rubPaper, titrationPaper } from '@crib/planning'
import type { MessageKey } from '@crib/wording'
import { type Desk, settingOf } from './documents.ts'

/** With the dose last asked for on this device, where the lot's strength is known; else with lines to write on. */
export function lyeSheetDocument(
  desk: Desk,
  lot: AlkaliLotFact,
  asked: Parameters<typeof doseOf>[0] | null,
): PaperDocument {
  const read = asked && doseOf(asked)
  // A pH is told only to say corrosive, which the sheet does in words.
  const dose = read?.ok ? read.values.filter(({ unit }) => unit !== 'PH') : []
  return lyeSheet(
    {
      ...lyePaper(lot),
      dose: dose.map((value) => ({ label: desk.words.say(`kettle:dose-value-${value.id}` as MessageKey), value })),
      notes: read?.ok ? read.reasons : [],
    },
    settingOf(desk),
    desk.words,
  )
}

export function titrationSheetDocument(desk: Desk, lot: AlkaliLotFact): PaperDocument {
  const { lastFound, ...paper } = titrationPaper(lot)
  return titrationSheet(
    {
      ...paper,
      before: lastFound ? [{ label: desk.words.say('kettle:test-value-lotEqPerKg'), value: lastFound }] : [],
    },
    settingOf(desk),
    desk.words,
  )
}

export function rubLogDocument(desk: Desk, batch: BatchFact, potLoad: number): PaperDocument {
  return rubLog(rubPaper(desk.facts, batch, potLoad), settingOf(desk), desk.words)
}
