/** Shapes of the tables that list choices rather than figures: unsealed jars, cooling, keeping, habits, cautions, doses. */
import { UNITS, type Unit } from '@crib/science'
import * as v from 'valibot'
import { envelopeEntries, seenSchema, sourceKeySchema } from './envelope.ts'
import { alkaliSchema, printedJarSchema } from './process-tables.ts'

const UNIT_NAMES = Object.keys(UNITS) as Unit[]
const messageSlug = v.pipe(v.string(), v.regex(/^[a-z0-9-]+$/))
const nullableSource = v.nullable(sourceKeySchema)

export const neighbourProcessesSchema = v.strictObject({
  ...envelopeEntries,
  rows: v.array(v.strictObject({ food: v.string(), jar: printedJarSchema, processMin: v.number() })),
})

const unsealedChoiceSchema = v.picklist(['refrigerate', 'freeze', 'full-process-again'])
export type UnsealedChoiceKey = v.InferOutput<typeof unsealedChoiceSchema>

export const unsealedJarsSchema = v.strictObject({
  ...envelopeEntries,
  rows: v.array(
    v.strictObject({
      method: v.picklist(['right', 'wrong']),
      choice: unsealedChoiceSchema,
      withinH: v.pipe(v.number(), v.minValue(1), v.maxValue(24)),
    }),
  ),
})

export const coolingWindowSchema = v.strictObject({
  ...envelopeEntries,
  rows: v.pipe(
    v.array(
      v.pipe(
        v.strictObject({ step: v.string(), fromF: v.number(), toF: v.number(), withinH: v.number() }),
        v.check((row) => row.fromF > row.toF, 'cooling goes down'),
      ),
    ),
    v.length(2),
  ),
})

const keepingFormSchema = v.picklist(['fresh', 'frozen', 'dried', 'canned'])
export type KeepingForm = v.InferOutput<typeof keepingFormSchema>

export const keepingSchema = v.strictObject({
  ...envelopeEntries,
  rows: v.array(
    v.strictObject({
      form: keepingFormSchema,
      low: v.nullable(v.number()),
      high: v.nullable(v.number()),
      unit: v.nullable(v.picklist(['Days', 'Months'])),
      holdF: v.nullable(v.number()),
      source: sourceKeySchema,
      seen: seenSchema,
      printed: v.string(),
    }),
  ),
})

const habitTopicSchema = v.picklist(['vent', 'canner-water', 'dial-near-sea-level', 'jars', 'rim', 'lid-wait'])
export type HabitTopic = v.InferOutput<typeof habitTopicSchema>

export const habitsSchema = v.strictObject({
  ...envelopeEntries,
  rows: v.array(
    v.strictObject({
      topic: habitTopicSchema,
      message: messageSlug,
      habit: v.nullable(v.number()),
      today: v.nullable(v.number()),
      unit: v.nullable(v.picklist(UNIT_NAMES)),
      habitSource: nullableSource,
      todaySource: sourceKeySchema,
      seen: seenSchema,
    }),
  ),
})

export const momentSchema = v.picklist([
  'ash',
  'alkali',
  'sodium-hydroxide',
  'first-rub',
  'pot',
  'foam',
  'wash-water',
  'sort',
  'pack',
  'load',
  'vent',
  'pressure',
  'cool',
  'lid',
  'seals',
  'store',
  'tasting',
  'seed',
  'standing',
])
export type Moment = v.InferOutput<typeof momentSchema>

export const cautionsSchema = v.strictObject({
  ...envelopeEntries,
  rows: v.pipe(
    v.array(v.strictObject({ moment: momentSchema, message: messageSlug, source: nullableSource, seen: seenSchema })),
    v.check(
      (rows) => momentSchema.options.every((moment) => rows.some((row) => row.moment === moment)),
      'every moment',
    ),
  ),
})

export const nourishmentSchema = v.strictObject({
  ...envelopeEntries,
  rows: v.pipe(
    v.array(v.strictObject({ message: messageSlug, source: nullableSource, seen: seenSchema })),
    v.minLength(1),
  ),
})

export const suspectJarsSchema = v.strictObject({
  ...envelopeEntries,
  rows: v.pipe(
    v.array(
      v.strictObject({
        state: v.picklist(['sealed', 'open']),
        message: messageSlug,
        source: sourceKeySchema,
        seen: seenSchema,
      }),
    ),
    v.check((rows) => ['sealed', 'open'].every((state) => rows.some((row) => row.state === state)), 'both states'),
  ),
})

const amount = v.nullable(v.pipe(v.number(), v.gtValue(0)))
const amountUnit = v.nullable(v.picklist(UNIT_NAMES))

export const alkaliRecipesSchema = v.strictObject({
  ...envelopeEntries,
  printedAsh: v.strictObject({ lowPartsPer10Corn: v.number(), highPartsPer10Corn: v.number(), seen: seenSchema }),
  printedCalciumHydroxideFraction: v.strictObject({ value: v.number(), source: sourceKeySchema, seen: seenSchema }),
  rows: v.array(
    v.strictObject({
      id: v.string(),
      name: v.string(),
      alkali: alkaliSchema,
      corn: v.pipe(v.number(), v.gtValue(0)),
      cornUnit: v.picklist(UNIT_NAMES),
      alkaliAmount: v.pipe(v.number(), v.gtValue(0)),
      alkaliUnit: v.picklist(UNIT_NAMES),
      water: amount,
      waterUnit: amountUnit,
      time: v.string(),
      makes: amount,
      makesUnit: amountUnit,
      source: sourceKeySchema,
      seen: seenSchema,
    }),
  ),
})
