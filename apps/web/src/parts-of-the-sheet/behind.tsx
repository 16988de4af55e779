/**
 * Behind: one tap shows what stands behind a number: basis, sources, what went in, edition.
 * Props: reckoned, label (which number, for a screen reader).
 * BehindBody: the same without the tap, for a line that opens by itself. Props: reckoned.
 * SourceLine: a source by its key, in words. Props: sourceKey.
 */
import type { Reckoned } from '@crib/science'
import type { MessageKey } from '@crib/wording'
import { useEffect, useState } from 'react'
import { type Source, sourcesByKey } from '../sources.ts'
import { upperFirst } from '../upper-first.ts'
import { useWords } from '../words.tsx'
import { inputText } from './input-text.ts'

export function Behind({ reckoned, label }: { readonly reckoned: Reckoned; readonly label: string }) {
  const { say } = useWords()
  const [open, setOpen] = useState(false)
  return (
    <details className="behind" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        {say('shell:behind')}
        <span className="only-read-aloud">: {label}</span>
      </summary>
      {open && <BehindBody reckoned={reckoned} />}
    </details>
  )
}

export function BehindBody({ reckoned }: { readonly reckoned: Reckoned }) {
  const { say } = useWords()
  const inputs = Object.entries(reckoned.inputs)
  return (
    <div className="behind-body">
      <p>{say(`common:basis-${reckoned.basis}` satisfies MessageKey)}</p>
      {reckoned.sourceKeys.map((key) => (
        <SourceLine key={key} sourceKey={key} />
      ))}
      {inputs.length > 0 && (
        <dl className="facts">
          {inputs.map(([name, value]) => {
            const { words, text } = inputText(name, value)
            return (
              <div key={name} style={{ display: 'contents' }}>
                <dt>{words}</dt>
                <dd>{text}</dd>
              </div>
            )
          })}
        </dl>
      )}
      <p className="source-line">
        {say('shell:edition', { edition: reckoned.edition, codeVersion: reckoned.codeVersion })}
      </p>
    </div>
  )
}

export function SourceLine({ sourceKey }: { readonly sourceKey: string }) {
  const [source, setSource] = useState<Source | null>(null)
  const { say } = useWords()
  useEffect(() => {
    let stale = false
    sourcesByKey().then(
      (sources) => {
        if (!stale) setSource(sources[sourceKey] ?? null)
      },
      () => undefined, // the key below still names the source
    )
    return () => {
      stale = true
    }
  }, [sourceKey])
  if (!source) return <p className="source-line">{say('shell:source', { source: sourceKey })}</p>
  // That a work was read is taken for granted; only what is to be minded about it is said.
  const remark = source.note?.replace(/^seen(?:[,;]\s*|$)/, '')
  const text = [source.author, source.title, source.year].filter(Boolean).join(', ')
  return (
    <p className="source-line">
      {source.url ? <a href={source.url}>{text}</a> : text}
      {remark && `. ${upperFirst(remark)}`}
    </p>
  )
}
