/** Names people use for what has an id in the book: a lot by its name or load code, a run by its load code. */
import type { Facts } from '@crib/journal'
import type { ResolveName } from './read-body.ts'

interface Named {
  readonly id: string
  readonly names: readonly string[]
}

/** Latest first, so that a name used again means the newer thing. */
function namedThings(facts: Facts): { readonly [field: string]: readonly Named[] } {
  const { cornLots, foodLots, alkaliLots, pots, canners, batches, runs, plots, plantings } = facts
  const lots = [
    ...Object.entries(cornLots).map(([id, { name }]) => ({ id, names: [name] })),
    ...Object.entries(foodLots).map(([id, { loadCode }]) => ({ id, names: [loadCode] })),
  ]
  return {
    lotId: lots,
    cornLotId: lots,
    entityId: [...lots, ...Object.entries(batches).map(([id, { plan }]) => ({ id, names: [plan.title] }))],
    alkaliLotId: Object.entries(alkaliLots).map(([id, { name }]) => ({ id, names: [name] })),
    potId: Object.entries(pots).map(([id, { name }]) => ({ id, names: [name] })),
    cannerId: Object.entries(canners).map(([id, { name }]) => ({ id, names: [name] })),
    batchId: Object.entries(batches).map(([id, { plan }]) => ({ id, names: [plan.title] })),
    plotId: Object.entries(plots).map(([id, { name }]) => ({ id, names: [name] })),
    plantingId: Object.entries(plantings).map(([id, { cornName }]) => ({ id, names: [cornName] })),
    runId: Object.entries(runs).map(([id, { begun }]) => ({ id, names: [begun.loadCode] })),
  }
}

export function resolveNameIn(facts: Facts): ResolveName {
  const things = namedThings(facts)
  return (field, name) => {
    const wanted = name.trim().toLowerCase()
    return (
      things[field]?.toReversed().find(({ names }) => names.some((one) => one.trim().toLowerCase() === wanted))?.id ??
      null
    )
  }
}
