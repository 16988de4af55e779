/**
 * RecipesFigure: printed recipes by alkali on the corn and strength of the pot, both in tens, with the keeper's own
 * pot-loads and the dose asked for. Each alkali has a mark of its own; a table with the same stands beside it.
 * Props: own (pot-loads), asked? (the dose on this page).
 */
import { type OwnStrength, type PrintedRecipe, printedRecipes } from '@crib/planning'
import type { Reckoned } from '@crib/science'
import { formatReckoned } from '@crib/wording'
import { ToWidth } from '../../../drawings/to-width.tsx'
import { Figure, Ledger } from '../../../parts-of-the-sheet/index.ts'
import { useWords } from '../../../words.tsx'
import '../../../walk/walk.css'
import './marks.css'

const HEIGHT = 380
const LEFT = 62
const RIGHT = 14
const TOP = 34
const BOTTOM = 52
/** Every printed recipe lies between. */
const X_TENS = [-2, 0] as const
const Y_TENS = [-2, 1] as const

type Shape = PrintedRecipe['alkali'] | 'own' | 'asked'

interface Point {
  readonly key: string
  readonly shape: Shape
  readonly eqPerKg: number
  readonly eqPerL: number
  readonly name?: string
}

export interface AskedDose {
  readonly eqPerKg: number
  readonly eqPerL: number
}

export function RecipesFigure({
  own,
  asked,
}: {
  readonly own: readonly OwnStrength[]
  readonly asked: AskedDose | null
}) {
  const { say } = useWords()
  const recipes = printedRecipes()
  const alkalis = [...new Set(recipes.map(({ alkali }) => alkali))]
  const points: readonly Point[] = [
    ...recipes.flatMap(({ id, alkali, eqPerKg, eqPerL }) =>
      eqPerL ? [{ key: id, shape: alkali, eqPerKg: eqPerKg.value, eqPerL: eqPerL.value }] : [],
    ),
    ...own.flatMap(({ batchId, title, potLoad, eqPerKg, eqPerL }) =>
      eqPerL
        ? [
            {
              key: `${batchId}${potLoad}`,
              shape: 'own' as const,
              eqPerKg: eqPerKg.value,
              eqPerL: eqPerL.value,
              name: title,
            },
          ]
        : [],
    ),
    ...(asked ? [{ key: 'asked', shape: 'asked' as const, ...asked }] : []),
  ]
  const number = (reckoned: Reckoned | undefined) => ({
    number: reckoned ? formatReckoned(reckoned, 'alone') : say('kettle:dose-no-water-printed'),
  })
  const head = [
    say('kettle:dose-column-recipe'),
    say('shell:alkali-kind'),
    say('kettle:dose-column-on-corn'),
    say('kettle:dose-column-in-pot'),
    say('kettle:dose-column-time'),
  ]
  const rows = [
    ...own.map(({ batchId, title, potLoad, eqPerKg, eqPerL }) => ({
      key: `${batchId}${potLoad}`,
      cells: [
        say('kettle:dose-own-row', { title, number: potLoad }),
        say('kettle:dose-shape-own'),
        number(eqPerKg),
        number(eqPerL),
        '',
      ],
    })),
    ...recipes.map(({ id, name, alkali, eqPerKg, eqPerL, time }) => ({
      key: id,
      cells: [
        name,
        say(`kettle:dose-shape-${alkali as Exclude<typeof alkali, 'none'>}`),
        number(eqPerKg),
        number(eqPerL),
        time,
      ],
    })),
  ]
  const shapes: readonly Shape[] = [
    ...alkalis,
    ...(own.length > 0 ? (['own'] as const) : []),
    ...(asked ? (['asked'] as const) : []),
  ]
  return (
    <Figure
      title={say('kettle:dose-figure')}
      table={<Ledger caption={say('kettle:dose-figure')} head={head} rows={rows} />}
    >
      <ToWidth>{(width) => <Picture points={points} width={width} />}</ToWidth>
      <ul className="key-of-marks">
        {shapes.map((shape) => (
          <li key={shape}>
            <svg viewBox="0 0 24 24" width="24" height="24" aria-hidden="true" focusable="false">
              <Mark shape={shape} x={12} y={12} />
            </svg>
            {say(`kettle:dose-shape-${shape as Exclude<Shape, 'none'>}`)}
          </li>
        ))}
      </ul>
    </Figure>
  )
}

function Picture({ points, width }: { readonly points: readonly Point[]; readonly width: number }) {
  const { say } = useWords()
  const along = (value: number, [from, to]: readonly [number, number]) => (Math.log10(value) - from) / (to - from)
  const x = (eqPerL: number) => LEFT + along(eqPerL, X_TENS) * (width - LEFT - RIGHT)
  const y = (eqPerKg: number) => HEIGHT - BOTTOM - along(eqPerKg, Y_TENS) * (HEIGHT - TOP - BOTTOM)
  const held = (value: number, [from, to]: readonly [number, number]) => Math.min(10 ** to, Math.max(10 ** from, value))
  return (
    <svg
      className="trace"
      viewBox={`0 0 ${width} ${HEIGHT}`}
      role="img"
      aria-label={say('kettle:dose-figure-alt', { count: points.length })}
    >
      <text x={4} y={18} className="trace-strong">
        {say('kettle:dose-axis-on-corn')}
      </text>
      <text x={width - RIGHT} y={HEIGHT - 6} textAnchor="end" className="trace-strong">
        {say('kettle:dose-axis-in-pot')}
      </text>
      {ticks(X_TENS).map((tick) => (
        <g key={tick}>
          <line x1={x(tick)} x2={x(tick)} y1={TOP} y2={HEIGHT - BOTTOM} stroke="var(--rule)" strokeWidth="1" />
          <text x={x(tick)} y={HEIGHT - BOTTOM + 20} textAnchor="middle">
            {tick}
          </text>
        </g>
      ))}
      {ticks(Y_TENS).map((tick) => (
        <g key={tick}>
          <line x1={LEFT} x2={width - RIGHT} y1={y(tick)} y2={y(tick)} stroke="var(--rule)" strokeWidth="1" />
          <text x={LEFT - 8} y={y(tick) + 5} textAnchor="end">
            {tick}
          </text>
        </g>
      ))}
      <path d={`M${LEFT} ${TOP}V${HEIGHT - BOTTOM}H${width - RIGHT}`} fill="none" stroke="var(--ink)" strokeWidth="2" />
      {points.map(({ key, shape, eqPerKg, eqPerL }) => (
        <Mark key={key} shape={shape} x={x(held(eqPerL, X_TENS))} y={y(held(eqPerKg, Y_TENS))} />
      ))}
    </svg>
  )
}

/** One mark for each kind, told apart by its outline and not by a colour. */
function Mark({ shape, x, y }: { readonly shape: Shape; readonly x: number; readonly y: number }) {
  const line = { fill: 'var(--paper)', stroke: 'var(--ink)', strokeWidth: 2.5 }
  switch (shape) {
    case 'ash':
    case 'none':
      return <circle cx={x} cy={y} r="7" {...line} />
    case 'calcium-hydroxide':
      return <rect x={x - 6} y={y - 6} width="12" height="12" {...line} />
    case 'sodium-hydroxide':
      return <path d={`M${x} ${y - 8}l8 14h-16z`} {...line} />
    case 'baking-soda':
      return <path d={`M${x} ${y - 8}l8 8-8 8-8-8z`} {...line} />
    case 'own':
      return <circle cx={x} cy={y} r="8" fill="var(--ink)" />
    case 'asked':
      return (
        <path
          d={`M${x - 9} ${y - 9}l18 18M${x + 9} ${y - 9}l-18 18`}
          fill="none"
          stroke="var(--handle)"
          strokeWidth="4"
        />
      )
  }
}

function ticks([from, to]: readonly [number, number]): readonly number[] {
  return Array.from({ length: to - from + 1 }, (_, index) => Number((10 ** (from + index)).toPrecision(2)))
}
