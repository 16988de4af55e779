/** Papers to hang by the fire: handling alkali, a titration, a rub log. Leaves out every number of its own. */
import { cautionsFor } from '@crib/guidance'
import type { AlkaliLotFact, BatchFact } from '@crib/journal'
import { lyeSheet, type PaperDocument, rubLog, titrationSheet } from '@crib/paper'
import { doseOf, lotOverTime, planOfBatch, potWalk } from '@crib/planning'
import type { MessageKey } from '@crib/wording'
import { type Desk, settingOf } from './documents.ts'

/** Rows of a rub log: a long cook, every quarter of an hour. */
const RUB_ROWS = 12

/** With the dose last asked for on this device, where the lot's strength is known; else with lines to write on. */
export function lyeSheetDocument(
  desk: Desk,
  lot: AlkaliLotFact,
  asked: Parameters<typeof doseOf>[0] | null,
): PaperDocument {
  const isDissolved = lot.alkali === 'sodium-hydroxide' || lot.alkali === 'potassium-hydroxide'
  const read = asked && doseOf(asked)
  // A pH is told only to say corrosive, which the sheet does in words.
  const dose = read?.ok ? read.values.filter(({ unit }) => unit !== 'PH') : []
  return lyeSheet(
    {
      ...{ lot: lot.name, isDissolved },
      dose: dose.map((value) => ({ label: desk.words.say(`kettle:dose-value-${value.id}` as MessageKey), value })),
      notes: read?.ok ? read.reasons : [],
      cautions: [
        ...cautionsFor(lot.alkali === 'ash' ? 'ash' : 'alkali'),
        ...(lot.alkali === 'ash' ? cautionsFor('alkali') : []),
        ...(isDissolved ? cautionsFor('sodium-hydroxide') : []),
        ...cautionsFor('foam'),
      ],
    },
    settingOf(desk),
    desk.words,
  )
}

export function titrationSheetDocument(desk: Desk, lot: AlkaliLotFact): PaperDocument {
  const last = lotOverTime(lot).findLast(({ alkali }) => alkali !== undefined)
  return titrationSheet(
    {
      lot: lot.name,
      before: last?.alkali ? [{ label: desk.words.say('kettle:test-value-lotEqPerKg'), value: last.alkali }] : [],
      cautions: [...cautionsFor('alkali'), ...cautionsFor('first-rub').slice(-1)],
    },
    settingOf(desk),
    desk.words,
  )
}

export function rubLogDocument(desk: Desk, batch: BatchFact, potLoad: number): PaperDocument {
  const outcome = planOfBatch(batch)
  const plan = outcome?.kind === 'planned' ? outcome : null
  const lotId = potWalk(batch, plan, potLoad).seen.alkaliLotId
  const lot = lotId === undefined ? plan?.input.alkaliLot?.name : desk.facts.alkaliLots[lotId]?.name
  return rubLog(
    {
      batch: batch.plan.title,
      ...(lot !== undefined && { lot }),
      rowsCount: RUB_ROWS,
      notes: [{ key: 'kettle:look-alkali-boil' }, { key: 'kettle:chem-in-steps' }],
      cautions: [...cautionsFor('first-rub'), ...cautionsFor('foam')],
    },
    settingOf(desk),
    desk.words,
  )
}
