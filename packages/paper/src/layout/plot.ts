/** Layout of a plot drawn to scale: rows as lines or hills as rings, its sides, a bar of scale, north and neighbours. */
import type { PlotBlock } from '../drawn-blocks.ts'
import { mmToPt } from '../sheets.ts'
import { BLACK, DARK, HAIR, type Ink } from './ink.ts'
import type { Piece, Room } from './piece.ts'
import { setText } from './text.ts'

/** Round the plot, for the arrows. [mm] */
export const PLOT_RING_MM = 11
/** Beside the ring, for the words of the short side. [mm] */
export const PLOT_SIDE_MM = 24

/** From the edge of the plot to an arrow's head, and from there to its mark. */
const ARROW_PT = 14
const MARK_GAP_PT = 2

/** @throws {RangeError} when the plot at its scale is wider than the sheet. */
export function plotPiece(block: PlotBlock, { width, type, measure }: Room): Piece {
  const perM = mmToPt(1000 / block.scale)
  const long = block.lengthM * perM
  const across = block.widthM * perM
  const ring = mmToPt(PLOT_RING_MM)
  const side = mmToPt(PLOT_SIDE_MM)
  if (long + 2 * (ring + side) > width + 0.01) {
    throw new RangeError(`a plot of ${block.lengthM} m at 1 to ${block.scale} is wider than the sheet`)
  }
  const marks = block.towards.map(({ deg, mark }) => {
    const word = setText(mark, width, { face: 'text-strong', sizePt: type.small }, measure)
    const wide = measure.width(mark, 'text-strong', type.small)
    const angle = (deg * Math.PI) / 180
    // Half of the word's box, seen along the arrow: its middle lies that far beyond the head.
    const half = (Math.abs(Math.cos(angle)) * wide + Math.abs(Math.sin(angle)) * word.height) / 2
    return { deg, word, wide, atPt: ARROW_PT + MARK_GAP_PT + half, reachPt: ARROW_PT + 2 * (MARK_GAP_PT + half) }
  })
  // In large print the marks reach beyond the ring, and the words of the sides make room.
  const clear = Math.max(ring, ...marks.map(({ reachPt }) => reachPt))
  const small = { face: 'text', sizePt: type.small, grey: DARK } as const
  const strong = { face: 'text-strong', sizePt: type.body } as const
  const over = setText(block.lengthText, width - 2 * side, { ...strong, align: 'centre' }, measure)
  const beside = setText(block.widthText, (width - long) / 2 - clear, strong, measure)
  const barWords = setText(block.scaleText, width - block.barM * perM - mmToPt(4), small, measure)
  const barHeight = Math.max(barWords.height, mmToPt(5))
  const body = Math.max(across, beside.height)
  const top = over.height
  return {
    height: top + body + 2 * clear + barHeight,
    gapBefore: type.gap,
    ink: (x, y) => {
      const left = x + (width - long) / 2
      const high = y + top + clear + (body - across) / 2
      const foot = y + top + 2 * clear + body
      const middle = { x: left + long / 2, y: high + across / 2 }
      return [
        ...over.ink(x + side, y),
        ...beside.ink(left + long + clear, middle.y - beside.height / 2),
        { ink: 'rect', box: { x: left, y: high, width: long, height: across }, strokePt: 1.2 },
        ...block.rows.flatMap(({ acrossM, hillsM }): Ink[] => {
          const at = high + acrossM * perM
          if (!hillsM) return [line([left, at], [left + long, at], 0.5, HAIR)]
          return hillsM.map((alongM) => ({
            ink: 'circle',
            x: left + alongM * perM,
            y: at,
            radius: Math.min(2.2, perM * 0.25),
            strokePt: 0.6,
          }))
        }),
        ...(block.northDeg === undefined ? [] : northInk(block, x, y + top)),
        ...marks.flatMap(({ deg, word, wide, atPt }) => {
          const from = edgeTowards(middle, { long, across }, deg)
          const at = step(from, deg, atPt)
          return [...arrow(from, step(from, deg, ARROW_PT)), ...word.ink(at.x - wide / 2, at.y - word.height / 2)]
        }),
        ...bar(x, foot, block.barM * perM),
        ...barWords.ink(x + block.barM * perM + mmToPt(4), foot),
      ]
    },
  }

  function northInk({ northDeg = 0, northText }: PlotBlock, x: number, y: number): Ink[] {
    const centre = { x: x + side / 2, y: y + ring + mmToPt(6) }
    const word = setText(northText, side, { face: 'text-strong', sizePt: type.small, align: 'centre' }, measure)
    return [
      ...arrow(step(centre, northDeg, -mmToPt(5)), step(centre, northDeg, mmToPt(5))),
      ...word.ink(x, centre.y + mmToPt(6)),
    ]
  }
}

interface Point {
  readonly x: number
  readonly y: number
}

/** From a point, so far in a direction: degrees clockwise from the right of the sheet. */
function step({ x, y }: Point, deg: number, far: number): Point {
  const angle = (deg * Math.PI) / 180
  return { x: x + Math.cos(angle) * far, y: y + Math.sin(angle) * far }
}

/** Where a ray from the middle leaves the plot. */
function edgeTowards(middle: Point, { long, across }: { long: number; across: number }, deg: number): Point {
  const angle = (deg * Math.PI) / 180
  const cos = Math.abs(Math.cos(angle))
  const sin = Math.abs(Math.sin(angle))
  const far = Math.min(cos > 1e-9 ? long / 2 / cos : Infinity, sin > 1e-9 ? across / 2 / sin : Infinity)
  return step(middle, deg, far)
}

function line(from: readonly [number, number], to: readonly [number, number], widthPt: number, grey = BLACK): Ink {
  return { ink: 'line', points: [from, to], widthPt, grey }
}

function arrow(from: Point, to: Point): Ink[] {
  const deg = (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI
  const left = step(to, deg + 150, 5)
  const right = step(to, deg - 150, 5)
  return [
    line([from.x, from.y], [to.x, to.y], 1.2),
    {
      ink: 'line',
      points: [
        [left.x, left.y],
        [to.x, to.y],
        [right.x, right.y],
      ],
      widthPt: 1.2,
      grey: BLACK,
    },
  ]
}

/** A bar with a tick at each end. */
function bar(x: number, y: number, long: number): Ink[] {
  const middle = y + mmToPt(2.5)
  const tick = mmToPt(1.5)
  return [
    line([x, middle], [x + long, middle], 2),
    line([x, middle - tick], [x, middle + tick], 1),
    line([x + long, middle - tick], [x + long, middle + tick], 1),
  ]
}
