/**
 * PlanNumber: a number of the plan by its own name; where the last change moved it, the old number stands struck beside it.
 * MovedList: what moved, old and new, in words. Props: moved.
 */
import { amountName, type Moved } from '@crib/planning'
import type { Reckoned, Unit } from '@crib/science'
import { formatDuration, formatQuantity } from '@crib/wording'
import { BigNumber } from '../../parts-of-the-sheet/index.ts'
import { upperFirst } from '../../upper-first.ts'
import { useWords } from '../../words.tsx'

export function useAmountName(): (id: string) => string {
  const { sentence } = useWords()
  return (id) => {
    const name = amountName(id)
    return name ? upperFirst(sentence(name)) : id
  }
}

export function PlanNumber({
  reckoned,
  moved,
  size = 'large',
}: {
  readonly reckoned: Reckoned
  readonly moved: readonly Moved[]
  readonly size?: 'large' | 'small'
}) {
  const nameOf = useAmountName()
  const { say } = useWords()
  const was = moved.find(({ id }) => id === reckoned.id)?.before
  return (
    <BigNumber
      label={nameOf(reckoned.id)}
      reckoned={reckoned}
      size={size}
      {...(was !== undefined && {
        note: (
          <span className="was">
            {say('shell:plan-was')} <s>{formatQuantity({ value: was, unit: reckoned.unit }, 'alone')}</s>
          </span>
        ),
      })}
    />
  )
}

/** Told in the order of the plan; single loads and doubles of one amount in other units are left out. */
const NOT_LISTED =
  /^(load:|lids$|rounds$|saltTsp|saltCups|ashLiquidQt|waterL$|sodiumHydroxideG|startClockMin|hominyWaitsMin)/

export function MovedList({
  moved,
  unitOf,
}: {
  readonly moved: readonly Moved[]
  readonly unitOf: (id: string) => Unit | null
}) {
  const nameOf = useAmountName()
  const { say } = useWords()
  const told = moved.filter(({ id }) => !NOT_LISTED.test(id))
  if (told.length === 0) return null
  const text = (id: string, value: number | undefined) => {
    const unit = unitOf(id)
    if (value === undefined || unit === null) return null
    return unit === 'Min' ? formatDuration(value) : formatQuantity({ value, unit }, 'alone')
  }
  return (
    <div className="moved" role="status">
      <p className="field-name">{say('shell:plan-moved')}</p>
      <ul className="moved-list">
        {told.map(({ id, before, after }) => (
          <li key={id}>
            {nameOf(id)}: {before !== undefined && <s>{text(id, before)}</s>}{' '}
            <strong>{text(id, after) ?? say('shell:plan-moved-gone')}</strong>
          </li>
        ))}
      </ul>
    </div>
  )
}
