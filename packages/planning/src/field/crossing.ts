/**
 * How much of a plot's seed other corn may have fathered, by distance and by days, with a band as wide as the studies
 * leave it. Leaves out: wind as a number (no study seen gives one), and any promise.
 */
import {
  CROSSING_DISTANCE_M,
  crossingAtDistance,
  crossingTogetherFraction,
  overlapDays,
  shedLagDays,
  shedMeetingFraction,
  shedWindow,
  silkWindow,
} from '@crib/science'

export interface NeighbourCorn {
  readonly name: string
  /** Nearest plant to nearest plant. [m] */
  readonly distanceM: number
  /** From the plot towards it, clockwise from north. [°] */
  readonly bearingDeg?: number
  /** Day half its tassels had opened, as a day number. */
  readonly halfTasselDay?: number
  /** Whether its pollen leaves a mark on this corn's kernels the same year; absent: not told. */
  readonly wouldShow?: boolean
}

/** What would be changed. */
export interface Moved {
  /** Taken from ears farther in, behind borders, or a plot farther off. [m] */
  readonly fartherM?: number
  /** Every neighbour at least so far. [m] */
  readonly atLeastM?: number
  /** Flowering moved so many days further apart. [days] */
  readonly apartDays?: number
}

export interface Share {
  /** [fraction of kernels] */
  readonly value: number
  readonly low: number
  readonly high: number
}

export interface NeighbourShare extends Share {
  readonly neighbour: NeighbourCorn
  /** Null while a date is missing: then it is taken to shed at the same time. [days] */
  readonly lagDays: number | null
  /** Days of this plot's silk on which it sheds. [days] */
  readonly meetDays: number | null
}

/** A day half of a stand flowers is told by eye. Project rule. [days] */
const BY_EYE_DAYS = 3
/** Tillers, late plants and a second sowing shed beyond the window. Project rule. [days] */
const LATE_PLANTS_DAYS = 7
/** Of a field, plants that shed out of season: neither middle nor high end falls below them. Project rule. [fraction] */
const OUT_OF_SEASON = { middle: 0.001, high: 0.01 } as const

/** Share that one neighbour may father. @throws {ValidRangeError} nearer than 1 m or farther than 3200 m. */
export function neighbourShare(
  neighbour: NeighbourCorn,
  ownHalfSilkDay: number | undefined,
  { fartherM = 0, atLeastM = 0, apartDays = 0 }: Moved = {},
): NeighbourShare {
  const distanceM = Math.min(Math.max(neighbour.distanceM + fartherM, atLeastM), CROSSING_DISTANCE_M.max)
  const { value, low, high } = crossingAtDistance(distanceM)
  const { halfTasselDay } = neighbour
  const isKnown = halfTasselDay !== undefined && ownHalfSilkDay !== undefined
  const lagDays = isKnown ? shedLagDays({ neighbourHalfTasselDay: halfTasselDay, ownHalfSilkDay }) : null
  const apart = Math.min(Math.abs(lagDays ?? 0) + apartDays, 300)
  return {
    neighbour,
    value: value * Math.max(shedMeetingFraction(apart), OUT_OF_SEASON.middle),
    low: low * shedMeetingFraction(apart + BY_EYE_DAYS),
    high: high * Math.max(shedMeetingFraction(Math.max(0, apart - LATE_PLANTS_DAYS)), OUT_OF_SEASON.high),
    lagDays,
    meetDays: isKnown ? overlapDays(shedWindow(halfTasselDay), silkWindow(ownHalfSilkDay)) : null,
  }
}

/** All neighbours together. */
export function shareTogether(shares: readonly Share[]): Share {
  return {
    value: crossingTogetherFraction(shares.map(({ value }) => value)),
    low: crossingTogetherFraction(shares.map(({ low }) => low)),
    high: crossingTogetherFraction(shares.map(({ high }) => high)),
  }
}

/** True when the wind comes from within a quarter turn's half of the neighbour's side. */
export function isUpwind(bearingDeg: number, windFromDeg: number): boolean {
  const apart = Math.abs(((bearingDeg - windFromDeg + 540) % 360) - 180)
  return apart <= 45
}
