/**
 * A rule table: what each source prints on one topic, and which of those figures is used.
 * The used figure must be one of the printed ones, so that a rule cannot drift away from its page.
 */
import { UNITS, type Unit } from '@crib/science'
import * as v from 'valibot'
import { envelopeEntries, seenSchema, sourceKeySchema } from './envelope.ts'

const UNIT_NAMES = Object.keys(UNITS) as Unit[]

const figureEntries = {
  value: v.pipe(v.number(), v.minValue(0)),
  /** Upper end, where a range is printed. */
  high: v.optional(v.number()),
  unit: v.picklist(UNIT_NAMES),
  /** Which case the figure is for, where a topic has several. */
  appliesTo: v.optional(v.string()),
} as const

const ruleSchema = v.strictObject({ topic: v.string(), ...figureEntries })
const printedFigureSchema = v.pipe(
  v.strictObject({
    printed: v.pipe(v.string(), v.minLength(3)),
    ...figureEntries,
    source: v.nullable(sourceKeySchema),
    seen: seenSchema,
  }),
  v.check(
    (row) => row.source !== null || row.seen === 'common practice, no source' || row.seen === 'project rule',
    'a figure without a source must say that it is common practice or a project rule',
  ),
)

type RuleFigure = v.InferOutput<typeof ruleSchema>
export type PrintedFigure = v.InferOutput<typeof printedFigureSchema>

export function isSameFigure(rule: RuleFigure, row: PrintedFigure): boolean {
  return (
    rule.value === row.value &&
    rule.high === row.high &&
    rule.unit === row.unit &&
    (rule.appliesTo === undefined || rule.appliesTo === row.appliesTo)
  )
}

export const ruleTableSchema = v.pipe(
  v.strictObject({
    ...envelopeEntries,
    rules: v.pipe(v.array(ruleSchema), v.minLength(1)),
    rows: v.pipe(v.array(printedFigureSchema), v.minLength(1)),
  }),
  v.check((table) => table.rules.every((rule) => rule.topic === table.id), 'a rule is named after its table'),
  v.check(
    (table) => table.rules.every((rule) => rule.high === undefined || rule.high > rule.value),
    'a range must rise',
  ),
  v.check(
    (table) => table.rules.every((rule) => table.rows.some((row) => isSameFigure(rule, row))),
    'the figure used must be one of the printed rows',
  ),
)
export type RuleTable = v.InferOutput<typeof ruleTableSchema>
