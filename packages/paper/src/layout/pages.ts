/** From a document to pages of ink: stacking, turning the page, footers, and shrinking to fit. Pure. */
import type { Block, PaperDocument } from '../model.ts'
import { mmToPt, PAPER_MM } from '../sheets.ts'
import { blockPieces } from './blocks.ts'
import { checkDocument } from './check-document.ts'
import { BLACK, DARK, HAIR, type Ink } from './ink.ts'
import { labelPages } from './labels.ts'
import { enlarged, LARGE_LEAST_PT } from './large-print.ts'
import { LARGE_SCALE, type Piece, typeScale } from './piece.ts'
import { type Measure, SMALLEST_PT, setText } from './text.ts'

export interface PageOfInk {
  readonly widthPt: number
  readonly heightPt: number
  readonly ink: readonly Ink[]
}

/** Height kept for the footer. [pt] */
const FOOTER_PT = 20
const LARGE_FOOTER_PT = 30
const DEFAULT_TYPE_PT = 11
const SHRINK_STEP_PT = 0.25
/** With a second page there is room for easier reading again. */
const OVERLEAF_PT = 10.5

/**
 * Pages of ink, in points.
 *
 * @param missing names of the scripts the type lacks letters of, where `?` stands in for them: the footer then says so.
 * @throws {RangeError} when a part is beyond its limits, a block is longer than a page, or labels share a document with other blocks; {LabelTooSmallError} when a label cannot hold its words.
 */
export function layOut(given: PaperDocument, measure: Measure, missing = ''): readonly PageOfInk[] {
  return [...eachPage(given, measure, missing)]
}

/** The same, page after page: labels are laid out only as they are asked for. */
export function* eachPage(given: PaperDocument, measure: Measure, missing = ''): Generator<PageOfInk> {
  checkDocument(given)
  const document = enlarged(given)
  const paper = PAPER_MM[document.paper]
  const size = { widthPt: mmToPt(paper.width), heightPt: mmToPt(paper.height) }
  const [first] = document.blocks
  if (first?.kind === 'labels') {
    if (document.blocks.length > 1) throw new RangeError('labels fill whole pages: give them a document of their own')
    const leastPt = document.largePrint ? LARGE_LEAST_PT : SMALLEST_PT
    for (const ink of labelPages(first, measure, leastPt)) yield { ...size, ink }
    return
  }
  const margin = mmToPt(document.marginMm)
  const inside = { width: size.widthPt - 2 * margin, height: size.heightPt - 2 * margin - footerPt(document) }
  const pages = fitted(document, inside, measure)
  yield* pages.map((pieces, index) => ({
    ...size,
    ink: [...place(pieces, margin), ...footerInk(document, { index, count: pages.length, missing }, size, measure)],
  }))
}

/** First by smaller type, then by sparing white as well; what still is too long goes on overleaf, at its best. */
function fitted(document: PaperDocument, inside: { width: number; height: number }, measure: Measure): Piece[][] {
  if (document.largePrint) {
    const room = { width: inside.width, type: LARGE_SCALE, isTight: false, isLarge: true, measure } as const
    return turnPages(
      document.blocks.flatMap((block) => piecesWithin(block, inside.height, room)),
      inside.height,
    )
  }
  const typePt = document.typePt ?? DEFAULT_TYPE_PT
  const pagesAt = (bodyPt: number, isTight: boolean) => {
    const room = { width: inside.width, type: typeScale(bodyPt, isTight), isTight, measure }
    const pieces = document.blocks.flatMap((block) => piecesWithin(block, inside.height, room))
    return turnPages(pieces, inside.height)
  }
  if (document.fitPages === undefined) return pagesAt(typePt, false)
  for (const isTight of [false, true]) {
    for (let bodyPt = typePt; bodyPt >= SMALLEST_PT; bodyPt -= SHRINK_STEP_PT) {
      const pages = pagesAt(bodyPt, isTight)
      if (pages.length <= document.fitPages) return pages
    }
  }
  return pagesAt(Math.min(typePt, OVERLEAF_PT), false)
}

/** A block kept together, or framed, is let go when it is longer than a page. */
function piecesWithin(block: Block, height: number, room: Parameters<typeof blockPieces>[1]): Piece[] {
  const pieces = blockPieces(block, room)
  const tooLong = pieces.some((piece) => piece.height > height)
  if (!tooLong) return pieces
  if (block.kind === 'together') return block.blocks.flatMap((inner) => piecesWithin(inner, height, room))
  if (block.kind === 'notice') {
    const title = block.title === undefined ? [] : [{ kind: 'heading', level: 3, text: block.title } as const]
    const lines = block.lines.map((text) => ({ kind: 'line', text }) as const)
    return [...title, ...lines].flatMap((inner) => blockPieces(inner, room))
  }
  if (block.kind === 'checklist' && block.columns === 2) return blockPieces({ ...block, columns: 1 }, room)
  throw new RangeError(`a ${block.kind} block is longer than a page: give it less to say`)
}

/** Pieces shared out over pages, so that no heading ends one and a table's head opens the next. */
export function turnPages(pieces: readonly Piece[], heightPt: number): Piece[][] {
  const pages: Piece[][] = [[]]
  let used = 0
  const heightOn = (piece: Piece) => (used === 0 ? 0 : piece.gapBefore) + piece.height
  for (let at = 0; at < pieces.length; ) {
    const group = groupAt(pieces, at)
    const groupHeight = group.reduce((total, piece) => total + piece.gapBefore + piece.height, 0)
    const firstGap = used === 0 ? (group[0]?.gapBefore ?? 0) : 0
    if (used > 0 && used + groupHeight - firstGap > heightPt + 0.01) {
      pages.push([])
      used = 0
      const repeat = group[0]?.repeat
      if (repeat) {
        pages.at(-1)?.push(repeat)
        used = repeat.height
      }
    }
    for (const piece of group) {
      used += heightOn(piece)
      pages.at(-1)?.push(piece)
    }
    at += group.length
  }
  return pages
}

/** A piece with all it must keep beside it: headings and head rows hold on to what follows. */
function groupAt(pieces: readonly Piece[], from: number): Piece[] {
  const group: Piece[] = []
  for (const piece of pieces.slice(from)) {
    group.push(piece)
    if (!piece.keepWithNext) break
  }
  return group
}

function place(pieces: readonly Piece[], margin: number): Ink[] {
  let y = margin
  return pieces.flatMap((piece, index) => {
    if (index > 0) y += piece.gapBefore
    const ink = piece.ink(margin, y)
    y += piece.height
    return ink
  })
}

function footerPt({ largePrint }: PaperDocument): number {
  return largePrint ? LARGE_FOOTER_PT : FOOTER_PT
}

function footerInk(
  document: PaperDocument,
  { index, count, missing }: { index: number; count: number; missing: string },
  { widthPt, heightPt }: { widthPt: number; heightPt: number },
  measure: Measure,
): Ink[] {
  const { footer } = document
  const margin = mmToPt(document.marginMm)
  const width = widthPt - 2 * margin
  const pageOf = footer.pageOf.replace('{page}', String(index + 1)).replace('{pages}', String(count))
  const lacking = missing === '' ? [] : [footer.missingLetters.replace('{scripts}', missing)]
  const notes = [...lacking, document.title, footer.edition].join('  ·  ')
  const sizePt = document.largePrint ? LARGE_LEAST_PT : SMALLEST_PT
  const top = heightPt - margin - footerPt(document) + 8
  const small = { face: 'text', sizePt, grey: DARK } as const
  const strong = { face: 'text-strong', sizePt, grey: BLACK } as const
  const right = setText(pageOf, width, { ...small, align: 'right' }, measure)
  const invented = setText(document.invented ? footer.inventedLine : '', width, strong, measure)
  const inventedWidth = document.invented ? invented.widest + 12 : 0
  const notesWidth = width - right.widest - inventedWidth - 12
  const notesText = shortened(notes, notesWidth, (text) => setText(text, width * 10, small, measure).widest)
  return [
    {
      ink: 'line',
      points: [
        [margin, top - 3],
        [margin + width, top - 3],
      ],
      widthPt: 0.5,
      grey: HAIR,
    },
    ...(document.invented ? invented.ink(margin, top) : []),
    ...setText(notesText, width, small, measure).ink(margin + inventedWidth, top),
    ...right.ink(margin, top),
  ]
}

/** A footer has one line: what does not fit is cut with an ellipsis. */
function shortened(text: string, width: number, widthOf: (text: string) => number): string {
  if (widthOf(text) <= width) return text
  let kept = text
  while (kept.length > 1 && widthOf(`${kept}…`) > width) kept = kept.slice(0, -1)
  return `${kept.trimEnd()}…`
}
