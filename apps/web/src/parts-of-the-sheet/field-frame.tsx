/** What stands round a field that is typed into. */
import type { ReactNode } from 'react'
import { upperFirst } from '../upper-first.ts'
import { FieldError } from './field-error.tsx'

export interface Labelled {
  readonly label: string
  readonly hint?: ReactNode
  readonly error?: string | null
}

/** Label, hint, the field itself and what is wrong with it, in that order. */
export function Frame({
  id,
  label,
  hint,
  error,
  children,
}: Labelled & { readonly id: string; readonly children: ReactNode }) {
  return (
    <div className="field">
      <label htmlFor={id}>{upperFirst(label)}</label>
      {hint && (
        <p className="field-hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
      {children}
      <div id={`${id}-error`} aria-live="polite">
        {error && <FieldError>{error}</FieldError>}
      </div>
    </div>
  )
}

/** Ids of what a field is described by. */
export const describedBy = (id: string, hint: ReactNode) => `${hint ? `${id}-hint ` : ''}${id}-error`
