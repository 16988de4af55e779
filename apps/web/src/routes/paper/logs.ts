/** Process logs: blank for the stove, or filled from a run of the book. Leaves out every number of its own. */
import { findProcess, headspaceRule } from '@crib/guidance'
import type { RunFact } from '@crib/journal'
import { type PaperDocument, processLogOfPlan, processLog as processLogSheet } from '@crib/paper'
import {
  dayOf,
  type HullingAlkali,
  type JarSize,
  jarName,
  plannedInputs,
  processLog,
  publishedRunRules,
  runClock,
  runRecords,
} from '@crib/planning'
import type { Sentence } from '@crib/science'
import { asTyped, type Desk, elevationFt, settingOf } from './documents.ts'

/** Where the process stands, in a line or two: on every log, read or not. */
function standingLines(alkali: HullingAlkali, jar: JarSize): readonly Sentence[] {
  const found = findProcess({
    food: 'hominy',
    alkali,
    hotPack: true,
    fill: 'loose',
    liquidClear: true,
    headspaceIn: headspaceRule().figure.value,
    jar,
    gauge: 'dial',
    elevationFt: 0,
    standingRead: true,
  })
  return 'standingSentences' in found ? found.standingSentences : found.why
}

/** How the batch was hulled; ash where the book does not say. */
function alkaliOf({ facts }: Desk, batchId: string | undefined): HullingAlkali {
  const batch = batchId === undefined ? undefined : facts.batches[batchId]
  return (batch && plannedInputs(batch)?.alkali) ?? 'ash'
}

export function blankLogDocument(desk: Desk): PaperDocument {
  const ft = elevationFt(desk)
  const last = Object.keys(desk.facts.batches).at(-1)
  return processLogSheet(
    {
      head: ft === undefined ? {} : { elevation: asTyped(ft, 'Ft') },
      standing: standingLines(alkaliOf(desk, last), 'quart'),
    },
    settingOf(desk),
    desk.words,
  )
}

export function runLogDocument(desk: Desk, run: RunFact): PaperDocument {
  const { begun } = run
  const { words } = desk
  const setup = {
    gauge: begun.gauge,
    requiredReadingPsi: begun.requiredReadingPsi,
    processMin: begun.processMin,
    rules: publishedRunRules(),
    zone: begun.at.zone,
  }
  const records = runRecords(run)
  const ft = elevationFt(desk)
  const log = processLog({
    setup,
    records,
    nowMs: Date.now(),
    loadCode: begun.loadCode,
    cannerName: begun.cannerName,
    ...(ft !== undefined && { elevationFt: ft }),
  })
  const clock = runClock(setup, records)
  return processLogOfPlan(
    log,
    {
      head: {
        loadCode: begun.loadCode,
        date: dayOf(begun.at),
        canner: begun.cannerName,
        gauge: words.say(`shell:gauge-${begun.gauge}`),
        jars: `${begun.jarCount}, ${words.sentence(jarName(begun.jarSize))}`,
        ...(ft !== undefined && { elevation: asTyped(ft, 'Ft') }),
        hold: asTyped(begun.requiredReadingPsi, begun.gauge === 'dial' ? 'PsiGauge' : 'LbWeight'),
        processMin: asTyped(begun.processMin, 'Min'),
      },
      standing: standingLines(alkaliOf(desk, begun.batchId), begun.jarSize),
      lines: records.map(({ happenedAtMs, event }) => ({
        clock: asTyped(clock.clock(happenedAtMs).value, 'ClockMin'),
        what: words.say(`shell:print-event-${event.type}`),
        ...('psi' in event && event.psi !== undefined && { reading: asTyped(event.psi, 'PsiGauge') }),
      })),
    },
    settingOf(desk),
    words,
  )
}
