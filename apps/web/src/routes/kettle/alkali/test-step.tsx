/**
 * TestStep: one step of a test done at the table, one open at a time; the others are a line with what was read.
 * Props: title, number, read? (words beside a done one), isOpen, isDone, onOpen, children.
 */
import { type ReactNode, useId } from 'react'
import { Drawing } from '../../../drawings/drawing.tsx'
import { MarginNote } from '../../../parts-of-the-sheet/index.ts'
import { useWords } from '../../../words.tsx'
import '../../../walk/walk.css'

export function TestStep({
  title,
  number,
  read,
  isOpen,
  isDone,
  onOpen,
  children,
}: {
  readonly title: string
  readonly number: number
  readonly read?: string | undefined
  readonly isOpen: boolean
  readonly isDone: boolean
  readonly onOpen: () => void
  readonly children: ReactNode
}) {
  const { say } = useWords()
  const id = useId()
  return (
    <section className="passage step" data-open={isOpen || undefined} aria-labelledby={id}>
      <h2 id={id}>
        <button type="button" className="step-line" aria-expanded={isOpen} onClick={onOpen}>
          <Drawing name={isDone ? 'tick' : 'kernel'} />
          <span>{say('kettle:test-step', { number, title })}</span>
        </button>
      </h2>
      {read && (
        <div className="margin">
          <MarginNote>
            <strong>{read}</strong>
          </MarginNote>
        </div>
      )}
      {isOpen && <div className="passage-body">{children}</div>}
    </section>
  )
}
