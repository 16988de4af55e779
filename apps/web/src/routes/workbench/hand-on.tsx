/** The link that carries the inputs: whoever opens it gets the same numbers. Nothing is sent anywhere. */
import { useState } from 'react'
import { ButtonRow, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export function HandOn({ hash }: { readonly hash: string }) {
  const { say } = useWords()
  const [copied, setCopied] = useState<string | null>(null)
  const link = `${location.origin}${location.pathname}${hash}`
  const canCopy = 'clipboard' in navigator
  return (
    <>
      <p>{say('workbench:hand-on-lead')}</p>
      <div className="field" style={{ maxWidth: 'none' }}>
        <label htmlFor="bench-link">{say('workbench:link')}</label>
        <input
          id="bench-link"
          className="written bench-link"
          readOnly
          value={link}
          onFocus={(event) => event.currentTarget.select()}
        />
      </div>
      {canCopy && (
        <ButtonRow>
          <SideAction
            onClick={() => {
              navigator.clipboard.writeText(link).then(
                () => setCopied(link),
                () => setCopied(null),
              )
            }}
          >
            {say('workbench:copy-link')}
          </SideAction>
        </ButtonRow>
      )}
      <p role="status">{copied === link ? say('workbench:copied') : ''}</p>
    </>
  )
}
