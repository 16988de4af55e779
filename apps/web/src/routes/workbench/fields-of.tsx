/** The fields of a schema, each by its kind. */
import type { Field, Fields } from '@crib/science'
import { ChosenField } from './chosen-field.tsx'
import { Faults, fieldId } from './form-of.tsx'
import { SeriesField, TableField } from './rows-field.tsx'
import type { Path } from './typed.ts'
import { WrittenField } from './written-field.tsx'

export function FieldsOf({ fields, path = [] }: { readonly fields: Fields; readonly path?: Path }) {
  return (
    <div className="bench-cells">
      {Object.entries(fields).map(([name, field]) => (
        <OneField key={name} field={field} path={[...path, name]} />
      ))}
    </div>
  )
}

function OneField({ field, path }: { readonly field: Field; readonly path: Path }) {
  switch (field.kind) {
    case 'quantity':
    case 'count':
    case 'clock':
    case 'text':
      return <WrittenField field={field} path={path} />
    case 'choice':
    case 'flag':
      return <ChosenField field={field} path={path} />
    case 'series':
      return <SeriesField field={field} path={path} />
    case 'table':
      return (
        <TableField field={field} path={path} row={(rowPath) => <FieldsOf fields={field.columns} path={rowPath} />} />
      )
    case 'record':
      return (
        <fieldset className="bench-group" id={fieldId(path)} tabIndex={-1}>
          <legend>{field.label}</legend>
          <Faults path={path} />
          <FieldsOf fields={field.fields} path={path} />
        </fieldset>
      )
  }
}
