import * as v from 'valibot'
import { TAILS_GO } from './corn-lot.ts'
import { count, defineKind, elevationM, id, json, maybe, name, quantity } from './kind.ts'

const entity = ({ kitchenId }: { kitchenId: string }): string => `kitchen:${kitchenId}`

export const kitchenOpened = defineKind({
  kind: 'kitchen-opened',
  version: 1,
  schema: v.strictObject({
    kitchenId: id(),
    name: name(),
    /** True for an invented kitchen; everything in it is shown as invented. */
    demo: v.boolean(),
  }),
  migrate: [],
  entity,
})

const hominyPerDryVolume = () => quantity({ min: 1, max: 6, unit: 'volumes of hominy to one of dry kernels' })

/** What a kitchen does by habit. Each entry tells only what changed; the latest word on each field stands. */
export const kitchenNoted = defineKind({
  kind: 'kitchen-noted',
  version: 1,
  schema: v.strictObject({
    kitchenId: id(),
    elevationM: maybe(elevationM()),
    elevationKnownBy: maybe(v.picklist(['map', 'phone', 'survey'])),
    nouns: maybe(
      v.strictObject({
        hull: maybe(name()),
        hulls: maybe(name()),
        jar: maybe(name()),
        jars: maybe(name()),
        corn: maybe(name()),
      }),
    ),
    jarFill: maybe(v.picklist(['loose-to-headspace', 'half', 'third'])),
    hominyPerDryVolume: maybe(
      v.strictObject({ low: hominyPerDryVolume(), middle: hominyPerDryVolume(), high: hominyPerDryVolume() }),
    ),
    shelledLbPerLiquidQt: maybe(quantity({ min: 1, max: 2, unit: 'lb a liquid qt' })),
    vagueQuart: maybe(v.picklist(['liquid', 'dry'])),
    measureFirst: maybe(v.picklist(['us', 'metric'])),
    theme: maybe(name()),
    washPattern: maybe(v.picklist(['printed', 'common-practice'])),
    stages: maybe(v.array(json())),
    /** The keeper's own line: tails above this share of a pot, and what then becomes of them. */
    rejectLine: maybe(
      v.strictObject({
        shareFraction: quantity({ min: 0.001, max: 0.5, unit: 'of the pot' }),
        above: v.picklist(TAILS_GO),
      }),
    ),
    helpersCount: maybe(count(1, 500, 'people')),
  }),
  migrate: [],
  entity,
})
