/** A piece is a strip of a sheet that is never cut. Blocks become pieces; pieces become pages. */
import type { Ink } from './ink.ts'
import { LARGE_BODY_PT, LARGE_LEAST_PT } from './large-print.ts'
import { type Measure, SMALLEST_PT } from './text.ts'

export interface Piece {
  readonly height: number
  /** White above it, unless it opens a page. */
  readonly gapBefore: number
  /** True for a heading: it never ends a page. */
  readonly keepWithNext?: true
  /** Printed again above this piece when it opens a page: the head row of a table. */
  readonly repeat?: Piece
  ink(x: number, y: number): Ink[]
}

export interface TypeScale {
  readonly body: number
  readonly small: number
  readonly h3: number
  readonly h2: number
  readonly title: number
  /** Line height of running text, as a multiple of its size. */
  readonly leading: number
  /** The white between blocks. */
  readonly gap: number
}

/** Sizes of large print: headings stand out by weight more than by size. [pt] */
export const LARGE_SCALE: TypeScale = {
  body: LARGE_BODY_PT,
  small: LARGE_LEAST_PT,
  h3: 19,
  h2: 22,
  title: 30,
  leading: 1.2,
  gap: 13,
}

/** Sizes that follow from the running text's. [pt] */
export function typeScale(bodyPt: number, isTight = false): TypeScale {
  return {
    body: bodyPt,
    small: Math.max(SMALLEST_PT, bodyPt - 1.5),
    h3: bodyPt + 1,
    h2: bodyPt * 1.4,
    title: bodyPt * 2.2,
    leading: isTight ? 1.1 : 1.18,
    gap: bodyPt * (isTight ? 0.55 : 0.75),
  }
}

/** What every block's layout is given. */
export interface Room {
  readonly width: number
  readonly type: TypeScale
  /** True when type alone could not make the sheet fit: cautions of a step then run on, and white is spared. */
  readonly isTight: boolean
  /** True where a table too wide for its words is set row by row instead. */
  readonly isLarge?: true
  readonly measure: Measure
}

/** Pieces one under the other, as one. */
export function stack(pieces: readonly Piece[]): Piece {
  const tops: number[] = []
  let height = 0
  for (const [index, piece] of pieces.entries()) {
    if (index > 0) height += piece.gapBefore
    tops.push(height)
    height += piece.height
  }
  return {
    height,
    gapBefore: pieces[0]?.gapBefore ?? 0,
    ink: (x, y) => pieces.flatMap((piece, index) => piece.ink(x, y + (tops[index] ?? 0))),
  }
}
