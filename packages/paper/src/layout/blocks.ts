/** From any block to its pieces. */
import type { Block, ChecklistBlock, ColumnsBlock } from '../model.ts'
import { bigNumberPiece, tagPiece } from './big-blocks.ts'
import { checklistPieces } from './checklist.ts'
import { curvesPiece } from './curves.ts'
import { cutJarPiece } from './cut-jar.ts'
import { BLACK } from './ink.ts'
import { type Piece, type Room, stack } from './piece.ts'
import {
  cautionPieces,
  factPieces,
  headingPiece,
  headPiece,
  linePieces,
  noticePiece,
  qrPiece,
  sum,
  writeInPieces,
} from './plain-blocks.ts'
import { plotPiece } from './plot.ts'
import { tablePieces } from './table.ts'

/** @throws {RangeError} for labels, which fill whole pages and stand alone in their document. */
export function blockPieces(block: Block, room: Room): Piece[] {
  switch (block.kind) {
    case 'head':
      return [headPiece(block, room)]
    case 'heading':
      return [headingPiece(block, room)]
    case 'line':
      return linePieces(block, room)
    case 'notice':
      return [noticePiece(block, room)]
    case 'big-number':
      return [bigNumberPiece(block, room)]
    case 'facts':
      return factPieces(block, room)
    case 'table':
      return tablePieces(block, room)
    case 'checklist':
      return block.columns === 2 ? [twoColumns(block, room)] : checklistPieces(block, room)
    case 'cautions':
      return cautionPieces(block, room)
    case 'write-ins':
      return writeInPieces(block, room)
    case 'qr':
      return [qrPiece(block, room)]
    case 'tag':
      return [tagPiece(block, room)]
    case 'columns':
      return [columnsPiece(block, room)]
    case 'rule':
      return [rulePiece(room)]
    case 'together':
      return [stack(block.blocks.flatMap((inner) => blockPieces(inner, room)))]
    case 'plot':
      return [plotPiece(block, room)]
    case 'curves':
      return [curvesPiece(block, room)]
    case 'cut-jar':
      return [cutJarPiece(block, room)]
    case 'labels':
      throw new RangeError('labels fill whole pages: give them a document of their own')
  }
}

function rulePiece({ width, type }: Room): Piece {
  return {
    height: 1,
    gapBefore: type.gap,
    ink: (x, y) => [
      {
        ink: 'line',
        points: [
          [x, y + 0.5],
          [x + width, y + 0.5],
        ],
        widthPt: 0.6,
        grey: BLACK,
      },
    ],
  }
}

function twoColumns(block: ChecklistBlock, room: Room): Piece {
  const half = Math.ceil(block.items.length / 2)
  const side = (items: ChecklistBlock['items']) => ({
    share: 1,
    blocks: [{ kind: 'checklist', careWord: block.careWord, items } as const],
  })
  const columns = [side(block.items.slice(0, half)), side(block.items.slice(half))]
  return columnsPiece({ kind: 'columns', columns }, room)
}

function columnsPiece({ columns }: ColumnsBlock, room: Room): Piece {
  const gutter = room.type.body * 1.8
  const shares = sum(columns.map(({ share }) => share))
  const usable = room.width - gutter * (columns.length - 1)
  let left = 0
  const sides = columns.map(({ share, blocks }) => {
    const width = (usable * share) / shares
    const piece = stack(blocks.flatMap((block) => blockPieces(block, { ...room, width })))
    const placed = { piece, left }
    left += width + gutter
    return placed
  })
  return {
    height: Math.max(...sides.map(({ piece }) => piece.height)),
    gapBefore: Math.max(...sides.map(({ piece }) => piece.gapBefore)),
    ink: (x, y) => sides.flatMap((side) => side.piece.ink(x + side.left, y)),
  }
}
