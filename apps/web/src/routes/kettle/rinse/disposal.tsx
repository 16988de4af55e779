/** Disposal: what becomes of the spent liquor, and the vinegar that takes at most. Props: batch, potLoad. */
import type { BatchFact } from '@crib/journal'
import { potDisposal } from '@crib/planning'
import { useState } from 'react'
import { useBook } from '../../../book/book.tsx'
import { BigNumber, Caution, CountField, Reasons } from '../../../parts-of-the-sheet/index.ts'
import { useWords } from '../../../words.tsx'

export function Disposal({ batch, potLoad }: { readonly batch: BatchFact; readonly potLoad: number }) {
  const { facts } = useBook()
  const { say } = useWords()
  const [label, setLabel] = useState(5)
  const { vinegarL, reasons, warnings } = potDisposal(facts, batch, potLoad, label)
  return (
    <>
      {warnings.map((sentence) => (
        <Caution key={sentence.key} sentence={sentence} />
      ))}
      {vinegarL ? (
        <>
          <CountField label={say('kettle:test-label')} value={label} onValue={setLabel} min={1} max={12} />
          <BigNumber label={say('kettle:disposal-vinegar')} reckoned={vinegarL} size="small" />
        </>
      ) : (
        <p>{say('kettle:disposal-unmeasured')}</p>
      )}
      <Reasons sentences={reasons} />
    </>
  )
}
