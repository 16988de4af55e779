/** PlotDrawing: the plot to scale, rows as lines or hills as rings, with its sides and a bar. Props: ground, caption. */
import { plotBlock } from '@crib/paper'
import type { PlotGround } from '@crib/planning'
import { formatQuantity } from '@crib/wording'
import { useMemo } from 'react'
import { Figure, Ledger } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import './field.css'

/** Of the drawing's own width, left clear for the bar and the sides. [share] */
const EDGE = 0.06

export function PlotDrawing({ ground, caption }: { readonly ground: PlotGround; readonly caption: string }) {
  const words = useWords()
  const { say } = words
  const block = useMemo(
    () =>
      plotBlock(
        { plot: '', date: '', seedLines: [], amounts: [], ground },
        { paper: 'letter', invented: false, edition: '', madeAt: '' },
        words,
      ),
    [ground, words],
  )
  const { lengthM, widthM, rows, barM, lengthText, widthText } = block
  const { rowsCount, perRowCount, rowsBearingDeg } = ground
  const edge = Math.max(lengthM, widthM) * EDGE
  const stroke = Math.max(lengthM, widthM) / 260
  const bar = say('field:screen-drawing-bar', { bar: formatQuantity({ value: barM, unit: 'M' }) })
  const facts = [
    [say('field:screen-along'), lengthText],
    [say('field:screen-across'), widthText],
    ...(rowsCount > 0
      ? [
          [
            say(ground.pattern === 'hills' ? 'field:screen-plan-rows-of-hills' : 'field:screen-plan-rows'),
            String(rowsCount),
          ],
          [
            say(ground.pattern === 'hills' ? 'field:screen-plan-hills-in-row' : 'field:screen-plan-plants-in-row'),
            String(perRowCount),
          ],
        ]
      : []),
  ] as const
  return (
    <Figure
      title={caption}
      table={
        <Ledger
          head={[say('field:screen-drawing-what'), say('field:screen-drawing-much')]}
          rows={facts.map(([name, text]) => ({ key: name ?? '', cells: [name, { number: text ?? '' }] }))}
        />
      }
    >
      <svg
        className="plot-drawing"
        viewBox={`${-edge} ${-edge} ${lengthM + 2 * edge} ${widthM + 3 * edge}`}
        role="img"
        aria-label={
          rowsCount > 0
            ? say('field:screen-drawing-alt', {
                length: lengthText,
                width: widthText,
                rows: rowsCount,
                each: perRowCount,
              })
            : say('field:screen-drawing-alt-bare', { length: lengthText, width: widthText })
        }
      >
        <rect className="plot-edge" width={lengthM} height={widthM} strokeWidth={stroke * 2} />
        {rows.map(({ acrossM, hillsM }) =>
          hillsM ? (
            hillsM.map((alongM) => (
              <circle
                key={`${acrossM} ${alongM}`}
                className="plot-hill"
                cx={alongM}
                cy={acrossM}
                r={Math.min(ground.inRowSpacingM, ground.rowSpacingM) * 0.28}
                strokeWidth={stroke}
              />
            ))
          ) : (
            <line key={acrossM} className="plot-row" x2={lengthM} y1={acrossM} y2={acrossM} strokeWidth={stroke * 2} />
          ),
        )}
        <path
          className="plot-bar"
          d={`M0 ${widthM + edge}h${barM}M0 ${widthM + edge * 0.6}v${edge * 0.8}M${barM} ${widthM + edge * 0.6}v${edge * 0.8}`}
          strokeWidth={stroke * 2}
        />
        {rowsBearingDeg !== undefined && (
          <g transform={`translate(${lengthM - edge * 0.8} ${widthM + edge}) rotate(${-rowsBearingDeg})`}>
            <path
              className="plot-north"
              d={`M${-edge * 0.6} 0H${edge * 0.6}m${-edge * 0.3} ${-edge * 0.25}l${edge * 0.3} ${edge * 0.25}l${-edge * 0.3} ${edge * 0.25}`}
              strokeWidth={stroke * 2}
            />
          </g>
        )}
      </svg>
      <p className="field-hint">
        {say('field:screen-drawing-alt-bare', { length: lengthText, width: widthText })} {bar}
        {rowsBearingDeg !== undefined && ` ${say('field:screen-drawing-north')}`}
      </p>
    </Figure>
  )
}
