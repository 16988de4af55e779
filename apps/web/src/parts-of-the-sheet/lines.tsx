/**
 * Reasons: why, one line each. Props: sentences (Sentence[]), title?.
 * Caution: one line where the hand is about to act, with a drawn hand and the word "Care". Props: children or sentence.
 * Refusal: what cannot be answered, and whom to ask. Props: title, why (Sentence[]), askWhom? (Sentence[]),
 *   value?, limit?, source? (words for "You gave / Covered / Source").
 * Departures and other plain lists: use Reasons.
 */
import type { Sentence } from '@crib/science'
import type { ReactNode } from 'react'
import { Drawing } from '../drawings/drawing.tsx'
import { Say, useWords } from '../words.tsx'

export function Reasons({ sentences, title }: { readonly sentences: readonly Sentence[]; readonly title?: string }) {
  if (sentences.length === 0) return null
  return (
    <div>
      {title && <p className="line-title">{title}</p>}
      <ul className="reasons">
        {sentences.map((sentence) => (
          <li key={`${sentence.key}${JSON.stringify(sentence.params ?? {})}`}>
            <Say sentence={sentence} />
          </li>
        ))}
      </ul>
    </div>
  )
}

export function Caution({ children, sentence }: { readonly children?: ReactNode; readonly sentence?: Sentence }) {
  const { say } = useWords()
  return (
    <p className="care">
      <Drawing name="hand" />
      <span>
        <strong>{say('shell:care')}:</strong> {sentence ? <Say sentence={sentence} /> : children}
      </span>
    </p>
  )
}

export function Refusal({
  title,
  why,
  askWhom = [],
  value,
  limit,
  source,
}: {
  readonly title: string
  readonly why: readonly Sentence[]
  readonly askWhom?: readonly Sentence[]
  readonly value?: string
  readonly limit?: string
  readonly source?: string
}) {
  const { say } = useWords()
  const facts = [
    [say('shell:refusal-value'), value],
    [say('shell:refusal-limit'), limit],
    [say('shell:refusal-source'), source],
  ].filter((pair): pair is [string, string] => pair[1] !== undefined)
  return (
    <section className="refusal" role="status" aria-label={title}>
      <p className="line-title">{title}</p>
      <Reasons sentences={why} />
      {facts.length > 0 && (
        <dl className="facts">
          {facts.map(([name, text]) => (
            <div key={name} style={{ display: 'contents' }}>
              <dt>{name}</dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
      )}
      <Reasons sentences={askWhom} title={say('shell:ask-whom')} />
    </section>
  )
}
