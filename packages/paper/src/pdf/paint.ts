/** Ink onto a PDF page. Knows nothing of sheets or blocks. */
import type { Grey, Ink, SquaresInk, TextInk } from '../layout/ink.ts'
import type { Faces } from './faces.ts'

type Doc = PDFKit.PDFDocument

export function paint(doc: Doc, faces: Faces, ink: Ink): void {
  switch (ink.ink) {
    case 'text':
      paintText(doc, faces, ink)
      return
    case 'line': {
      const [first, ...rest] = ink.points
      if (!first) return
      doc.moveTo(...first)
      for (const point of rest) doc.lineTo(...point)
      if (ink.closed) doc.closePath()
      doc.lineWidth(ink.widthPt).strokeColor(colour(ink.grey))
      if (ink.dashPt !== undefined) doc.dash(ink.dashPt, {})
      doc.stroke()
      if (ink.dashPt !== undefined) doc.undash()
      return
    }
    case 'rect': {
      const { x, y, width, height } = ink.box
      if (ink.fill !== undefined) doc.rect(x, y, width, height).fill(colour(ink.fill))
      if (ink.strokePt !== undefined) doc.rect(x, y, width, height).lineWidth(ink.strokePt).stroke('#000000')
      return
    }
    case 'circle':
      doc.circle(ink.x, ink.y, ink.radius).lineWidth(ink.strokePt).stroke('#000000')
      return
    case 'squares':
      paintSquares(doc, ink)
      return
  }
}

function paintText(doc: Doc, faces: Faces, { text, face, sizePt, grey, x, baselineY }: TextInk): void {
  let at = x
  const runs = faces.runs(text, face)
  for (const run of runs) {
    doc.font(run.fontName).fontSize(sizePt).fillColor(colour(grey))
    doc.text(run.text, at, baselineY, { lineBreak: false, baseline: 'alphabetic' })
    if (runs.length > 1) at += faces.runWidth(run, sizePt)
  }
}

/** Black squares joined along each row, so that no hairline shows between them. */
function paintSquares(doc: Doc, { box, rows }: SquaresInk): void {
  const edge = box.width / rows.length
  const at = (value: number) => Number(value.toFixed(3))
  const strokes: string[] = []
  for (const [rowIndex, row] of rows.entries()) {
    for (let from = 0; from < row.length; ) {
      let to = from
      while (row[to]) to += 1
      if (to > from) {
        strokes.push(
          `${at(box.x + from * edge)} ${at(box.y + rowIndex * edge)} ${at((to - from) * edge)} ${at(edge)} re`,
        )
      }
      from = to + 1
    }
  }
  doc.fillColor('#000000')
  doc.addContent(`${strokes.join('\n')}\nf`)
}

function colour(grey: Grey): string {
  const level = Math.round(grey * 255)
    .toString(16)
    .padStart(2, '0')
  return `#${level}${level}${level}`
}
