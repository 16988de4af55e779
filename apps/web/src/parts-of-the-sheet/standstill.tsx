/**
 * Empty: nothing here yet. Props: drawing, children (what it will hold), action? (a NextAction).
 * Loading: the book is being opened. Props: none.
 * ErrorState: something failed; nothing recorded is lost. Props: error, onRetry?.
 */
import type { ReactNode } from 'react'
import { Drawing, type DrawingName } from '../drawings/drawing.tsx'
import { useWords } from '../words.tsx'
import { SideAction } from './actions.tsx'
import { Passage, Sheet } from './sheet.tsx'

export function Empty({
  drawing,
  children,
  action,
}: {
  readonly drawing: DrawingName
  readonly children: ReactNode
  readonly action?: ReactNode
}) {
  return (
    <div className="standstill">
      <Drawing name={drawing} />
      <div>{children}</div>
      {action}
    </div>
  )
}

export function Loading() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:loading-title')}>
      <Passage>
        <p role="status">{say('shell:loading')}</p>
      </Passage>
    </Sheet>
  )
}

export function ErrorState({ error, onRetry }: { readonly error: unknown; readonly onRetry?: () => void }) {
  const { say } = useWords()
  const detail = error instanceof Error ? error.message : String(error)
  return (
    <Sheet title={say('shell:error-title')} drawing="hand">
      <Passage>
        <p role="alert">{say('shell:error')}</p>
        <p className="source-line">{detail}</p>
        {onRetry && <SideAction onClick={onRetry}>{say('shell:error-retry')}</SideAction>}
      </Passage>
    </Sheet>
  )
}
