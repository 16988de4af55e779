/** Reads a data file through its schema, so that a broken row stops every door and not only a test. */
import * as v from 'valibot'

/**
 * Marked free of side effects, so that a bundle drops a table nobody asks for.
 *
 * @throws {Error} naming the file and the field when the data do not fit the schema.
 * @__NO_SIDE_EFFECTS__
 */
export function loadTable<Schema extends v.GenericSchema>(schema: Schema, data: unknown): v.InferOutput<Schema> {
  const result = v.safeParse(schema, data)
  if (result.success) return result.output
  const id = (data as { id?: unknown } | null)?.id ?? 'a data file'
  const issue = result.issues[0]
  throw new Error(`guidance table ${String(id)}: ${v.getDotPath(issue) ?? 'whole file'}: ${issue.message}`)
}

export function tableSourceKeys(table: { readonly source: string; readonly alsoSources: readonly string[] }): string[] {
  return [table.source, ...table.alsoSources]
}
