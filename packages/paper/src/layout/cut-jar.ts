/** Layout of a jar cut down its middle: greys by temperature, kernels as rings where they lie loose, and the scale below. */
import type { CutJarBlock } from '../drawn-blocks.ts'
import { mmToPt } from '../sheets.ts'
import { BLACK, DARK, HAIR, type Ink } from './ink.ts'
import type { Piece, Room } from './piece.ts'
import { setText } from './text.ts'

/** Grey of the coolest and of the hottest step: apart from black ink and from white paper. */
const DARKEST = 0.2
const LIGHTEST = 0.97
/** Neck and lid, as parts of the jar's height. */
const NECK = 0.1
const LID = 0.045
/** A kernel, as a part of the jar's width. */
const KERNEL = 0.085

export function greyOfStep(step: number, count: number): number {
  return count < 2 ? LIGHTEST : DARKEST + ((LIGHTEST - DARKEST) * step) / (count - 1)
}

export function cutJarPiece(block: CutJarBlock, { width, type, measure }: Room): Piece {
  const { ringsM, levelsM, scale } = block
  const small = { face: 'text', sizePt: type.small, grey: DARK } as const
  const radiusM = ringsM.at(-1)!
  const heightM = levelsM.at(-1)! - levelsM[0]!
  const perM = Math.min(mmToPt(block.heightMm) / (heightM * (1 + NECK + LID)), width / (2 * radiusM))
  const jarWidth = 2 * radiusM * perM
  const bodyHeight = heightM * perM
  const jarHeight = bodyHeight * (1 + NECK + LID)
  const box = type.small * 1.1
  const texts = scale.map((text) => setText(text, width - box - 6, small, measure))
  const rowHeights = texts.map(({ height }) => Math.max(height, box) + 1)
  return {
    height: jarHeight + 8 + rowHeights.reduce((total, one) => total + one, 0),
    gapBefore: type.gap,
    ink: (x, y) => {
      const left = x + (width - jarWidth) / 2
      const bodyTop = y + bodyHeight * (NECK + LID)
      const scaleLeft = x + Math.max(0, (width - box - 6 - Math.max(...texts.map(({ widest }) => widest))) / 2)
      let rowY = y + jarHeight + 8
      // Hottest first, as the eye looks for it.
      const rows = scale.map((_, i) => scale.length - 1 - i)
      return [
        ...cells(block, left + jarWidth / 2, bodyTop + bodyHeight, perM),
        ...(block.isLoose ? kernels(left, bodyTop, jarWidth, bodyHeight) : []),
        { ink: 'rect', box: { x: left, y: bodyTop, width: jarWidth, height: bodyHeight }, strokePt: 1.4 },
        outline(left + jarWidth * 0.1, y + bodyHeight * LID, jarWidth * 0.8, bodyHeight * NECK),
        {
          ink: 'rect',
          box: { x: left + jarWidth * 0.06, y, width: jarWidth * 0.88, height: bodyHeight * LID },
          fill: HAIR,
          strokePt: 1,
        },
        ...rows.flatMap((step) => {
          const at = rowY
          rowY += rowHeights[step]!
          return [
            {
              ink: 'rect',
              box: { x: scaleLeft, y: at, width: box, height: box },
              fill: greyOfStep(step, scale.length),
              strokePt: 0.6,
            } as const,
            ...texts[step]!.ink(scaleLeft + box + 6, at),
          ]
        }),
      ]
    },
  }
}

function outline(x: number, y: number, width: number, height: number): Ink {
  const points = [
    [x, y + height],
    [x, y],
    [x + width, y],
    [x + width, y + height],
  ] as const
  return { ink: 'line', points, widthPt: 1.2, grey: BLACK }
}

/** Both halves; cells of one grey above each other are one piece, so that no seam shows. */
function cells({ ringsM, levelsM, steps, scale }: CutJarBlock, axisX: number, footY: number, perM: number): Ink[] {
  const levelCount = levelsM.length - 1
  const bottomM = levelsM[0]!
  const ink: Ink[] = []
  for (let i = 0; i + 1 < ringsM.length; i += 1) {
    for (let j = 0; j < levelCount; ) {
      const step = steps[i * levelCount + j]!
      let to = j + 1
      while (to < levelCount && steps[i * levelCount + to] === step) to += 1
      const inner = ringsM[i]! * perM
      const outer = ringsM[i + 1]! * perM
      const y = footY - (levelsM[to]! - bottomM) * perM
      const height = (levelsM[to]! - levelsM[j]!) * perM
      const fill = greyOfStep(step, scale.length)
      for (const x of [axisX + inner, axisX - outer]) {
        ink.push({ ink: 'rect', box: { x, y, width: outer - inner + 0.15, height: height + 0.15 }, fill })
      }
      j = to
    }
  }
  return ink
}

/** In staggered rows, loose to the headspace. */
function kernels(left: number, top: number, width: number, height: number): Ink[] {
  const radius = width * KERNEL
  const stepX = radius * 2.7
  const stepY = radius * 2.5
  const rings: Ink[] = []
  for (let row = 0; top + height - radius * 1.6 - row * stepY > top + height * 0.16; row += 1) {
    const from = left + radius * 1.7 + (row % 2) * (stepX / 2)
    for (let x = from; x < left + width - radius * 1.5; x += stepX) {
      rings.push({ ink: 'circle', x, y: top + height - radius * 1.6 - row * stepY, radius, strokePt: 1 })
    }
  }
  return rings
}
