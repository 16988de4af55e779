/**
 * NextAction: the handle, the one next thing to do on a sheet. Props: children, and onClick (a button), href (a link inside the
 *   book) or neither (submits its form); disabled?.
 * SideAction: any other thing one may do. Props: children, onClick or href, disabled?.
 * ButtonRow: lays SideActions in a row. Props: children.
 */
import type { ReactNode } from 'react'
import { Link } from 'wouter'

interface ActionProps {
  readonly children: ReactNode
  readonly onClick?: () => void
  readonly href?: string
  readonly disabled?: boolean
}

export function NextAction(props: ActionProps) {
  return <Action {...props} className="handle" />
}

export function SideAction(props: ActionProps) {
  return <Action {...props} className="plain-button" />
}

function Action({
  children,
  onClick,
  href,
  disabled = false,
  className,
}: ActionProps & { readonly className: string }) {
  if (href !== undefined) {
    return (
      // `~` makes the address absolute, whatever part it is used in.
      <Link className={className} href={`~${href}`}>
        <span>{children}</span>
      </Link>
    )
  }
  return (
    <button className={className} type={onClick ? 'button' : 'submit'} onClick={onClick} disabled={disabled}>
      <span>{children}</span>
    </button>
  )
}

export function ButtonRow({ children }: { readonly children: ReactNode }) {
  return <div className="row-of-buttons">{children}</div>
}
