/** Where each calculation lies on the bench: under the part of the work it answers for. */
import type { Calc } from '@crib/science'
import type { MessageKey } from '@crib/wording'

interface Shelf {
  readonly title: MessageKey
  readonly ids: readonly string[]
}

const SHELVES: readonly Shelf[] = [
  {
    title: 'shell:part-seed',
    ids: [
      ...['seed-line', 'seed-reserve', 'germination-interval', 'germination-sample-size', 'replicate-tolerance'],
      ...['two-tests', 'sequential-test'],
      ...['seed-life', 'seed-what-if', 'effective-size', 'allele-loss', 'off-type-trend'],
    ],
  },
  { title: 'shell:part-crib', ids: ['kernel-measure', 'ear-corn', 'moisture-shrink'] },
  { title: 'shell:part-kettle', ids: ['batch-plan', 'weak-ash', 'cooked-yield'] },
  { title: 'workbench:shelf-day', ids: ['day-timeline', 'village-day'] },
  {
    title: 'shell:part-canner',
    ids: [
      ...['canner-card', 'gauge-aim', 'canner-run', 'canner-loads'],
      ...['process-lookup', 'pressure-band', 'gauge-correction'],
    ],
  },
  {
    title: 'workbench:shelf-why',
    ids: ['standard-atmosphere', 'steam-temperature', 'trapped-air', 'lethality'],
  },
  { title: 'shell:part-pantry', ids: ['boil-before-tasting', 'unsealed-jars'] },
]

/** Every calculation once, in the order of the year; one that no shelf names lies on the last. */
export function onShelves(
  catalogue: readonly Calc[],
): readonly { readonly title: MessageKey; readonly calcs: readonly Calc[] }[] {
  const named = new Set(SHELVES.flatMap(({ ids }) => ids))
  return [
    ...SHELVES.map(({ title, ids }) => ({
      title,
      calcs: ids.flatMap((id) => catalogue.find((calc) => calc.id === id) ?? []),
    })),
    { title: 'workbench:shelf-more' as const, calcs: catalogue.filter(({ id }) => !named.has(id)) },
  ].filter(({ calcs }) => calcs.length > 0)
}
