/**
 * Sheet: one screen. Props: title (the h1), drawing?, lead? (a line under the title), margin? (beside the title), children (Passages).
 * Passage: one row. Props: title? (an h2), margin? (MarginNotes: times and sources), id?, children.
 * MarginNote: small words in the stitched margin. Props: children.
 */
import { type ReactNode, useEffect, useId } from 'react'
import { Drawing, type DrawingName } from '../drawings/drawing.tsx'

/** A torn edge as uneven as paper is; the same on every sheet, so that nothing jumps. */
const TORN =
  'M0 16V7l9-2 13 3 8-4 15 2 11-3 7 4 16-2 12 4 9-5 17 2 8 3 14-4 10 2 13-3 9 4 16-1 11-3 12 5 9-4 15 2 10 2 13-5 8 3 17 1 9-4 14 3 11-2 9 4 16-3 12 1 8 4V16z'

export function Sheet({
  title,
  drawing,
  lead,
  margin,
  children,
}: {
  readonly title: string
  readonly drawing?: DrawingName
  readonly lead?: ReactNode
  readonly margin?: ReactNode
  readonly children?: ReactNode
}) {
  useEffect(() => {
    document.title = `${title} · Kettle & Crib`
  }, [title])
  return (
    <article className="sheet">
      <svg className="sheet-edge" viewBox="0 0 400 16" preserveAspectRatio="none" aria-hidden="true" focusable="false">
        <path d={TORN} />
      </svg>
      <Tack side="left" />
      <Tack side="right" />
      <div className="sheet-body">
        <Passage margin={margin}>
          <header>
            <div className="sheet-head">
              {drawing && <Drawing name={drawing} className="sheet-drawing" />}
              <h1>{title}</h1>
            </div>
            {lead && <p className="sheet-lead">{lead}</p>}
          </header>
        </Passage>
        {children}
      </div>
    </article>
  )
}

function Tack({ side }: { readonly side: 'left' | 'right' }) {
  return (
    <svg className={`sheet-tack sheet-tack-${side}`} viewBox="0 0 16 16" aria-hidden="true" focusable="false">
      <circle cx="8" cy="8" r="6" />
    </svg>
  )
}

export function Passage({
  title,
  margin,
  id,
  children,
}: {
  readonly title?: string
  readonly margin?: ReactNode
  readonly id?: string
  readonly children?: ReactNode
}) {
  const headingId = useId()
  return (
    <section className="passage" id={id} aria-labelledby={title ? headingId : undefined}>
      {margin && <div className="margin">{margin}</div>}
      <div className="passage-body">
        {title && <h2 id={headingId}>{title}</h2>}
        {children}
      </div>
    </section>
  )
}

export function MarginNote({ children }: { readonly children: ReactNode }) {
  return <div className="margin-note">{children}</div>
}
