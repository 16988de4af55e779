/** Form: fields with one handle at the end. Props: action (words on the handle), onSubmit, disabled?, children. */
import type { ReactNode } from 'react'
import { NextAction } from '../parts-of-the-sheet/actions.tsx'

export function Form({
  action,
  onSubmit,
  disabled = false,
  children,
}: {
  readonly action: string
  readonly onSubmit: () => void
  readonly disabled?: boolean
  readonly children: ReactNode
}) {
  return (
    <form
      className="passage-body"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        onSubmit()
      }}
    >
      {children}
      <NextAction disabled={disabled}>{action}</NextAction>
    </form>
  )
}
