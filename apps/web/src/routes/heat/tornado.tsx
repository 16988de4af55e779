/** What matters: how far each uncertain input alone moves the made-up jar, the widest first. */
import { studyValues } from '@crib/planning'
import { formatQuantity } from '@crib/wording'
import { memo } from 'react'
import { Figure, Ledger } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import type { BandNow } from './use-band.ts'

export const Tornado = memo(function Tornado({
  isStale,
  now,
}: {
  readonly isStale: boolean
  readonly now: BandNow | null
}) {
  const { say } = useWords()
  if (!now) return <p role="status">{say('heat:band-first')}</p>
  const { swings } = studyValues(now.of, now.study)
  const ends = swings.flatMap(({ reckoned: { low = 0, high = 0 } }) => [low, high])
  const least = Math.min(...ends)
  const most = Math.max(...ends)
  const along = (value: number) => (most > least ? ((value - least) / (most - least)) * 100 : 0)
  const minutes = (value: number) => formatQuantity({ value: Number(value.toFixed(1)), unit: 'Min' })
  const rows = swings.map(({ input, reckoned: { value, low = value, high = value } }) => ({
    input,
    name: say(`heat:input-${input}`),
    value,
    low,
    high,
  }))
  return (
    <Figure
      title={say('heat:matters-lead')}
      table={
        <Ledger
          head={[say('heat:matters-input'), say('heat:matters-low'), say('heat:matters-high')]}
          rows={rows.map(({ input, name, low, high }) => ({
            key: input,
            cells: [name, { number: minutes(low) }, { number: minutes(high) }],
          }))}
        />
      }
    >
      <ol className={isStale ? 'tornado heat-stale' : 'tornado'}>
        {rows.map(({ input, name, value, low, high }) => (
          <li key={input}>
            <span className="tornado-name">{name}</span>
            <span className="tornado-bar" aria-hidden="true">
              <span style={{ left: `${along(low)}%`, width: `max(3px, ${along(high) - along(low)}%)` }} />
              <i style={{ left: `${along(value)}%` }} />
            </span>
            <span className="tornado-ends">{say('heat:matters-ends', { low: minutes(low), high: minutes(high) })}</span>
          </li>
        ))}
      </ol>
      <p className="field-hint">{say('heat:matters-note')}</p>
    </Figure>
  )
})
