/**
 * Whose jars a load holds, by household, for the kitchen's own book and its labels; the wall board is never told.
 * WhoseJars: props value (names in order), onValue. Names the book knows are tags; a new one is typed.
 */
import type { Facts } from '@crib/journal'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { ButtonRow, FlagTag, Fold, SideAction, TextField } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export function WhoseJars({
  value,
  onValue,
}: {
  readonly value: readonly string[]
  readonly onValue: (value: readonly string[]) => void
}) {
  const { facts } = useBook()
  const { say } = useWords()
  const [typed, setTyped] = useState('')
  const names = [...new Set([...householdsOf(facts), ...value])]
  const add = () => {
    const name = typed.trim()
    if (name !== '' && !value.includes(name)) onValue([...value, name])
    setTyped('')
  }
  return (
    <Fold title={value.length === 0 ? say('canner:whose-fold') : say('canner:whose-of', { names: value.join(', ') })}>
      <p className="field-hint">{say('canner:whose-hint')}</p>
      {names.length > 0 && (
        <fieldset className="field" style={{ maxWidth: 'none' }}>
          <legend>{say('canner:whose-known')}</legend>
          <div className="tags">
            {names.map((name) => (
              <FlagTag
                key={name}
                label={name}
                value={value.includes(name)}
                onValue={(isIn) => onValue(isIn ? [...value, name] : value.filter((each) => each !== name))}
              />
            ))}
          </div>
        </fieldset>
      )}
      <TextField label={say('canner:whose-new')} value={typed} onValue={setTyped} />
      <ButtonRow>
        <SideAction onClick={add}>{say('canner:whose-add')}</SideAction>
      </ButtonRow>
    </Fold>
  )
}

/** Households the book has named, in the order of the alphabet. */
function householdsOf({ cornLots, runs, foodLots }: Facts): readonly string[] {
  const named = [
    ...Object.values(cornLots).map(({ householdName }) => householdName),
    ...Object.values(runs).flatMap(({ begun }) => begun.households ?? []),
    ...Object.values(foodLots).map(({ householdName }) => householdName),
  ]
  return [...new Set(named.filter((name) => name !== undefined))].sort((a, b) => a.localeCompare(b))
}
