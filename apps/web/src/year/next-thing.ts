/** The one next thing to do, from what the book says. */
import type { BatchFact, Facts, RunFact } from '@crib/journal'
import { seasonYearOf, seedOfSeason } from '@crib/planning/season'
import type { MessageKey } from '@crib/wording'
import { localDay } from '../local-day.ts'

export interface NextThing {
  readonly say: MessageKey
  readonly why: MessageKey
  readonly href: string
}

const RUN_ENDS = new Set(['seal-seen', 'abandoned'])

export function nextThing(facts: Facts, nowMs: number): NextThing {
  const has = (records: { readonly [id: string]: unknown }) => Object.keys(records).length > 0
  const runs = Object.values(facts.runs).filter(isGoingOn)
  if (runs.length > 0) {
    return {
      say: 'shell:next-run',
      why: 'shell:next-run-why',
      href: only('/canner', '/run', runs, ({ runId }) => runId),
    }
  }
  if (!has(facts.cornLots)) return { say: 'shell:bring-in', why: 'shell:year-empty', href: '/crib' }
  if (seedOfSeason(facts, seasonYearOf(facts, localDay(new Date(nowMs)))).length === 0)
    return { say: 'shell:next-seed', why: 'shell:next-seed-why', href: '/plan' }
  const batches = Object.values(facts.batches).filter((batch) => batch.begun && !isPutUp(facts, batch.batchId))
  if (batches.length > 0) {
    const href = only('/kettle', '', batches, ({ batchId }) => batchId)
    return { say: 'shell:next-kettle', why: 'shell:next-kettle-why', href }
  }
  const halfDone = Object.values(facts.batches).filter((batch) => hasPotLoadsLeft(batch, nowMs))
  if (halfDone.length > 0) {
    const href = only('/kettle', '', halfDone, ({ batchId }) => batchId)
    return { say: 'shell:next-kettle', why: 'shell:next-kettle-more-why', href }
  }
  return { say: 'shell:next-plan', why: 'shell:next-plan-why', href: '/plan' }
}

/** Straight to the one that is open; to the list where there are several to choose from. */
function only<T>(list: string, under: string, open: readonly T[], idOf: (one: T) => string): string {
  return open.length === 1 ? `${list}${under}/${idOf(open[0]!)}` : list
}

function isGoingOn({ events }: RunFact): boolean {
  return !events.some(({ event }) => RUN_ENDS.has(event.type))
}

/** Work of two days may rest overnight; after that nobody is reminded of it. */
const REMIND_FOR_MS = 2 * 86_400_000

/** Some of its planned pot-loads were worked on lately, and others not yet begun. */
function hasPotLoadsLeft({ plan, stages, cook }: BatchFact, nowMs: number): boolean {
  const noted = [...stages, ...cook]
  const shown = plan.shown as { readonly potLoads?: unknown } | null
  const plannedCount = typeof shown?.potLoads === 'number' ? shown.potLoads : 0
  const lastMs = Math.max(0, ...noted.map(({ at }) => Date.parse(at.instant)))
  return (
    new Set(noted.map(({ potLoad }) => potLoad)).size < plannedCount && nowMs - lastMs < REMIND_FOR_MS && lastMs > 0
  )
}

function isPutUp({ foodLots }: Facts, batchId: string): boolean {
  return Object.values(foodLots).some((lot) => lot.batchId === batchId)
}
