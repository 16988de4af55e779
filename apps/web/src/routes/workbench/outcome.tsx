/** What came out, as every door words it: numbers with what stands behind them, an honest "no number", or what to look at again. */
import type { Reckoning, WordedValue } from '@crib/catalogue'
import type { MessageKey } from '@crib/wording'
import { useState } from 'react'
import { BehindBody, Caution, Reasons, Refusal, SourceLine } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { fieldId } from './form-of.tsx'

export function Outcome({ reckoning }: { readonly reckoning: Reckoning }) {
  const { say } = useWords()
  switch (reckoning.kind) {
    case 'reckoned':
      return (
        <>
          {reckoning.warnings.map((warning) => (
            <Caution key={warning.text}>{warning.text}</Caution>
          ))}
          {reckoning.values.length > 0 && <p className="field-hint">{say('workbench:tap-behind')}</p>}
          <ul className="bench-values">
            {reckoning.values.map((value) => (
              <OneValue key={value.id} value={value} />
            ))}
          </ul>
          <Reasons sentences={once(reckoning.reasons)} title={say('workbench:reasons')} />
        </>
      )
    case 'refused':
      return <Refusal title={say('workbench:refused')} why={once(reckoning.why)} askWhom={once(reckoning.askWhom)} />
    case 'bad-input':
      return (
        <div className="passage-body" role="alert">
          <p>{say('workbench:bad-input')}</p>
          <ul className="reasons">
            {reckoning.faults.map(({ field, text }) => (
              <li key={`${field}${text}`}>
                <FaultLink field={field}>{text}</FaultLink>
              </li>
            ))}
          </ul>
        </div>
      )
    case 'unknown-calc':
      return <p role="alert">{reckoning.text}</p>
  }
}

/** A sentence that several rows gave is said once. */
function once<S extends { readonly text: string }>(sentences: readonly S[]): readonly S[] {
  return sentences.filter(({ text }, index) => sentences.findIndex((other) => other.text === text) === index)
}

function FaultLink({ field, children }: { readonly field: string; readonly children: string }) {
  return (
    <button
      type="button"
      className="word-button bench-fault"
      onClick={() => {
        const element = document.getElementById(fieldId(field))
        element?.closest('details')?.setAttribute('open', '')
        element?.focus()
      }}
    >
      {children}
    </button>
  )
}

function OneValue({ value }: { readonly value: WordedValue }) {
  const { say } = useWords()
  const [open, setOpen] = useState(false)
  return (
    <li>
      <details className="bench-value" onToggle={(event) => setOpen(event.currentTarget.open)}>
        <summary>
          <span className="bench-label">{value.label}: </span>
          <span className="bench-figure">{value.text} </span>
          <span className="bench-basis">{say(`common:basis-${value.basis}` satisfies MessageKey)}</span>
        </summary>
        {open && <BehindBody reckoned={value} />}
      </details>
    </li>
  )
}

/** The works cited, by what came out, or by the calculation when no number did; and the edition the numbers stand on. */
export function Sources({
  reckoning,
  cited,
}: {
  readonly reckoning: Reckoning | null
  readonly cited: readonly string[]
}) {
  const { say } = useWords()
  const values = reckoning?.kind === 'reckoned' ? reckoning.values : []
  const keys = values.length > 0 ? [...new Set(values.flatMap(({ sourceKeys }) => sourceKeys))] : cited
  const editions = new Map(
    values.map(({ edition, codeVersion }) => [`${edition} ${codeVersion}`, { edition, codeVersion }]),
  )
  return (
    <>
      {keys.map((key) => (
        <SourceLine key={key} sourceKey={key} />
      ))}
      {[...editions].map(([both, { edition, codeVersion }]) => (
        <p className="source-line" key={both}>
          {say('workbench:edition', { edition, version: codeVersion })}
        </p>
      ))}
    </>
  )
}

/** The very result, for whoever wants to work it out again. */
export function AsJson({ reckoning }: { readonly reckoning: Reckoning }) {
  const { say } = useWords()
  const [open, setOpen] = useState(false)
  return (
    <details className="behind" id="as-json" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{say('workbench:as-json')}</summary>
      {open && (
        // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reachable by keyboard
        <section className="ledger-wrap" tabIndex={0} aria-label={say('workbench:as-json')}>
          <pre className="bench-json">{JSON.stringify(reckoning, null, 2)}</pre>
        </section>
      )}
    </details>
  )
}
