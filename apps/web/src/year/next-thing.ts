/** The one next thing to do, from what the book says. */
import type { Facts, RunFact } from '@crib/journal'
import type { MessageKey } from '@crib/wording'

export interface NextThing {
  readonly say: MessageKey
  readonly why: MessageKey
  readonly href: string
}

const RUN_ENDS = new Set(['seal-seen', 'abandoned'])

export function nextThing(facts: Facts): NextThing {
  const has = (records: { readonly [id: string]: unknown }) => Object.keys(records).length > 0
  if (Object.values(facts.runs).some(isGoingOn)) {
    return { say: 'shell:next-run', why: 'shell:next-run-why', href: '/canner' }
  }
  if (!has(facts.cornLots)) return { say: 'shell:bring-in', why: 'shell:year-empty', href: '/crib' }
  if (!has(facts.seed)) return { say: 'shell:next-seed', why: 'shell:next-seed-why', href: '/plan' }
  if (Object.values(facts.batches).some((batch) => batch.begun && !isPutUp(facts, batch.batchId))) {
    return { say: 'shell:next-kettle', why: 'shell:next-kettle-why', href: '/kettle' }
  }
  return { say: 'shell:next-plan', why: 'shell:next-plan-why', href: '/plan' }
}

function isGoingOn({ events }: RunFact): boolean {
  return !events.some(({ event }) => RUN_ENDS.has(event.type))
}

function isPutUp({ foodLots }: Facts, batchId: string): boolean {
  return Object.values(foodLots).some((lot) => lot.batchId === batchId)
}
