/** What a form calls the field at a path of the input: `test[0].truePsi` is "Bench test, Row 1, True pressure". */
import type { Field, Fields } from '@crib/science'
import type { Words } from '@crib/wording'

/** A part of the path that is no field is left as it is. */
export function fieldLabel(inputs: Fields, path: string, words: Words): string {
  const labels: string[] = []
  let fields: Fields | undefined = inputs
  for (const [part] of path.matchAll(/[^.[\]]+/g)) {
    const field: Field | undefined = fields?.[part]
    if (field) labels.push(field.label)
    else labels.push(/^\d+$/.test(part) ? words.say('workbench:row', { row: Number(part) + 1 }) : part)
    if (field) fields = field.kind === 'table' ? field.columns : field.kind === 'record' ? field.fields : undefined
  }
  return labels.join(', ')
}
