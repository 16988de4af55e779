/** Shapes of the tables a process lookup reads: pressure bands, minutes at pressure, jar sizes. */
import * as v from 'valibot'
import { envelopeEntries, seenSchema, sourceKeySchema } from './envelope.ts'

const PSI_LIMIT = 15

function rising(numbers: readonly number[]): boolean {
  return numbers.every((number, index) => index === 0 || number > numbers[index - 1]!)
}

export const pressureBandsSchema = v.pipe(
  v.strictObject({
    ...envelopeEntries,
    tableMinFt: v.number(),
    tableMaxFt: v.number(),
    rows: v.pipe(
      v.array(
        v.strictObject({
          printed: v.string(),
          upToFt: v.number(),
          setPsi: v.pipe(v.number(), v.minValue(10), v.maxValue(PSI_LIMIT)),
        }),
      ),
      v.minLength(2),
      v.check((rows) => rising(rows.map((row) => row.upToFt)), 'bands must rise'),
      v.check((rows) => rising(rows.map((row) => row.setPsi)), 'a higher band never asks for less pressure'),
    ),
  }),
  v.check((table) => table.rows.at(-1)!.upToFt === table.tableMaxFt, 'the last band must end where the table ends'),
)

export const jarKeySchema = v.picklist([
  'half-pint',
  'twelve-ounce',
  'pint',
  'twenty-four-ounce',
  'twenty-eight-ounce',
  'quart',
  'half-gallon',
])
export type JarKey = v.InferOutput<typeof jarKeySchema>

export const printedJarSchema = v.picklist(['pint', 'quart'])
export type PrintedJar = v.InferOutput<typeof printedJarSchema>

const processKeySchema = v.picklist(['lye-hominy-hot-pack', 'soda-hominy-hot-pack', 'whole-kernel-corn'])
export type ProcessKey = v.InferOutput<typeof processKeySchema>

export const alkaliSchema = v.picklist(['ash', 'calcium-hydroxide', 'sodium-hydroxide', 'baking-soda', 'none'])
export type AlkaliKey = v.InferOutput<typeof alkaliSchema>

export const foodSchema = v.picklist(['hominy', 'whole-kernel-corn'])
export type FoodKey = v.InferOutput<typeof foodSchema>

const minutesSchema = v.pipe(v.number(), v.integer(), v.minValue(20), v.maxValue(180))

export const processTableSchema = v.strictObject({
  ...envelopeEntries,
  process: v.strictObject({
    key: processKeySchema,
    food: foodSchema,
    alkali: alkaliSchema,
    pack: v.picklist(['hot', 'hot or raw']),
    fill: v.literal('loose'),
    headspaceIn: v.pipe(v.number(), v.minValue(0.25), v.maxValue(2)),
    reheatMin: v.number(),
    reheatMaxMin: v.number(),
  }),
  rows: v.pipe(
    v.array(v.strictObject({ jar: printedJarSchema, processMin: minutesSchema })),
    v.check((rows) => new Set(rows.map((row) => row.jar)).size === rows.length, 'one row per jar'),
    v.check((rows) => rising(rows.map((row) => row.processMin)), 'a larger jar takes longer'),
  ),
  hearsay: v.array(
    v.strictObject({ jar: printedJarSchema, processMin: minutesSchema, source: sourceKeySchema, seen: seenSchema }),
  ),
})

export const jarSizesSchema = v.strictObject({
  ...envelopeEntries,
  rows: v.pipe(
    v.array(
      v.strictObject({
        jar: jarKeySchema,
        volumeOz: v.pipe(v.number(), v.minValue(4), v.maxValue(128)),
        timeAs: v.nullable(printedJarSchema),
      }),
    ),
    v.check((rows) => rising(rows.map((row) => row.volumeOz)), 'sizes must rise'),
  ),
})

export type PressureBands = v.InferOutput<typeof pressureBandsSchema>
export type ProcessTable = v.InferOutput<typeof processTableSchema>
