/**
 * Looks up a published process: minutes at pressure with their standing, or a plain statement that there is none.
 * Leaves out: any computing of minutes. A condition not met gives "no published process", never a guess.
 */
import type { Sentence } from '@crib/science'
import lyeJson from '../data/process-hominy-lye.json' with { type: 'json' }
import sodaJson from '../data/process-hominy-soda.json' with { type: 'json' }
import cornJson from '../data/process-whole-kernel-corn.json' with { type: 'json' }
import { GUIDANCE_EDITION, type Standing } from '../schema/envelope.ts'
import { type PrintedJar, type ProcessTable, processTableSchema } from '../schema/process-tables.ts'
import { askWhom } from './ask-whom.ts'
import { jarUses } from './jars.ts'
import { loadTable, tableSourceKeys } from './load.ts'
import { type FoundPressure, pressureRowFor } from './pressure.ts'
import type { HearsayMinutes, ProcessOutcome, ProcessQuery, PublishedProcess, UnmetCondition } from './process-types.ts'
import { sentence } from './sentence.ts'
import { NOBODYS_STANDING, standingSentences, UNTESTED_ALKALI_STANDING } from './standing.ts'

const LYE_HOMINY = loadTable(processTableSchema, lyeJson)
const SODA_HOMINY = loadTable(processTableSchema, sodaJson)
const WHOLE_KERNEL_CORN = loadTable(processTableSchema, cornJson)

export const PROCESS_TABLES: readonly ProcessTable[] = [LYE_HOMINY, SODA_HOMINY, WHOLE_KERNEL_CORN]

/** Alkalis that printed hominy directions exist for; for any other, the old lye direction is what it looks like. */
const LOOK_ALIKE = LYE_HOMINY

/**
 * The published process for a food and a way of packing it, or why there is none.
 *
 * Ash and calcium-hydroxide hominy is always `no-published-process`: no test is known. It looks like lye hominy, hot
 * pack; those minutes come along only in `openedByReading`, once their standing was read and every other condition is met.
 *
 * @throws {RangeError} when elevation or headspace is not a finite number, or the jar is unknown.
 * @source so-easy-to-preserve-1999 p. 66; nchfp-hominy-without-lye; usda-aib-539-1994 guide 4
 */
export function findProcess(query: ProcessQuery): ProcessOutcome {
  return findProcessIn(PROCESS_TABLES, query)
}

/** The same lookup in tables handed in; see findProcess. */
export function findProcessIn(tables: readonly ProcessTable[], query: ProcessQuery): ProcessOutcome {
  if (!Number.isFinite(query.headspaceIn))
    throw new RangeError(`headspaceIn is ${query.headspaceIn} in; a number is needed`)
  const pressure = pressureRowFor(query.gauge, query.elevationFt)
  const { timeAs } = jarUses(query.jar)
  const own = tables.filter(({ process }) => process.food === query.food && process.alkali === query.alkali)
  const isUntested = own.length === 0
  const isHominy = query.food === 'hominy' && query.alkali !== 'none'
  const alike = isUntested ? tables.filter((table) => isHominy && table.process.key === LOOK_ALIKE.process.key) : own
  const standing = own[0]?.standing ?? (isHominy ? UNTESTED_ALKALI_STANDING : NOBODYS_STANDING)
  const unmet = unmetConditions(alike[0], query, timeAs, isUntested)

  if (unmet.length > 0) {
    const onlyAlkali = unmet.every((condition) => condition === 'alkali-not-tested')
    const canOpen = onlyAlkali && query.standingRead && pressure.kind === 'found' && alike[0] && timeAs
    return {
      kind: 'no-published-process',
      why: [
        ...unmet.map((condition) => whySentence(condition, alike[0])),
        ...(pressure.kind === 'off-table' ? pressure.why : []),
      ],
      unmet,
      looksLike: alike.map((table) => table.process.key),
      standing,
      standingSentences: standingSentences(standing),
      askWhom: askWhom(),
      ...(canOpen && { openedByReading: publishedProcess(alike[0]!, query, timeAs, pressure, standing) }),
      edition: GUIDANCE_EDITION,
    }
  }
  if (pressure.kind === 'off-table') return { ...pressure, standing, standingSentences: standingSentences(standing) }

  const found = own.map((table) => publishedProcess(table, query, timeAs!, pressure, table.standing))
  if (new Set(found.map((process) => process.processMin)).size > 1) {
    return {
      kind: 'conflict',
      topic: 'process-minutes',
      processes: found,
      why: [sentence('guidance:sources-differ-on-minutes')],
      askWhom: askWhom(),
      edition: GUIDANCE_EDITION,
    }
  }
  return { kind: 'found', process: found[0]!, standingSentences: standingSentences(standing) }
}

function unmetConditions(
  table: ProcessTable | undefined,
  query: ProcessQuery,
  timeAs: PrintedJar | null,
  isUntested: boolean,
): UnmetCondition[] {
  const unmet: UnmetCondition[] = []
  if (isUntested) unmet.push('alkali-not-tested')
  if (!table) return unmet
  if (!query.hotPack && table.process.pack === 'hot') unmet.push('not-hot-pack')
  if (query.fill !== table.process.fill) unmet.push('packed-tight')
  if (!query.liquidClear) unmet.push('cloudy-liquid')
  if (query.headspaceIn !== table.process.headspaceIn) unmet.push('other-headspace')
  if (!table.rows.some((row) => row.jar === timeAs)) unmet.push('jar-not-printed')
  return unmet
}

function whySentence(condition: UnmetCondition, table: ProcessTable | undefined): Sentence {
  switch (condition) {
    case 'alkali-not-tested':
      return sentence(table ? 'guidance:no-test-for-this-alkali' : 'guidance:no-process-for-this-food')
    case 'not-hot-pack':
      return sentence('guidance:needs-hot-pack', {
        low: { value: table!.process.reheatMin, unit: 'Min' },
        high: { value: table!.process.reheatMaxMin, unit: 'Min' },
      })
    case 'packed-tight':
      return sentence('guidance:needs-loose-fill')
    case 'cloudy-liquid':
      return sentence('guidance:needs-clear-liquid')
    case 'other-headspace':
      return sentence('guidance:needs-headspace', { headspace: { value: table!.process.headspaceIn, unit: 'In' } })
    case 'jar-not-printed':
      return sentence('guidance:jar-not-printed')
  }
}

function publishedProcess(
  table: ProcessTable,
  query: ProcessQuery,
  timeAs: PrintedJar,
  pressure: FoundPressure,
  standing: Standing,
): PublishedProcess {
  const row = table.rows.find((candidate) => candidate.jar === timeAs)!
  const hearsay: HearsayMinutes[] = table.hearsay
    .filter((heard) => heard.jar === timeAs)
    .map(({ jar, processMin, source }) => ({
      jar,
      processMin,
      sourceKey: source,
      note: sentence('guidance:hearsay-minutes', {
        heard: { value: processMin, unit: 'Min' },
        printed: { value: row.processMin, unit: 'Min' },
      }),
    }))
  return {
    key: table.process.key,
    title: table.title,
    jar: query.jar,
    timeAs,
    processMin: row.processMin,
    headspaceIn: table.process.headspaceIn,
    pressure,
    standing,
    seen: table.seen,
    hearsay,
    tableId: table.id,
    sourceKeys: [...new Set([...tableSourceKeys(table), ...pressure.sourceKeys])],
    edition: GUIDANCE_EDITION,
  }
}
