/**
 * The pressure of a run over time: steam, coming up, what counts, what does not, cooling. A reading is a dot; between
 * readings the line is only what the step itself says. The same as a table stands behind one tap.
 */
import { type PressureTrace, pressureTrace, type TraceSpan } from '@crib/planning'
import { formatClock, formatQuantity, formatReckoned } from '@crib/wording'
import { useEffect, useRef, useState } from 'react'
import { Figure, Ledger } from '../../parts-of-the-sheet/index.ts'
import { clockAt } from '../../walk/clock-at.ts'
import { useWords } from '../../words.tsx'
import type { RunNow } from './run-of.ts'

const HEIGHT = 250
const LEFT = 46
const RIGHT = 12
const TOP = 26
const BOTTOM = 34

export function TraceFigure({ at }: { readonly at: RunNow }) {
  const { say } = useWords()
  const trace = pressureTrace(at.setup, at.records, at.state.asOfMs)
  const clock = (atMs: number) => formatClock(clockAt(atMs, at.zone))
  const rows = [
    ...trace.spans.map((span) => ({
      atMs: span.fromMs,
      key: `${span.kind}${span.fromMs}`,
      cells: [say(`canner:run-screen-span-${span.kind}`), clock(span.fromMs), clock(span.toMs)],
    })),
    ...trace.points
      .filter(({ isRead }) => isRead)
      .map(({ atMs, psi }) => ({
        atMs,
        key: `read${atMs}`,
        cells: [
          say('canner:run-screen-with-psi', {
            words: say('canner:run-screen-tap-reading'),
            reading: { value: psi ?? 0, unit: 'PsiGauge' },
          }),
          clock(atMs),
          '',
        ],
      })),
  ].sort((a, b) => a.atMs - b.atMs)
  const head = [
    say('canner:run-screen-trace-what'),
    say('canner:run-screen-trace-from'),
    say('canner:run-screen-trace-to'),
  ]
  if (trace.spans.length === 0) return null
  return (
    <Figure title={say('canner:run-screen-trace-title')} table={<Ledger head={head} rows={rows} />}>
      <ToWidth at={at} trace={trace} />
    </Figure>
  )
}

function ToWidth(props: { readonly at: RunNow; readonly trace: PressureTrace }) {
  const box = useRef<HTMLDivElement>(null)
  const width = useWidth(box)
  return <div ref={box}>{width > 0 && <Picture {...props} width={width} />}</div>
}

function Picture({ at, trace, width }: { readonly at: RunNow; readonly trace: PressureTrace; readonly width: number }) {
  const { say } = useWords()
  const { spans, points, requiredPsi, topPsi } = trace
  const times = [...spans.flatMap(({ fromMs, toMs }) => [fromMs, toMs]), ...points.map(({ atMs }) => atMs)]
  const dueMs = at.state.phase === 'holding' ? at.state.dueAtMs : undefined
  const fromMs = Math.min(...times)
  const toMs = Math.max(...times, dueMs ?? 0, fromMs + 60_000)
  const x = (atMs: number) => LEFT + ((atMs - fromMs) / (toMs - fromMs)) * (width - LEFT - RIGHT)
  const y = (psi: number) => HEIGHT - BOTTOM - (psi / topPsi) * (HEIGHT - TOP - BOTTOM)
  const clock = (atMs: number) => formatClock(clockAt(atMs, at.zone))
  const due = at.number('finish')
  const reading = formatQuantity(at.pressure, 'alone')
  return (
    <svg
      className="trace"
      viewBox={`0 0 ${width} ${HEIGHT}`}
      role="img"
      aria-label={say('canner:run-screen-trace-alt', { from: clock(fromMs), to: clock(toMs), pressure: at.pressure })}
    >
      <line x1={LEFT} x2={width - RIGHT} y1={y(0)} y2={y(0)} stroke="var(--ink)" strokeWidth="2" />
      <line
        x1={LEFT}
        x2={width - RIGHT}
        y1={y(requiredPsi)}
        y2={y(requiredPsi)}
        stroke="var(--twine)"
        strokeWidth="2"
        strokeDasharray="3 6"
      />
      <text x={LEFT} y={y(requiredPsi) - 8} className="trace-strong">
        {reading}
      </text>
      <text x={LEFT - 8} y={y(0) + 5} textAnchor="end">
        0
      </text>
      {hoursBetween(fromMs, toMs).map((atMs) => (
        <g key={atMs}>
          <line x1={x(atMs)} x2={x(atMs)} y1={y(0)} y2={y(0) + 7} stroke="var(--ink)" strokeWidth="2" />
          <text x={x(atMs)} y={HEIGHT - 8} textAnchor="middle">
            {clock(atMs)}
          </text>
        </g>
      ))}
      {spans.map((span) => (
        <Span key={`${span.kind}${span.fromMs}`} span={span} x={x} y={y} trace={trace} />
      ))}
      {points
        .filter(({ isRead }) => isRead)
        .map(({ atMs, psi }) => (
          <g key={atMs}>
            <line x1={x(atMs)} x2={x(atMs)} y1={y(requiredPsi)} y2={y(psi ?? 0)} stroke="var(--ink)" strokeWidth="2" />
            <circle cx={x(atMs)} cy={y(psi ?? 0)} r="6" fill="var(--paper)" stroke="var(--ink)" strokeWidth="3" />
          </g>
        ))}
      {dueMs !== undefined && (
        <g>
          <line x1={x(dueMs)} x2={x(dueMs)} y1={TOP - 4} y2={y(0)} stroke="var(--ink)" strokeWidth="2" />
          <text x={x(dueMs)} y={TOP - 8} textAnchor="end" className="trace-strong">
            {due && formatReckoned(due, 'alone')}
          </text>
        </g>
      )}
    </svg>
  )
}

/** Drawn in real pixels, so that its words keep their size on a phone. */
function useWidth(box: { readonly current: HTMLElement | null }): number {
  const [width, setWidth] = useState(0)
  useEffect(() => {
    if (!box.current) return
    const watch = new ResizeObserver(([entry]) => setWidth(Math.round(entry?.contentRect.width ?? 0)))
    watch.observe(box.current)
    return () => watch.disconnect()
  }, [box])
  return width
}

interface Scales {
  readonly x: (atMs: number) => number
  readonly y: (psi: number) => number
  readonly trace: PressureTrace
}

/** Each kind of span has a line of its own kind, so that none needs colour: steam is wavy, what counts is thick. */
function Span({ span: { kind, fromMs, toMs }, x, y, trace: { requiredPsi } }: Scales & { readonly span: TraceSpan }) {
  const from = x(fromMs)
  const to = x(toMs)
  const hold = y(requiredPsi)
  const ground = y(0)
  switch (kind) {
    case 'vent':
      return <path d={steam(from, to, ground)} fill="none" stroke="var(--ink)" strokeWidth="2.5" />
    case 'come-up':
      return <path d={`M${from} ${ground}L${to} ${hold}`} fill="none" stroke="var(--ink)" strokeWidth="2.5" />
    case 'counts':
      return (
        <>
          <rect
            x={from}
            y={hold}
            width={Math.max(0, to - from)}
            height={ground - hold}
            fill="var(--corn-fill)"
            opacity="0.45"
          />
          <path d={`M${from} ${hold}H${to}`} fill="none" stroke="var(--ink)" strokeWidth="7" />
        </>
      )
    case 'does-not-count':
      return <path d={`M${from} ${hold}H${to}`} fill="none" stroke="var(--ink)" strokeWidth="3" strokeDasharray="9 7" />
    case 'dip':
      return (
        <path
          d={`M${from} ${hold}V${hold + (ground - hold) * 0.3}H${to}V${hold}`}
          fill="none"
          stroke="var(--ink)"
          strokeWidth="2.5"
        />
      )
    case 'cool-down':
      return (
        <path
          d={`M${from} ${hold}L${to} ${ground}`}
          fill="none"
          stroke="var(--ink)"
          strokeWidth="2.5"
          strokeDasharray="2 5"
        />
      )
    case 'lid-wait':
      return <path d={`M${from} ${ground - 3}H${to}`} fill="none" stroke="var(--ink)" strokeWidth="6" />
  }
}

function steam(from: number, to: number, ground: number): string {
  let path = `M${from} ${ground - 8}`
  for (let at = from; at < to; at += 12) path += `q3 -8 6 0t6 0`
  return path
}

const HOUR_MS = 3_600_000

/** Whole hours within a span; of a long one every second or third, so that their words do not touch. */
function hoursBetween(fromMs: number, toMs: number): number[] {
  const step = HOUR_MS * Math.max(1, Math.ceil((toMs - fromMs) / HOUR_MS / 6))
  const hours: number[] = []
  for (let atMs = Math.ceil(fromMs / step) * step; atMs <= toMs; atMs += step) hours.push(atMs)
  return hours
}
