/**
 * Slip: one line laid over the page. Props: drawing, children, role? ('status' | 'alert').
 * InventedSlip: shown on every page of the demo kitchen. Props: none.
 */
import type { ReactNode } from 'react'
import { Drawing, type DrawingName } from '../drawings/drawing.tsx'
import { useWords } from '../words.tsx'

export function Slip({
  drawing,
  children,
  role = 'status',
}: {
  readonly drawing: DrawingName
  readonly children: ReactNode
  readonly role?: 'status' | 'alert'
}) {
  return (
    <div className="slip" role={role}>
      <Drawing name={drawing} />
      <div>{children}</div>
    </div>
  )
}

export function InventedSlip() {
  const { say } = useWords()
  return (
    <div className="slip">
      <Drawing name="flag" />
      <p>{say('common:invented')}</p>
    </div>
  )
}
