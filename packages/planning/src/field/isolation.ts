/** Will it cross? The expected share of off kernels with its band, and what each remedy would change. */
import {
  borderRows,
  CROSSING_DISTANCE_M,
  CURVE_DISTANCE_M,
  convert,
  type Reckoned,
  type Rounding,
  type Sentence,
} from '@crib/science'
import { nearest, type Reckoning, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { isUpwind, type Moved, type NeighbourCorn, neighbourShare, type Share, shareTogether } from './crossing.ts'

export interface IsolationInput {
  readonly neighbours: readonly NeighbourCorn[]
  /** Day half of this plot's plants showed silk, as a day number. */
  readonly ownHalfSilkDay?: number
  /** Along and across the rows. [m] */
  readonly plotLengthM?: number
  readonly plotWidthM?: number
  readonly rowSpacingM?: number
  readonly borderRowsCount?: number
  /** Where the wind mostly comes from at that time, clockwise from north. [°] */
  readonly windFromDeg?: number
}

export interface Isolation {
  readonly values: readonly Reckoned[]
  /** What each remedy would leave, in words and as a share. */
  readonly changes: readonly { readonly said: Sentence; readonly share: Reckoned }[]
  readonly reasons: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

export type IsolationOutcome =
  | ({ readonly kind: 'told' } & Isolation)
  | { readonly kind: 'refused'; readonly refused: string; readonly why: readonly Sentence[] }

/** 660 ft: the distance of certified open-pollinated corn.  cfr-7-201-76 */
export const CERTIFIED_DISTANCE_FT = 660
const EAR_KERNELS = 300
/** Shares are shown to a hundredth of a percent. [fraction] */
const SMALLEST_SHOWN = 0.0001
const BORDER_ROWS_TRIED = 8
const ROW_SPACING_M = 0.9
const DAYS_APART = [14, 30] as const
const SOURCES = ['baltazar-2015', 'goggi-2007', 'jemison-vayda-2001', 'china-isolation-model'] as const
const TIME_SOURCES = [...SOURCES, 'extension-corn-flowering'] as const

export function isolation(input: IsolationInput): IsolationOutcome {
  const { neighbours, ownHalfSilkDay, windFromDeg } = input
  const beside = neighbours.find(({ distanceM }) => !(distanceM >= CROSSING_DISTANCE_M.min))
  if (neighbours.length === 0) return { kind: 'refused', refused: 'no-neighbours', why: [say('field:no-neighbours')] }
  if (beside) {
    const why = [say('field:distance-zero', { name: beside.name, given: String(beside.distanceM) })]
    return { kind: 'refused', refused: 'distance-zero', why }
  }
  const near = neighbours.filter(({ distanceM }) => distanceM <= CROSSING_DISTANCE_M.max)
  const far = neighbours.filter(({ distanceM }) => distanceM > CROSSING_DISTANCE_M.max)
  const shares = near.map((one) => neighbourShare(one, ownHalfSilkDay))
  const all = shareTogether(shares)
  const moved = (how: Moved): Share => shareTogether(near.map((one) => neighbourShare(one, ownHalfSilkDay, how)))

  const tried = remedies(input).map(({ name, said, how }) => ({
    said,
    share: share(`${name}:remedyFraction`, moved(how)),
  }))
  return {
    kind: 'told',
    changes: tried,
    values: [
      share('offKernelFraction', all),
      fixed({ ...perEar(all), id: 'offKernelsInEar', unit: 'Count', rounding: up(0.1) }),
      ...shares.map(({ neighbour, ...one }) => share(`${plain(neighbour.name)}:neighbourFraction`, one)),
      ...tried.map((one) => one.share),
    ],
    reasons: [
      bandSentence(all),
      ...shares.map(({ neighbour: { name }, lagDays, meetDays }) =>
        lagDays === null
          ? say('field:dates-missing', { name })
          : say('field:dates-compared', {
              name,
              days: Math.round(Math.abs(lagDays)),
              side: lagDays < 0 ? 'earlier' : 'later',
              meet: Math.round(meetDays ?? 0),
            }),
      ),
      ...borderRule(input, near),
      say('field:colour-shows'),
      ...neighbours.flatMap(({ name, wouldShow }) =>
        wouldShow === undefined ? [] : [say(wouldShow ? 'field:would-show' : 'field:would-not-show', { name })],
      ),
    ],
    warnings: [
      say('field:never-none'),
      say('field:small-beside-large'),
      ...(near.some(({ distanceM }) => distanceM > CURVE_DISTANCE_M.max) ? [say('field:beyond-curve')] : []),
      ...far.map(({ name }) => say('field:beyond-measured', { name })),
      ...near.flatMap(({ name, bearingDeg }) =>
        bearingDeg !== undefined && windFromDeg !== undefined && isUpwind(bearingDeg, windFromDeg)
          ? [say('field:upwind', { name })]
          : [],
      ),
    ],
  }
}

interface Remedy {
  readonly name: string
  readonly said: Sentence
  readonly how: Moved
}

/** Half the lesser side lies between the middle of a plot and its edge. */
function remedies(input: IsolationInput): Remedy[] {
  const { plotLengthM, plotWidthM, rowSpacingM = ROW_SPACING_M, borderRowsCount = BORDER_ROWS_TRIED } = input
  const middleM =
    plotLengthM === undefined || plotWidthM === undefined ? undefined : Math.min(plotLengthM, plotWidthM) / 2
  return [
    {
      name: `${CERTIFIED_DISTANCE_FT} ft away`,
      said: say('field:remedy-distance', { distance: { value: CERTIFIED_DISTANCE_FT, unit: 'Ft' } }),
      how: { atLeastM: convert(CERTIFIED_DISTANCE_FT, 'Ft', 'M') },
    },
    ...DAYS_APART.map((days) => ({
      name: `${days} days further apart`,
      said: say('field:remedy-days', { days }),
      how: { apartDays: days },
    })),
    {
      name: `${borderRowsCount} border rows`,
      said: say('field:remedy-borders', { rows: borderRowsCount }),
      how: { fartherM: borderRowsCount * rowSpacingM },
    },
    ...(middleM === undefined
      ? []
      : [{ name: 'seed from the middle', said: say('field:remedy-middle'), how: { fartherM: middleM } }]),
    ...(middleM === undefined
      ? []
      : [
          {
            name: 'the middle, and 14 days further apart',
            said: say('field:remedy-middle-days', { days: DAYS_APART[0] }),
            how: { fartherM: middleM, apartDays: DAYS_APART[0] },
          },
        ]),
  ]
}

/** What certification rules would ask of a field of this size, where they name one. */
function borderRule({ plotLengthM, plotWidthM }: IsolationInput, near: readonly NeighbourCorn[]): Sentence[] {
  if (plotLengthM === undefined || plotWidthM === undefined || near.length === 0) return []
  const nearestFt = convert(Math.min(...near.map(({ distanceM }) => distanceM)), 'M', 'Ft')
  const rule = borderRows(nearestFt, convert(plotLengthM * plotWidthM, 'M2', 'Acre'))
  switch (rule.kind) {
    case 'found':
      return [say('field:border-rule', { count: rule.rowsCount })]
    case 'field-not-in-table':
      return [say('field:border-rule-no-row')]
    case 'nearer-than-table':
      return [say('field:border-rule-nearer', { nearest: { value: rule.nearestFt, unit: 'Ft' } })]
  }
}

function share(id: string, { value, low, high }: Share): Reckoned {
  return fixed({ id, value, low, high, unit: 'Fraction', rounding: roundingFor(value) })
}

function perEar({ value, low, high }: Share): Share {
  return { value: value * EAR_KERNELS, low: low * EAR_KERNELS, high: high * EAR_KERNELS }
}

function fixed(reckoning: Omit<Reckoning, 'basis'>): Reckoned {
  return reckon({ ...reckoning, basis: 'computed', sourceKeys: TIME_SOURCES })
}

/** A small share is rounded up to the last digit shown: never to nothing. Project rule. */
function roundingFor(value: number): Rounding {
  return value >= 0.01 ? nearest(0.001) : up(SMALLEST_SHOWN)
}

/** Two digits: more would say more than is known. */
function bandSentence({ value, low, high }: Share): Sentence {
  const percent = (x: number) => (x < SMALLEST_SHOWN ? 0 : Number((100 * x).toPrecision(2)))
  if (value < SMALLEST_SHOWN) return say('field:crossing-band-small', { high: Math.max(0.01, percent(high)) })
  return say('field:crossing-band', { middle: percent(value), low: percent(low), high: percent(high) })
}

/** A colon parts a row from its output's name. */
function plain(name: string): string {
  return name.replaceAll(':', ' ').trim()
}
