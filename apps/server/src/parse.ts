import { createWords } from '@crib/wording'
import { HTTPException } from 'hono/http-exception'
import * as v from 'valibot'

/** What was sent, in the shape asked for; anything else is a 400 that names the fields. */
export function parse<Schema extends v.GenericSchema>(schema: Schema, given: unknown): v.InferOutput<Schema> {
  const read = v.safeParse(schema, given)
  if (read.success) return read.output
  const faults = v.flatten(read.issues)
  throw new HTTPException(400, {
    message: createWords().say('common:bad-request', { faults: JSON.stringify(faults.nested ?? faults.root ?? []) }),
  })
}
