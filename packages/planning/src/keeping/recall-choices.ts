/** What a recall of this book may begin from, by the names people know, so that nothing must be typed. */
import type { Facts } from '@crib/journal'
import type { RecallOrigin } from './recall.ts'

export interface RecallChoice {
  readonly origin: RecallOrigin
  /** Name or code, as it is written on the thing itself. */
  readonly name: string
}

/** In the order of the alphabet within each sort; the latest load first. A gauge goes back to the day asked for, if any. */
export function recallChoices(
  {
    canners,
    runs,
    batches,
    alkaliLots,
    cornLots,
    foodLots,
  }: Pick<Facts, 'canners' | 'runs' | 'batches' | 'alkaliLots' | 'cornLots' | 'foodLots'>,
  by: RecallOrigin['by'],
): readonly RecallChoice[] {
  const named = <T>(all: { readonly [id: string]: T }, choice: (each: T) => RecallChoice | readonly RecallChoice[]) =>
    Object.values(all)
      .flatMap(choice)
      .sort((a, b) => (a.name < b.name ? -1 : +(a.name > b.name)))
  switch (by) {
    case 'load': {
      const codes = [
        ...Object.values(runs).map(({ begun }) => ({ code: begun.loadCode, at: begun.at.instant })),
        ...Object.values(foodLots).map(({ loadCode, at }) => ({ code: loadCode, at: at.instant })),
      ].sort((a, b) => (a.at > b.at ? -1 : +(a.at < b.at)))
      return [...new Set(codes.map(({ code }) => code))].map((loadCode) => ({
        origin: { by, loadCode },
        name: loadCode,
      }))
    }
    case 'canner':
      return named(canners, ({ cannerId, name }) => ({ origin: { by, cannerId }, name }))
    case 'gauge':
      return named(canners, ({ cannerId, name, gauges }) =>
        gauges.map((gauge) => ({ origin: { by, cannerId, gauge }, name })),
      )
    case 'batch':
      return named(batches, ({ batchId, plan }) => ({ origin: { by, batchId }, name: plan.title }))
    case 'alkali-lot':
      return named(alkaliLots, ({ alkaliLotId, name }) => ({ origin: { by, alkaliLotId }, name }))
    case 'corn-lot':
      return named(cornLots, ({ lotId, name }) => ({ origin: { by, lotId }, name }))
  }
}
