/**
 * SlipRange: between when and when the hulls may slip, drawn over the clock from the boil on, with the rubs so far. It moves
 * only when something is written down, and counts nothing down. Props: at, use, onUse.
 */
import { type PotWalk, type SlipForecast, type SlipQuestion, slipForecast, slipPots } from '@crib/planning'
import { useMemo } from 'react'
import { useBook } from '../../book/book.tsx'
import { ToWidth } from '../../drawings/to-width.tsx'
import { BigNumber, ChoiceTags, FieldError, Fold, Reasons, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { clockText, dueText, type PotAt } from './pot-at.ts'
import { useSlip } from './use-slip.ts'

export type SlipUse = SlipQuestion['use']
const USES = ['whole', 'ground'] as const
const MINUTE_MS = 60_000

export function SlipRange({
  at,
  use,
  onUse,
}: {
  readonly at: PotAt
  readonly use: SlipUse
  readonly onUse: (use: SlipUse) => void
}) {
  const { facts } = useBook()
  const { say } = useWords()
  const { batch, walk, nowMs } = at
  const { batchId } = batch
  const { potLoad } = walk
  // Told anew when the book changes, not with every minute.
  const pots = useMemo(() => slipPots(facts, { batchId, potLoad }), [facts, batchId, potLoad])
  const { state, again } = useSlip(pots)
  const knowledge = state.kind === 'found' ? state.knowledge : null
  // Once a minute is enough: what this pot told changes with the book alone.
  const minuteMs = Math.floor(nowMs / MINUTE_MS) * MINUTE_MS
  const foretold = useMemo(
    () => knowledge && slipForecast(facts, { batchId, potLoad, nowMs: minuteMs, use }, knowledge),
    [knowledge, facts, batchId, potLoad, minuteMs, use],
  )
  if (state.kind === 'working') {
    return <div role="status">{state.isSlow && <p>{say('kettle:slip-working')}</p>}</div>
  }
  if (state.kind === 'failed') {
    return (
      <>
        <FieldError>{say('kettle:slip-failed')}</FieldError>
        <SideAction onClick={again}>{say('kettle:slip-again')}</SideAction>
      </>
    )
  }
  if (!foretold || foretold.kind === 'not-boiling') return null
  const { fromMs, toMs, slipMin, slippedNowFraction, sentences } = foretold
  return (
    <section className="passage-body" aria-label={say('kettle:slip-title')}>
      <p className="next-words">{say('kettle:slip-from-to', { from: clockText(fromMs, at), to: dueText(toMs, at) })}</p>
      <ToWidth>{(width) => <Picture at={at} walk={walk} foretold={foretold} width={width} />}</ToWidth>
      <Fold title={say('kettle:slip-title')}>
        <ChoiceTags
          legend={say('kettle:slip-use')}
          options={USES.map((value) => ({ value, label: say(`kettle:slip-use-${value}`) }))}
          value={use}
          onValue={onUse}
        />
        <BigNumber label={say('kettle:slip-value-slipMin')} reckoned={slipMin} size="small" />
        <BigNumber label={say('kettle:slip-value-slippedNow')} reckoned={slippedNowFraction} size="small" />
        <Reasons sentences={sentences} />
      </Fold>
    </section>
  )
}

const HEIGHT = 92
const BASE = 52

function Picture({
  at,
  walk,
  foretold: { fromMs, toMs },
  width,
}: {
  readonly at: PotAt
  readonly walk: PotWalk
  readonly foretold: SlipForecast
  readonly width: number
}) {
  const { say } = useWords()
  const boilMs = walk.seen.boilAtMs!
  const { nowMs } = at
  const endMs = Math.max(toMs, nowMs, boilMs + 60_000)
  const x = (atMs: number) => 8 + ((atMs - boilMs) / (endMs - boilMs)) * (width - 16)
  const from = clockText(fromMs, at)
  const to = dueText(toMs, at)
  const isFar = x(toMs) - x(fromMs) > 110
  return (
    <svg
      className="trace"
      viewBox={`0 0 ${width} ${HEIGHT}`}
      role="img"
      aria-label={say('kettle:slip-figure-alt', { boil: clockText(boilMs, at), from, to, now: clockText(nowMs, at) })}
    >
      <line x1={x(boilMs)} x2={x(endMs)} y1={BASE} y2={BASE} stroke="var(--ink)" strokeWidth="2" />
      <rect
        x={x(fromMs)}
        y={BASE - 11}
        width={Math.max(2, x(toMs) - x(fromMs))}
        height="22"
        fill="var(--corn-fill)"
        stroke="var(--ink)"
        strokeWidth="2"
      />
      <line x1={x(boilMs)} x2={x(boilMs)} y1={BASE - 8} y2={BASE + 8} stroke="var(--ink)" strokeWidth="2" />
      <text x={0} y={BASE + 32}>
        {say('kettle:slip-figure-boil')}
      </text>
      {isFar && (
        <text x={x(fromMs)} y={BASE + 32} textAnchor="middle" className="trace-strong">
          {from}
        </text>
      )}
      <text x={x(toMs)} y={BASE + 32} textAnchor={x(toMs) > width - 60 ? 'end' : 'middle'} className="trace-strong">
        {to}
      </text>
      {walk.seen.rubs.map((rub) => (
        <circle
          key={rub.atMs}
          cx={x(rub.atMs)}
          cy={BASE}
          r="6"
          fill={rub.slippedCount * 2 >= rub.ofCount ? 'var(--ink)' : 'var(--paper)'}
          stroke="var(--ink)"
          strokeWidth="3"
        />
      ))}
      <path d={`M${x(nowMs)} ${BASE - 14}l-6 -11h12z`} fill="var(--ink)" />
      <text x={x(nowMs)} y={20} textAnchor={x(nowMs) > width - 40 ? 'end' : x(nowMs) < 40 ? 'start' : 'middle'}>
        {say('kettle:slip-now')}
      </text>
    </svg>
  )
}
