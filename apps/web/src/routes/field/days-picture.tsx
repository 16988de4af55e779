/** DaysPicture: degree-days climbing since the sowing, with the days of silk and ripe. Props: plan. */
import { type DegreeDayPlan, dayText } from '@crib/planning'
import { convert } from '@crib/science'
import { formatNumber } from '@crib/wording'
import { Figure, Ledger } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import './field.css'

const WIDE = 600
const HIGH = 260
const EDGE = 24
const WEEK = 7

export function DaysPicture({ plan }: { readonly plan: DegreeDayPlan }) {
  const { say } = useWords()
  const { calendar, silkDay, ripeDay } = plan
  const first = calendar[0]
  const last = calendar.at(-1)
  if (!first || !last || calendar.length < 2) return null
  const x = (day: number) => EDGE + ((WIDE - 2 * EDGE) * (day - first.day)) / (last.day - first.day)
  const y = (totalC: number) => HIGH - EDGE - ((HIGH - 2 * EDGE) * totalC) / Math.max(last.totalC, 1)
  const marks = [
    { day: silkDay, word: say('field:screen-mark-silk') },
    { day: ripeDay, word: say('field:screen-mark-ripe') },
  ].flatMap(({ day, word }) => (day === null ? [] : [{ day, word }]))
  return (
    <Figure
      title={say('field:screen-days-picture')}
      table={
        <Ledger
          caption={say('field:screen-days-week')}
          head={[say('field:screen-days-day'), say('field:screen-days-total')]}
          rows={calendar
            .filter((_, index) => index % WEEK === 0 || index === calendar.length - 1)
            .map(({ day, totalC }) => ({
              key: String(day),
              cells: [dayText(day), { number: formatNumber(convert(totalC, 'DegreeDaysC', 'DegreeDaysF'), 0) }],
            }))}
        />
      }
    >
      <svg viewBox={`0 0 ${WIDE} ${HIGH}`} role="img" aria-label={say('field:screen-days-picture-words')}>
        <path className="days-axis" d={`M${EDGE} ${HIGH - EDGE}H${WIDE - EDGE}`} strokeWidth="2" />
        <polyline
          className="days-line"
          points={calendar.map(({ day, totalC }) => `${x(day).toFixed(1)},${y(totalC).toFixed(1)}`).join(' ')}
          strokeWidth="3"
        />
        {marks.map(({ day, word }) => (
          <g key={word}>
            <path className="days-mark" d={`M${x(day)} ${EDGE}V${HIGH - EDGE}`} strokeWidth="2" />
            <text className="days-word" x={x(day) - 6} y={EDGE - 6} textAnchor="end">
              {word}
            </text>
          </g>
        ))}
      </svg>
      <p className="field-hint">
        {say('field:screen-days-range', { from: dayText(first.day), to: dayText(last.day) })}
      </p>
    </Figure>
  )
}
