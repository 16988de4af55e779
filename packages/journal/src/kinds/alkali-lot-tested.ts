/** How strong a lot of ash or other alkali was found, and how it was tried. What it comes to is worked out, never stored. */
import * as v from 'valibot'
import { count, defineKind, id, maybe, minutes, note, quantity } from './kind.ts'

const ml = (min: number) => quantity({ min, max: 1000, unit: 'mL' })
/** What was steeped in how much water, so that a liquor's strength becomes the lot's. */
const steep = {
  steepedG: maybe(quantity({ min: 1, max: 100_000, unit: 'g' })),
  steepWaterL: maybe(quantity({ min: 0.01, max: 1000, unit: 'L' })),
}

const found = v.variant('way', [
  /** Both volumes are told from the first drop. */
  v.strictObject({
    way: v.literal('vinegar'),
    sampleMl: ml(0.5),
    coldMl: ml(0),
    boiledMl: ml(0),
    acidityGPer100Ml: quantity({ min: 1, max: 12, unit: 'g/100 mL' }),
    vinegarWaterParts: maybe(quantity({ min: 0, max: 50, unit: 'parts' })),
    liquorWaterParts: maybe(quantity({ min: 0, max: 1000, unit: 'parts' })),
    syringeStepMl: maybe(quantity({ min: 0.001, max: 10, unit: 'mL' })),
    ...steep,
  }),
  v.strictObject({
    way: v.literal('strip'),
    stripPH: quantity({ min: 0, max: 14, unit: 'pH' }),
    liquorC: quantity({ min: 0, max: 100, unit: '°C' }),
    ...steep,
  }),
  v.strictObject({
    way: v.literal('trial-cup'),
    lotG: maybe(quantity({ min: 0, max: 10_000, unit: 'g' })),
    cups: maybe(quantity({ min: 0, max: 24, unit: 'cups' })),
    slippedCount: count(0, 1000, 'kernels'),
    ofCount: count(1, 1000, 'kernels'),
    boiledMin: minutes(),
  }),
])

export const alkaliLotTested = defineKind({
  kind: 'alkali-lot-tested',
  version: 1,
  // A boiled reading below the cold one is asked about (propose.ts) and, once written, read: it was so.
  schema: v.strictObject({
    alkaliLotId: id(),
    found,
    /** A level cup of the lot. */
    gPerCup: maybe(quantity({ min: 10, max: 500, unit: 'g' })),
    note: maybe(note()),
  }),
  migrate: [],
  entity: ({ alkaliLotId }) => `alkali-lot:${alkaliLotId}`,
})
