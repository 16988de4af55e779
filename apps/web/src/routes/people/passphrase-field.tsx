/** PassphraseField: label, value, onValue(text), fresh? (a new one: hint and length), error?. */
import { useId, useState } from 'react'
import { FieldError, FlagTag } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export const PASSPHRASE_LEAST = 12

export function PassphraseField({
  value,
  onValue,
  fresh = false,
  missing = false,
}: {
  readonly value: string
  readonly onValue: (text: string) => void
  readonly fresh?: boolean
  /** Something was tried without it. */
  readonly missing?: boolean
}) {
  const { say } = useWords()
  const id = useId()
  const [shown, setShown] = useState(false)
  const isShort = fresh && missing && value.length < PASSPHRASE_LEAST
  return (
    <div className="field">
      <label htmlFor={id}>{say(fresh ? 'shell:people-passphrase-new' : 'shell:people-passphrase')}</label>
      {fresh && (
        <p className="field-hint" id={`${id}-hint`}>
          {say('shell:people-passphrase-hint')}
        </p>
      )}
      <input
        id={id}
        className="written"
        type={shown ? 'text' : 'password'}
        autoComplete={fresh ? 'new-password' : 'current-password'}
        value={value}
        maxLength={256}
        aria-invalid={isShort}
        aria-describedby={`${fresh ? `${id}-hint ` : ''}${id}-error`}
        onChange={(event) => onValue(event.target.value)}
      />
      <div id={`${id}-error`} aria-live="polite">
        {isShort && <FieldError>{say('shell:people-passphrase-short', { count: value.length })}</FieldError>}
      </div>
      <FlagTag label={say('shell:people-passphrase-show')} value={shown} onValue={setShown} />
    </div>
  )
}
