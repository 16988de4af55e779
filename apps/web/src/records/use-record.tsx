/**
 * Writing a record from a form: `const record = useRecord(); await record.keep(kind, body)`.
 * keep: resolves true when the entry is on this device. Where the book has a question first (more used than held, two
 *   canners with one name), it resolves false and `<Asked record={record} />` shows the question; the person may say it was so.
 * A body outside its limits is never written: Asked shows which field, value, limit and source.
 */
import { type BodyOf, BodyRefused, checkBody, type Kind, propose, type Refusal, type WriteOptions } from '@crib/journal'
import { useState } from 'react'
import { useBook } from '../book/book.tsx'
import { Drawing } from '../drawings/drawing.tsx'
import { SideAction } from '../parts-of-the-sheet/actions.tsx'
import { FieldError } from '../parts-of-the-sheet/field-error.tsx'
import { useWords } from '../words.tsx'
import { askedSentence } from './asked-sentence.ts'

export interface Record {
  readonly refusals: readonly Refusal[]
  /** Entries kept by this form since it was opened. */
  readonly keptCount: number
  /** Set while a question may be answered with "it was so". */
  readonly sayItWasSo: (() => Promise<boolean>) | null
  keep<K extends Kind>(kind: K, body: BodyOf<K>, options?: WriteOptions): Promise<boolean>
}

export function useRecord(): Record {
  const { facts, write } = useBook()
  const [refusals, setRefusals] = useState<readonly Refusal[]>([])
  const [keptCount, setKeptCount] = useState(0)
  const [sayItWasSo, setSayItWasSo] = useState<(() => Promise<boolean>) | null>(null)

  async function keepNow<K extends Kind>(kind: K, body: BodyOf<K>, options?: WriteOptions): Promise<boolean> {
    try {
      await write(kind, body, options)
    } catch (error) {
      if (!(error instanceof BodyRefused)) throw error
      setRefusals(error.refusals)
      setSayItWasSo(null)
      return false
    }
    setRefusals([])
    setSayItWasSo(null)
    setKeptCount((count) => count + 1)
    return true
  }

  async function keep<K extends Kind>(kind: K, body: BodyOf<K>, options?: WriteOptions): Promise<boolean> {
    const proposal = propose(facts, kind, body)
    if (proposal.ok) return keepNow(kind, body, options)
    setRefusals(proposal.refusals)
    // A function in state is called by React unless it is wrapped.
    setSayItWasSo(() => (checkBody(kind, body).ok ? () => keepNow(kind, body, options) : null))
    return false
  }

  return { refusals, keptCount, sayItWasSo, keep }
}

export function Asked({
  record,
  onKept,
}: {
  readonly record: Pick<Record, 'refusals' | 'keptCount' | 'sayItWasSo'>
  readonly onKept?: () => void
}) {
  const words = useWords()
  const { say, sentence } = words
  const { refusals, keptCount, sayItWasSo } = record
  return (
    <div aria-live="polite" className="passage-body">
      {keptCount > 0 && refusals.length === 0 && (
        <p key={keptCount} className="kept">
          <Drawing name="tick" />
          {say('shell:kept')}
        </p>
      )}
      {refusals.map((refusal) => (
        <FieldError key={`${refusal.code}${JSON.stringify(refusal.params)}`}>
          {sentence(askedSentence(refusal, words))}
        </FieldError>
      ))}
      {sayItWasSo && (
        <SideAction
          onClick={async () => {
            if (await sayItWasSo()) onKept?.()
          }}
        >
          {say('shell:it-was-so')}
        </SideAction>
      )}
    </div>
  )
}
