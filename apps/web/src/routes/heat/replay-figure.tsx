/** Temperatures measured and modelled on one drawing, with the moments found; pressure below. No total is drawn from them. */
import { type LoggerTrace, type Replay, traceAt } from '@crib/planning'
import { formatClock, formatQuantity } from '@crib/wording'
import { useRef } from 'react'
import { Figure, Ledger } from '../../parts-of-the-sheet/index.ts'
import { clockAt } from '../../walk/clock-at.ts'
import { useWords } from '../../words.tsx'
import { BOTTOM, HEIGHT, LEFT, NumberedMoment, RIGHT, TemperatureAxes, TOP } from './drawing-frame.tsx'
import { useWidth } from './use-width.ts'

const PRESSURE_HEIGHT = 110
const LOWEST_C = 30
const HIGHEST_C = 125

interface Drawn {
  readonly traces: readonly LoggerTrace[]
  readonly replay: Extract<Replay, { ok: true }>
  readonly msOf: (atMin: number) => number
  readonly zone: string
}

export function ReplayFigure(props: Drawn) {
  const { traces, replay, msOf, zone } = props
  const { say, sentence } = useWords()
  const box = useRef<HTMLDivElement>(null)
  const width = useWidth(box)
  const clock = (atMin: number) => formatClock(clockAt(msOf(atMin), zone))
  const rows = replay.marks.map(({ atMin, event }, i) => ({
    key: `${event.type}${atMin}`,
    cells: [
      say('heat:line', { clock: clock(atMin), name: `${i + 1}` }),
      sentence({ key: `heat:mark-name-${event.type}` }),
      ...traces.map(({ points, role }) => {
        const value = traceAt(points, atMin)
        return value === null
          ? ''
          : { number: formatQuantity({ value: Number(value.toFixed(1)), unit: role === 'gauge' ? 'PsiGauge' : 'C' }) }
      }),
    ],
  }))
  return (
    <Figure
      title={say('heat:replay-picture')}
      table={
        <Ledger
          head={[say('heat:table-when'), say('heat:table-what'), ...traces.map(({ column }) => column)]}
          rows={rows}
        />
      }
    >
      <div ref={box}>{width > 0 && <Drawing {...props} width={width} clock={clock} />}</div>
      <ul className="heat-key">
        {linesOf(props).map(({ key, name, points: _points, ...stroke }) => (
          <li key={key}>
            <svg width="44" height="14" aria-hidden="true" focusable="false">
              <line x1="0" x2="44" y1="7" y2="7" {...stroke} />
            </svg>
            {typeof name === 'string' ? name : say(name.key)}
          </li>
        ))}
      </ul>
    </Figure>
  )
}

function linesOf({ traces, replay }: Drawn) {
  const temperatures = traces.filter(({ role }) => role !== 'gauge')
  return [
    ...temperatures.map(({ column, role, points }, i) => ({
      key: column,
      name: column as string | { readonly key: 'heat:modelled-loose' | 'heat:modelled-solid' },
      points,
      stroke: role === 'canner' ? 'var(--ink)' : 'var(--handle)',
      strokeWidth: role === 'canner' ? 4 : 2.75,
      strokeDasharray: i > 1 ? '14 4' : undefined,
    })),
    ...replay.modelled.map(({ id, points }) => ({
      key: `modelled-${id}`,
      name: { key: id === 'loose' ? ('heat:modelled-loose' as const) : ('heat:modelled-solid' as const) },
      points,
      stroke: 'var(--ink)',
      strokeWidth: 2,
      strokeDasharray: id === 'loose' ? '1.5 5' : '9 5',
    })),
  ]
}

function Drawing(props: Drawn & { readonly width: number; readonly clock: (atMin: number) => string }) {
  const { traces, replay, width, clock } = props
  const { say } = useWords()
  const lines = linesOf(props)
  const gauge = traces.find(({ role }) => role === 'gauge')
  const all = [...lines.map(({ points }) => points), ...(gauge ? [gauge.points] : [])].filter(
    ({ length }) => length > 0,
  )
  // What lies long before or after the run is left out of the picture, not of the file.
  const modelled = replay.modelled[0]?.points
  const fromMin = modelled?.[0]?.atMin ?? Math.min(...all.map((points) => points[0]!.atMin))
  const toMin = modelled?.at(-1)?.atMin ?? Math.max(...all.map((points) => points.at(-1)!.atMin))
  const height = HEIGHT + (gauge ? PRESSURE_HEIGHT : 0)
  const x = (atMin: number) => LEFT + ((atMin - fromMin) / Math.max(1e-9, toMin - fromMin)) * (width - LEFT - RIGHT)
  const y = (celsius: number) =>
    HEIGHT - BOTTOM - ((celsius - LOWEST_C) / (HIGHEST_C - LOWEST_C)) * (HEIGHT - TOP - BOTTOM)
  const path = (points: LoggerTrace['points'], scale: (value: number) => number) =>
    points
      .filter(({ atMin }) => atMin >= fromMin && atMin <= toMin)
      .map(({ atMin, value }, i) => `${i === 0 ? 'M' : 'L'}${x(atMin).toFixed(1)} ${scale(value).toFixed(1)}`)
      .join('')
  const topPsi = gauge ? Math.max(5, ...gauge.points.map(({ value }) => value)) + 2 : 1
  const psiY = (psi: number) => height - 8 - (Math.max(0, psi) / topPsi) * (PRESSURE_HEIGHT - 34)
  return (
    <svg
      className="heat-drawing"
      viewBox={`0 0 ${width} ${height}`}
      width={width}
      height={height}
      role="img"
      aria-label={say('heat:replay-alt', { from: clock(fromMin), to: clock(toMin), count: replay.marks.length })}
    >
      <TemperatureAxes y={y} width={width} />
      <text x={LEFT} y={HEIGHT - 8}>
        {clock(fromMin)}
      </text>
      <text x={width - RIGHT} y={HEIGHT - 8} textAnchor="end">
        {clock(toMin)}
      </text>
      {replay.marks.map(({ atMin, event }, i) => (
        <NumberedMoment key={`${event.type}${atMin}`} atX={x(atMin)} index={i} />
      ))}
      {lines.map(({ key, points, name: _name, ...stroke }) => (
        <path key={key} d={path(points, y)} fill="none" {...stroke} />
      ))}
      {gauge && (
        <g>
          <text x={LEFT} y={HEIGHT + 14} className="heat-strong">
            {gauge.column}
          </text>
          <line x1={LEFT} x2={width - RIGHT} y1={psiY(0)} y2={psiY(0)} stroke="var(--ink)" strokeWidth="2" />
          <path d={path(gauge.points, psiY)} fill="none" stroke="var(--ink)" strokeWidth="2.5" />
        </g>
      )}
    </svg>
  )
}
