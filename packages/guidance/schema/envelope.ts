/**
 * What every data file carries beside its rows: where it was printed, who copied it, and where it stands.
 * Leaves out: the rows themselves; each kind of table adds its own.
 */
import * as v from 'valibot'

export const GUIDANCE_EDITION = 'guidance-2026-11'

/** Whether we read the figure ourselves. */
export const seenSchema = v.picklist([
  'seen',
  'seen in part',
  'from memory, not re-read',
  'common practice, no source',
  'project rule',
])

const standingSchema = v.strictObject({
  /** For which food the test or direction was made. */
  madeFor: v.picklist(['this-food', 'lye-hominy', 'neighbouring-food', 'none']),
  /** Where it stands now. */
  now: v.picklist(['current', 'withdrawn', 'custom']),
})

const sentence = v.pipe(v.string(), v.minLength(3))
export const sourceKeySchema = v.pipe(v.string(), v.regex(/^[a-z0-9-]+$/))

export const envelopeEntries = {
  id: v.pipe(v.string(), v.regex(/^[a-z0-9-]+$/)),
  title: sentence,
  source: sourceKeySchema,
  alsoSources: v.array(sourceKeySchema),
  locator: sentence,
  edition: v.literal(GUIDANCE_EDITION),
  /** ISO date; null when the day was not written down. */
  retrievedOn: v.nullable(v.pipe(v.string(), v.isoDate())),
  licence: sentence,
  transcribedBy: sentence,
  /** Null when nobody has compared the copy with the page a second time. */
  checkedBy: v.nullable(sentence),
  checkedAgainst: v.nullable(sentence),
  supersedes: v.nullable(v.string()),
  units: v.record(v.string(), v.string()),
  standing: standingSchema,
  seen: seenSchema,
  notes: v.array(sentence),
} as const

export type Standing = v.InferOutput<typeof standingSchema>
export type Seen = v.InferOutput<typeof seenSchema>
