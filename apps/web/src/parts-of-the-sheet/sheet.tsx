/**
 * Sheet: one screen. Props: title (the h1), drawing?, lead? (a line under the title), margin? (beside the title), children (Passages).
 * Passage: one row. Props: title? (an h2), margin? (MarginNotes: times and sources), id?, children.
 * MarginNote: small words in the stitched margin. Props: children.
 */
import { type ReactNode, useEffect, useId } from 'react'
import { Drawing, type DrawingName } from '../drawings/drawing.tsx'

/** A torn edge as uneven as paper is; the same on every sheet, so that nothing jumps. */
const TORN =
  'M0 16L0 3L9 4L26 1L34 7L49 1L61 5L68 5L78 1L86 4L99 1L109 1L124 4L131 7L147 1L157 6L174 5L181 5L197 4L204 2L211 5L220 3L233 2L248 1L264 3L279 7L296 2L304 5L320 6L330 3L338 5L346 5L353 5L363 4L380 5L393 7L400 4V16z'

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
        <header className="passage">
          <div className="sheet-head">
            {drawing && <Drawing name={drawing} className="sheet-drawing" />}
            <h1>{title}</h1>
          </div>
          {margin && <div className="margin">{margin}</div>}
          {lead && <p className="sheet-lead">{lead}</p>}
        </header>
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
      {title && <h2 id={headingId}>{title}</h2>}
      {margin && <div className="margin">{margin}</div>}
      <div className="passage-body">{children}</div>
    </section>
  )
}

export function MarginNote({ children }: { readonly children: ReactNode }) {
  return <div className="margin-note">{children}</div>
}
