/** What is told of corn and food that is kept: moisture, how it lies, what was found on opening, and a recall. */
import * as v from 'valibot'
import { count, day, defineKind, id, maybe, minutes, name, note, quantity, refuse } from './kind.ts'

const entity = ({ lotId }: { lotId: string }): string => `lot:${lotId}`
const temperatureC = () => quantity({ min: -40, max: 70, unit: '°C' })
const fraction = (min: number, max: number) => quantity({ min, max, unit: 'of 1' })

/** A moisture of a corn lot, always on the wet basis: water over total weight. */
export const moistureTested = defineKind({
  kind: 'moisture-tested',
  version: 1,
  schema: v.pipe(
    v.strictObject({
      lotId: id(),
      testedOn: day(),
      by: v.picklist(['oven', 'weight', 'closed-jar', 'salt-jar', 'meter']),
      /** Left out for a salt jar, which shows only whether salt clung. [fraction of total weight] */
      wetFraction: maybe(fraction(0.01, 0.95)),
      saltClung: maybe(v.boolean()),
      note: maybe(note()),
    }),
    refuse(
      ({ wetFraction, saltClung }) => wetFraction !== undefined || saltClung !== undefined,
      () => ({ code: 'amount-needed', params: { field: 'wetFraction' } }),
    ),
  ),
  migrate: [],
  entity,
})

/** How a corn lot lies from a day on. */
export const storeConditionNoted = defineKind({
  kind: 'store-condition-noted',
  version: 1,
  schema: v.strictObject({
    lotId: id(),
    notedOn: day(),
    /** Of the corn where it could be told, else of the place. */
    temperatureC: temperatureC(),
    humidityFraction: maybe(fraction(0.01, 1)),
    place: maybe(name()),
    note: maybe(note()),
  }),
  migrate: [],
  entity,
})

/** What was found when jars or packs were opened. They count as gone from the shelf. */
export const foodOpened = defineKind({
  kind: 'food-opened',
  version: 1,
  schema: v.strictObject({
    lotId: id(),
    count: count(1, 10_000, 'jars or packs'),
    found: v.picklist([
      'good',
      'unsealed',
      'leaking',
      'bulged',
      'spurted',
      'cloudy',
      'off-smell',
      'mould',
      'insects',
      'stale',
      'freezer-burnt',
    ]),
    note: maybe(note()),
  }),
  migrate: [],
  entity,
})

/** A recall, or a drill of one: from where, what it reached, who was told. */
export const recallNoted = defineKind({
  kind: 'recall-noted',
  version: 1,
  schema: v.strictObject({
    recallId: id(),
    drill: v.boolean(),
    by: v.picklist(['load', 'canner', 'gauge', 'batch', 'alkali-lot', 'corn-lot']),
    /** Name or code of what is doubted, as it was then. */
    about: name(),
    why: maybe(note()),
    loadCodes: v.pipe(v.array(name()), v.maxLength(5000)),
    jarsCount: count(0, 1_000_000, 'jars or packs'),
    /** Households that were reached. */
    toldHouseholds: maybe(v.array(name())),
    /** From the first word to the last jar. */
    tookMin: maybe(minutes()),
  }),
  migrate: [],
  entity: ({ recallId }) => `recall:${recallId}`,
})
