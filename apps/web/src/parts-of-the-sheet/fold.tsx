/** Fold: something opened further down a sheet by a tap, such as a form for one more pot. Props: title, open? (at first), children. */
import type { ReactNode } from 'react'

export function Fold({
  title,
  open = false,
  children,
}: {
  readonly title: string
  readonly open?: boolean
  readonly children: ReactNode
}) {
  return (
    <details className="fold" open={open}>
      <summary>{title}</summary>
      <div className="fold-body">{children}</div>
    </details>
  )
}
