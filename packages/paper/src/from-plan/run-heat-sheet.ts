/** A keeper's own run on a sheet: temperatures measured and modelled, and what departed. No total is made of them. */
import type { RunHeat } from '@crib/planning'
import type { Sentence } from '@crib/science'
import { formatQuantity, type Words } from '@crib/wording'
import { blocksOf, dateText, documentOf, type PrintSetting, wordAll } from '../documents/said.ts'
import type { CurvesBlock, DrawnLine } from '../drawn-blocks.ts'
import type { Block, PaperDocument } from '../model.ts'
import { temperatureAxes } from './temperature-axes.ts'

/** A reading of every so many minutes is drawn. [min] */
const EVERY_MIN = 1

/** As many pages as the run was eventful. */
export function runHeatSheet(heat: RunHeat, setting: PrintSetting, words: Words): PaperDocument {
  const { say } = words
  const { begun } = heat.run
  const title = say('heat:paper-run-title', { code: begun.loadCode })
  const about = say('heat:paper-run-about', {
    canner: begun.cannerName,
    count: begun.jarCount,
    size: say(`canner:run-screen-${begun.jarSize}`).toLowerCase(),
  })
  return documentOf(setting, words, {
    title,
    typePt: 11,
    fitPages: 1,
    blocks: blocksOf(
      {
        kind: 'head',
        title,
        lines: [[dateText(heat.onDay), about].join('  ·  ')],
        strongLines: [say('heat:does-not-change-directions')],
      },
      heat.measured.length > 0 ? curves(heat, words) : undefined,
      wordAll(heat.assumed, words).map((text) => ({ kind: 'line', text, strength: 'small' }) as const),
      heat.marks.length > 0 ? marksTable(heat, words) : undefined,
      { kind: 'heading', level: 2, text: say('paper:log-departures') },
      departures(heat, words),
      { kind: 'line', text: say('heat:no-total'), strength: 'small' },
    ),
  })
}

const STROKES = { canner: 'heavy', jar: 'plain', loose: 'dotted', solid: 'dashed' } as const

function curves({ measured, modelled, marks, halfHours }: RunHeat, words: Words): CurvesBlock {
  const { say } = words
  const lines: DrawnLine[] = [
    ...measured.map(({ column, role, points }) => ({
      name: column === null ? say('heat:paper-by-gauge') : say('heat:paper-measured', { column }),
      stroke: STROKES[role],
      points: thinned(points),
    })),
    ...modelled.map(({ id, points }) => ({
      name: say(`heat:modelled-${id}`),
      stroke: STROKES[id],
      points: thinned(points),
    })),
  ]
  const times = lines.flatMap(({ points }) => points.map(([atMin]) => atMin))
  return {
    kind: 'curves',
    heightMm: 74,
    across: {
      min: Math.min(...times),
      max: Math.max(...times),
      ticks: halfHours.map(({ atMin, clock }) => ({ at: atMin, text: formatQuantity(clock) })),
    },
    ...temperatureAxes(),
    lines,
    marks: marks.map(({ atMin }) => atMin),
    alt: say('heat:paper-run-alt', { count: marks.length }),
  }
}

/** Turns stay; what lies between two of them within a minute goes. */
function thinned(points: readonly { readonly atMin: number; readonly value: number }[]) {
  let lastMin = Number.NEGATIVE_INFINITY
  return points.flatMap(({ atMin, value }, index): [number, number][] => {
    const isEnd = index === points.length - 1
    if (!isEnd && atMin - lastMin < EVERY_MIN) return []
    lastMin = atMin
    return [[atMin, value]]
  })
}

function marksTable({ marks, measured }: RunHeat, words: Words): Block {
  const { say } = words
  const named = measured.map(({ column }) => (column === null ? say('heat:paper-by-gauge') : column))
  return {
    kind: 'table',
    columns: [
      { title: say('heat:paper-number'), share: 0.6 },
      { title: say('paper:column-clock'), share: 1, strong: true },
      { title: say('paper:column-what'), share: 3.2 },
      ...named.map((title) => ({ title, share: 2, align: 'right' as const })),
    ],
    rows: marks.map(({ clock, type, psi, measuredC }, index) => [
      String(index + 1),
      formatQuantity(clock),
      [
        words.sentence({ key: `heat:mark-name-${type}` }),
        ...(psi === undefined ? [] : [formatQuantity({ value: psi, unit: 'PsiGauge' })]),
      ].join(', '),
      ...measuredC.map((celsius) =>
        celsius === null ? '' : formatQuantity({ value: Math.round(celsius * 10) / 10, unit: 'C' }),
      ),
    ]),
  }
}

function departures({ departures: said, beside }: RunHeat, words: Words): Block[] {
  const share = (fraction: number) => ({ value: Number(fraction.toFixed(2)), unit: 'Fraction' }) as const
  const cost: Sentence[] = beside
    ? [
        { key: 'guidance:restart-rule' },
        {
          key: 'heat:found-beside',
          params: { loose: share(beside.freeBrineFraction), solid: share(beside.packedSolidFraction) },
        },
      ]
    : []
  const texts = wordAll([...said, ...cost], words)
  return texts.length > 0
    ? texts.map((text) => ({ kind: 'line', text }) as const)
    : [{ kind: 'line', text: words.say('paper:log-no-departures') }]
}
