/**
 * WhatRemains: bath by bath, what is still inside the kernel against what the water shows: a wide bar and a thin one.
 * Props: baths.
 */
import type { PlannedBath } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { ToWidth } from '../../../drawings/to-width.tsx'
import { Figure, Ledger } from '../../../parts-of-the-sheet/index.ts'
import { useWords } from '../../../words.tsx'
import '../../../walk/walk.css'

const ROW = 52
const TOP = 12
const NAME = 96
const RIGHT = 58

const share = (value: number) => formatQuantity({ value: Number(value.toFixed(3)), unit: 'Fraction' }, 'alone')

export function WhatRemains({ baths }: { readonly baths: readonly PlannedBath[] }) {
  const { say } = useWords()
  const name = ({ kind }: PlannedBath, index: number) => say(`kettle:wash-bath-${kind}`, { number: index + 1 })
  const table = (
    <Ledger
      head={[
        say('kettle:wash-column-bath'),
        say('kettle:wash-value-kernelFraction'),
        say('kettle:wash-value-bathFraction'),
      ]}
      rows={baths.map((bath, index) => ({
        key: String(index),
        cells: [name(bath, index), { number: share(bath.kernelMean) }, { number: share(bath.bath) }],
      }))}
    />
  )
  const height = TOP + baths.length * ROW
  return (
    <Figure title={say('kettle:wash-figure')} table={table}>
      <ToWidth>
        {(width) => {
          const full = width - NAME - RIGHT
          return (
            <svg
              className="trace"
              viewBox={`0 0 ${width} ${height}`}
              role="img"
              aria-label={say('kettle:wash-figure-alt', { count: baths.length })}
            >
              {baths.map((bath, index) => {
                const y = TOP + index * ROW
                return (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a bath is its place in the sequence
                  <g key={index}>
                    <text x={0} y={y + 20}>
                      {name(bath, index)}
                    </text>
                    <rect
                      x={NAME}
                      y={y}
                      width={Math.max(1, bath.kernelMean * full)}
                      height="24"
                      fill="var(--corn-fill)"
                      stroke="var(--ink)"
                      strokeWidth="2"
                    />
                    <text x={NAME + bath.kernelMean * full + 6} y={y + 18} className="trace-strong">
                      {share(bath.kernelMean)}
                    </text>
                    <rect x={NAME} y={y + 29} width={Math.max(1, bath.bath * full)} height="7" fill="var(--ink)" />
                  </g>
                )
              })}
            </svg>
          )
        }}
      </ToWidth>
      <p className="field-hint">{say('kettle:wash-figure-marks')}</p>
    </Figure>
  )
}
