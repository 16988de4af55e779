import * as v from 'valibot'
import { day, defineKind, id, maybe, minutes, name, note, quantity } from './kind.ts'

const entity = ({ alkaliLotId }: { alkaliLotId: string }): string => `alkali-lot:${alkaliLotId}`

export const alkaliLotRecorded = defineKind({
  kind: 'alkali-lot-recorded',
  version: 1,
  schema: v.strictObject({
    alkaliLotId: id(),
    name: name(),
    alkali: v.picklist([
      'ash',
      'calcium-hydroxide',
      'sodium-hydroxide',
      'potassium-hydroxide',
      'baking-soda',
      /** Baking soda baked until it lost 37 % of its weight. */
      'sodium-carbonate',
    ]),
    woods: maybe(name()),
    /** Stove, hearth or fire it came from. */
    stove: maybe(name()),
    /** What else went into that fire. */
    alsoBurnt: maybe(note()),
    container: maybe(name()),
    damp: maybe(v.boolean()),
    /** As the package says it: food grade, pickling grade. */
    grade: maybe(name()),
    burntClean: maybe(v.boolean()),
    cold: maybe(v.boolean()),
    sifted: maybe(v.boolean()),
    lidded: maybe(v.boolean()),
    /** No paint, plywood, treated or drift wood, coal or rubbish went into that fire. */
    onlyCleanWood: maybe(v.boolean()),
    gatheredOn: maybe(day()),
    note: maybe(note()),
  }),
  migrate: [],
  entity,
})

/** How a lot of ash or other alkali worked on a corn. */
export const alkaliLotJudged = defineKind({
  kind: 'alkali-lot-judged',
  version: 1,
  schema: v.strictObject({
    alkaliLotId: id(),
    judged: v.picklist(['works', 'weak', 'unknown']),
    cupsPerLiquidQt: maybe(quantity({ min: 0, max: 24, unit: 'cups a liquid qt' })),
    slipMin: maybe(minutes()),
    cornLotId: maybe(id()),
    batchId: maybe(id()),
    note: maybe(note()),
  }),
  migrate: [],
  entity,
})
