/**
 * StrengthOverTime: every test of a lot by its day, each drawn as wide as it may be off. A titration is a dot on a thick
 * line, hydroxide an open square on a thin one; a trial cup tells no strength and stands in the table alone. Props: tests.
 */
import { dayOfInstant, type TestOverTime } from '@crib/planning'
import { type Reckoned, shownValue } from '@crib/science'
import { formatNumber, formatQuantity, formatReckoned } from '@crib/wording'
import { deviceZone } from '../../../book/keeper.ts'
import { ToWidth } from '../../../drawings/to-width.tsx'
import { Figure, Ledger, Reasons } from '../../../parts-of-the-sheet/index.ts'
import { useWords } from '../../../words.tsx'
import { dayText } from '../../pantry/day-text.ts'
import '../../../walk/walk.css'

const HEIGHT = 260
const LEFT = 52
const RIGHT = 16
const TOP = 44
const BOTTOM = 36

export function StrengthOverTime({ tests }: { readonly tests: readonly TestOverTime[] }) {
  const { say } = useWords()
  const drawn = tests.filter(({ alkali, hydroxide }) => alkali ?? hydroxide)
  const rows = tests.map(({ entryId, at, way, alkali, hydroxide, read }) => {
    const share = read.ok ? read.values.find(({ id }) => id === 'slippedFraction') : undefined
    return {
      key: entryId,
      cells: [
        day(at),
        say(`kettle:test-way-${way}`),
        { number: alkali ? withRange(alkali) : share ? withRange(share) : '' },
        { number: hydroxide ? withRange(hydroxide) : '' },
      ],
    }
  })
  const table = (
    <Ledger
      head={[
        say('kettle:lot-test-day'),
        say('kettle:lot-test-way'),
        say('kettle:test-value-lotEqPerKg'),
        say('kettle:lot-of-it-hydroxide'),
      ]}
      rows={rows}
    />
  )
  const odd = tests.filter(({ notForStrength }) => notForStrength.length > 0)
  const oddOnes = odd.map(({ entryId, at, way, notForStrength }) => (
    <Reasons
      key={entryId}
      title={say('kettle:test-not-for-strength-on', { day: day(at), way: say(`kettle:test-way-${way}`) })}
      sentences={notForStrength}
    />
  ))
  if (drawn.length === 0)
    return (
      <>
        {table}
        {oddOnes}
      </>
    )
  return (
    <>
      <Figure title={say('kettle:lot-figure')} table={table}>
        <ToWidth>{(width) => <Picture tests={drawn} width={width} />}</ToWidth>
        <p className="field-hint">{say('kettle:lot-figure-marks')}</p>
      </Figure>
      {oddOnes}
    </>
  )
}

function withRange(reckoned: Reckoned): string {
  const { low, high, unit, rounding } = reckoned
  if (low === undefined || high === undefined) return formatReckoned(reckoned)
  const end = (value: number) => formatNumber(shownValue({ value, rounding }))
  return `${formatReckoned(reckoned, 'alone')} (${end(low)} – ${formatQuantity({ value: shownValue({ value: high, rounding }), unit }, 'alone')})`
}

function Picture({ tests, width }: { readonly tests: readonly TestOverTime[]; readonly width: number }) {
  const { say } = useWords()
  const times = tests.map(({ at }) => Date.parse(at))
  const from = Math.min(...times)
  const to = Math.max(...times)
  const most = Math.max(...tests.flatMap(({ alkali, hydroxide }) => [alkali?.high ?? 0, hydroxide?.high ?? 0]), 0.1)
  const step = [0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10].find((each) => most / each <= 5) ?? 20
  const top = Math.ceil(most / step) * step
  // A single test stands in the middle.
  const x = (atMs: number) => LEFT + 24 + (to > from ? (atMs - from) / (to - from) : 0.5) * (width - LEFT - RIGHT - 48)
  const y = (eqPerKg: number) => HEIGHT - BOTTOM - (eqPerKg / top) * (HEIGHT - TOP - BOTTOM)
  const marks = Array.from({ length: Math.round(top / step) + 1 }, (_, index) => index * step)
  const first = tests[0]!
  const last = tests.at(-1)!
  return (
    <svg
      className="trace"
      viewBox={`0 0 ${width} ${HEIGHT}`}
      role="img"
      aria-label={say('kettle:lot-figure-alt', { count: tests.length, from: day(first.at), to: day(last.at) })}
    >
      <text x={LEFT - 44} y={18} className="trace-strong">
        {say('kettle:lot-figure-axis')}
      </text>
      {marks.map((mark) => (
        <g key={mark}>
          <line x1={LEFT} x2={width - RIGHT} y1={y(mark)} y2={y(mark)} stroke="var(--rule)" strokeWidth="1" />
          <text x={LEFT - 8} y={y(mark) + 5} textAnchor="end">
            {formatNumber(Number(mark.toFixed(2)))}
          </text>
        </g>
      ))}
      <line x1={LEFT} x2={width - RIGHT} y1={y(0)} y2={y(0)} stroke="var(--ink)" strokeWidth="2" />
      {tests.map(({ entryId, at, alkali, hydroxide }) => {
        const middle = x(Date.parse(at))
        return (
          <g key={entryId}>
            {alkali && (
              <>
                <line
                  x1={middle - 7}
                  x2={middle - 7}
                  y1={y(alkali.low!)}
                  y2={y(alkali.high!)}
                  stroke="var(--ink)"
                  strokeWidth="5"
                />
                <circle cx={middle - 7} cy={y(alkali.value)} r="8" fill="var(--ink)" />
              </>
            )}
            {hydroxide && (
              <>
                <line
                  x1={middle + 9}
                  x2={middle + 9}
                  y1={y(hydroxide.low!)}
                  y2={y(hydroxide.high!)}
                  stroke="var(--ink)"
                  strokeWidth="2"
                />
                <rect
                  x={middle + 2}
                  y={y(hydroxide.value) - 7}
                  width="14"
                  height="14"
                  fill="var(--paper)"
                  stroke="var(--ink)"
                  strokeWidth="3"
                />
              </>
            )}
          </g>
        )
      })}
      <text x={LEFT} y={HEIGHT - 8}>
        {day(first.at)}
      </text>
      {to > from && (
        <text x={width - RIGHT} y={HEIGHT - 8} textAnchor="end">
          {day(last.at)}
        </text>
      )}
    </svg>
  )
}

/** The day it was at home. */
const day = (instant: string) => dayText(dayOfInstant(Date.parse(instant), deviceZone()))
