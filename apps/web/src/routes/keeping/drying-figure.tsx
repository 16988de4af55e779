/** The weights of a tray as they fell, and the line to stop at. Props: drying, stopAt. */
import type { DryingFact } from '@crib/journal'
import type { Reckoned } from '@crib/science'
import { formatReckoned, formatWeight } from '@crib/wording'
import { useId } from 'react'
import { Figure, Ledger } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { whenText } from '../people/when-text.ts'

const WIDTH = 320
const HEIGHT = 150
const EDGE = 14

export function DryingFigure({ drying, stopAt }: { readonly drying: DryingFact; readonly stopAt: Reckoned }) {
  const { say } = useWords()
  const titleId = useId()
  const points = [{ massKg: drying.massKg, at: drying.at }, ...drying.weights].map(({ massKg, at }) => ({
    massKg,
    ms: Date.parse(at.instant),
    when: whenText(at.instant),
    key: `${at.entryId} ${massKg}`,
  }))
  const fromMs = points[0]!.ms
  const toMs = points.at(-1)!.ms
  const topKg = Math.max(...points.map(({ massKg }) => massKg))
  const x = (ms: number) => EDGE + ((ms - fromMs) / Math.max(1, toMs - fromMs)) * (WIDTH - 2 * EDGE)
  const y = (kg: number) => HEIGHT - EDGE - (kg / topKg) * (HEIGHT - 2 * EDGE)
  return (
    <Figure
      title={say('keeping:screen-drying-figure')}
      table={
        <Ledger
          head={[say('keeping:screen-when'), say('keeping:screen-weighed')]}
          rows={points.map(({ key, when, massKg }) => ({ key, cells: [when, { number: formatWeight(massKg) }] }))}
        />
      }
    >
      <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-labelledby={titleId} style={{ maxWidth: '32rem' }}>
        <title id={titleId}>
          {say('keeping:screen-drying-figure-says', { count: points.length, stop: formatReckoned(stopAt) })}
        </title>
        <g fill="none" stroke="currentColor" strokeWidth="2.5">
          <path d={`M${EDGE} ${HEIGHT - EDGE}H${WIDTH - EDGE}`} strokeWidth="1" />
          <path d={`M${EDGE} ${y(stopAt.value)}H${WIDTH - EDGE}`} strokeDasharray="6 5" />
          <path d={points.map(({ ms, massKg }, index) => `${index ? 'L' : 'M'}${x(ms)} ${y(massKg)}`).join('')} />
          {points.map(({ key, ms, massKg }) => (
            <circle key={key} cx={x(ms)} cy={y(massKg)} r="4" fill="currentColor" />
          ))}
        </g>
        <text x={EDGE} y={y(stopAt.value) - 5} fontSize="13" fill="currentColor">
          {say('keeping:screen-stop-at')} {formatReckoned(stopAt)}
        </text>
      </svg>
    </Figure>
  )
}
