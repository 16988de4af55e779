import type { Facts } from '@crib/journal'

/** A book with nothing in it. */
export const EMPTY_FACTS: Facts = {
  kitchen: null,
  cornLots: {},
  seed: {},
  alkaliLots: {},
  pots: {},
  canners: {},
  standings: {},
  batches: {},
  runs: {},
  foodLots: {},
  entryCount: 0,
  questions: [],
  unread: [],
  ledger: { byEntity: {}, entityOf: {}, questionsOf: {} },
}
