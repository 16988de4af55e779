/** The field sheet: the plot drawn to scale, what to sow, other corn near by, and lines for what the season shows. */
import type { Reckoned } from '@crib/science'
import { formatNumber, formatQuantity, type Words } from '@crib/wording'
import type { PlotBlock, PlotRow } from '../drawn-blocks.ts'
import { PLOT_RING_MM, PLOT_SIDE_MM } from '../layout/plot.ts'
import type { PaperDocument } from '../model.ts'
import { PAPER_MM } from '../sheets.ts'
import {
  blocksOf,
  brief,
  dateText,
  documentOf,
  factOf,
  type LabelledValue,
  type PrintSetting,
  type Said,
  wordAll,
} from './said.ts'

export interface Ground {
  /** Along and across the rows. [m] */
  readonly lengthM: number
  readonly widthM: number
  readonly rowsCount: number
  readonly perRowCount: number
  readonly rowSpacingM: number
  readonly inRowSpacingM: number
  readonly pattern: 'rows' | 'hills'
  /** The way the rows run, degrees clockwise from north; absent: no north is drawn. */
  readonly rowsBearingDeg?: number
}

export interface SheetNeighbour {
  readonly name: string
  /** Unit `M` or `Ft`. */
  readonly distance?: Reckoned
  /** From the plot towards it, degrees clockwise from north. */
  readonly bearingDeg?: number
  /** ISO 8601. */
  readonly halfTasselOn?: string
}

export interface FieldSheetInput {
  readonly plot: string
  /** ISO 8601. */
  readonly date: string
  readonly cornName?: string
  /** Seed first: what stays back of the harvest. */
  readonly seedLines: readonly Said[]
  readonly ground: Ground
  readonly amounts: readonly LabelledValue[]
  readonly neighbours?: readonly SheetNeighbour[]
  readonly notes?: readonly Said[]
  readonly record?: string
}

/** Scales of maps and plans, one of which fits any plot on a sheet. [1 to so many] */
const SCALES = [10, 20, 25, 50, 100, 200, 250, 500, 1000, 2000, 2500, 5000, 10_000, 20_000, 50_000, 100_000] as const
const DRAWING_MM = 64
const BARS_M = [0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000] as const
/** Hills closer than this on paper run into each other and are drawn as rows. [mm] */
const HILL_LEAST_MM = 2
/** Rows closer than this on paper would blacken it; their number stands in the head. [mm] */
const ROW_LEAST_MM = 0.6

/**
 * One page. Hills too small to tell apart at the scale are drawn as rows.
 *
 * @throws {RangeError} when `date` is no date, or the ground has no size.
 */
export function fieldSheet(input: FieldSheetInput, setting: PrintSetting, words: Words): PaperDocument {
  const { ground, neighbours = [] } = input
  const say = words.say
  const title = say('field:paper-title', { plot: input.plot })
  const rowNote = say('field:paper-row-note', { rows: ground.rowsCount, each: ground.perRowCount })
  const corn = input.cornName === undefined ? [] : [input.cornName]
  return documentOf(setting, words, {
    title,
    typePt: 11,
    fitPages: 1,
    blocks: blocksOf(
      {
        kind: 'head',
        title,
        lines: [[dateText(input.date), ...corn, rowNote].join('  ·  ')],
        strongLines: wordAll(input.seedLines, words),
        ...(input.record !== undefined && { qr: { content: input.record, sizeMm: 20 } }),
      },
      { kind: 'heading', level: 2, text: say('field:paper-ground') },
      plotBlock(input, setting, words),
      { kind: 'heading', level: 2, text: say('field:paper-sowing') },
      { kind: 'facts', columns: 4, facts: input.amounts.map((amount) => factOf(amount, words)) },
      { kind: 'heading', level: 2, text: say('field:paper-neighbours') },
      {
        kind: 'table',
        rowMm: 7,
        columns: [
          { title: say('field:paper-column-name'), share: 3, strong: true },
          { title: say('field:paper-column-distance'), share: 1.6 },
          { title: say('field:paper-column-bearing'), share: 1.3 },
          { title: say('field:paper-column-tassel'), share: 2 },
        ],
        rows: [...neighbours.map((one, index) => neighbourRow(one, index)), ['', '', '', '']],
      },
      { kind: 'heading', level: 2, text: say('field:paper-season') },
      {
        kind: 'write-ins',
        columns: 2,
        lines: SEASON.map((key) => ({ label: say(key) })),
      },
      wordAll(input.notes, words).map((text) => ({ kind: 'line', text, strength: 'small' }) as const),
    ),
  })
}

const SEASON = [
  'field:paper-sown',
  'field:paper-stand',
  'field:paper-tassel',
  'field:paper-silk',
  'field:paper-rogued',
  'field:paper-ears-counted',
  'field:paper-ripe',
  'field:paper-harvest',
  'field:paper-shelled',
] as const

function neighbourRow({ name, distance, bearingDeg, halfTasselOn }: SheetNeighbour, index: number): string[] {
  return [
    `${index + 1}  ${name}`,
    distance ? brief(distance) : '',
    bearingDeg === undefined ? '' : `${formatNumber(bearingDeg, 0)}°`,
    halfTasselOn === undefined ? '' : dateText(halfTasselOn),
  ]
}

/** The plot at the largest usual scale that leaves room for its words. */
export function plotBlock(
  { ground, neighbours = [] }: FieldSheetInput,
  setting: PrintSetting,
  words: Words,
): PlotBlock {
  const { lengthM, widthM, rowsBearingDeg } = ground
  if (!(lengthM > 0 && widthM > 0)) throw new RangeError(`a plot of ${lengthM} by ${widthM} m cannot be drawn`)
  const roomMm = PAPER_MM[setting.paper].width - 2 * (setting.marginMm ?? 11) - 2 * (PLOT_RING_MM + PLOT_SIDE_MM)
  const scale = SCALES.find((one) => (lengthM * 1000) / one <= roomMm && (widthM * 1000) / one <= DRAWING_MM)
  if (scale === undefined) throw new RangeError(`a plot of ${lengthM} by ${widthM} m is larger than a sheet shows`)
  const barM = BARS_M.findLast((one) => (one * 1000) / scale <= 45) ?? BARS_M[0]
  const sideText = (metres: number) => formatQuantity({ value: Number(metres.toFixed(1)), unit: 'M' })
  const bar = sideText(barM)
  return {
    kind: 'plot',
    lengthM,
    widthM,
    scale,
    rows: rowsOf(ground, scale),
    barM,
    lengthText: sideText(lengthM),
    widthText: sideText(widthM),
    scaleText: words.say(rowsBearingDeg === undefined ? 'field:paper-scale' : 'field:paper-scale-north', {
      scale,
      bar,
    }),
    northText: words.say('field:paper-north'),
    alt: words.say('field:paper-plot-alt', {
      rows: ground.rowsCount,
      length: sideText(lengthM),
      width: sideText(widthM),
    }),
    ...(rowsBearingDeg !== undefined && { northDeg: -rowsBearingDeg }),
    towards: rowsBearingDeg === undefined ? [] : towards(neighbours, rowsBearingDeg),
  }
}

/** Each plant or hill stands in the middle of its share of the ground. */
function rowsOf(
  { rowsCount, perRowCount, rowSpacingM, inRowSpacingM, pattern, lengthM, widthM }: Ground,
  scale: number,
) {
  if ((rowSpacingM * 1000) / scale < ROW_LEAST_MM) return []
  const isHills = pattern === 'hills' && (Math.min(inRowSpacingM, rowSpacingM) * 1000) / scale >= HILL_LEAST_MM
  return Array.from({ length: rowsCount }, (_, row): PlotRow => {
    const acrossM = Math.min((row + 0.5) * rowSpacingM, widthM)
    if (!isHills) return { acrossM }
    const hillsM = Array.from({ length: perRowCount }, (_, hill) => (hill + 0.5) * inRowSpacingM)
    return { acrossM, hillsM: hillsM.filter((alongM) => alongM <= lengthM) }
  })
}

/** Neighbours that lie nearly the same way share an arrow, so that no number covers another. */
function towards(neighbours: readonly SheetNeighbour[], rowsBearingDeg: number): PlotBlock['towards'] {
  const SAME_WAY_DEG = 25
  const groups: { deg: number; marks: number[] }[] = []
  for (const [index, { bearingDeg }] of neighbours.entries()) {
    if (bearingDeg === undefined) continue
    const deg = bearingDeg - rowsBearingDeg
    const apart = (other: number) => Math.abs(((deg - other + 540) % 360) - 180)
    const near = groups.find((group) => apart(group.deg) < SAME_WAY_DEG)
    if (near) near.marks.push(index + 1)
    else groups.push({ deg, marks: [index + 1] })
  }
  return groups.map(({ deg, marks }) => ({ deg, mark: marks.join(', ') }))
}
