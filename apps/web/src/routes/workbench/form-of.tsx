/** What every field of the bench form needs: the inputs as typed, how to change one, and what was found wrong with it. */
import type { Json } from '@crib/science'
import { createContext, useContext } from 'react'
import { FieldError } from '../../parts-of-the-sheet/index.ts'
import { type Path, pathText, type Typed } from './typed.ts'

export interface FormOf {
  readonly typed: Typed
  set(path: Path, value: Json | undefined): void
  /** What the catalogue said of this field when last asked; nothing once the field has been changed. */
  faultsAt(path: Path): readonly string[]
}

export const FormContext = createContext<FormOf | null>(null)

export function useForm(): FormOf {
  const form = useContext(FormContext)
  if (!form) throw new Error('a bench field stands outside its form')
  return form
}

/** The element that a fault leads to. */
export function fieldId(path: Path | string): string {
  return `in-${typeof path === 'string' ? path : pathText(path)}`
}

export function Faults({ path }: { readonly path: Path }) {
  const faults = useForm().faultsAt(path)
  return (
    <div id={`${fieldId(path)}-faults`}>
      {faults.map((fault) => (
        <FieldError key={fault}>{fault}</FieldError>
      ))}
    </div>
  )
}
