/** FieldError: what is wrong with a field, in words, with a drawn hand. Props: children. */
import type { ReactNode } from 'react'
import { Drawing } from '../drawings/drawing.tsx'

export function FieldError({ children }: { readonly children: ReactNode }) {
  return (
    <span className="field-error">
      <Drawing name="hand" />
      <span>{children}</span>
    </span>
  )
}
