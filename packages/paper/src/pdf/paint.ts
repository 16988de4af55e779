/** Ink onto a PDF page. Knows nothing of sheets or blocks. */
import type { Grey, Ink, TextInk } from '../layout/ink.ts'
import type { DrawnCodes } from './drawn-codes.ts'
import type { Faces } from './faces.ts'

type Doc = PDFKit.PDFDocument

export function paint(doc: Doc, faces: Faces, codes: DrawnCodes, ink: Ink): void {
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
      codes.place(ink)
      return
  }
}

function paintText(doc: Doc, faces: Faces, { text, face, sizePt, grey, x, baselineY }: TextInk): void {
  const runs = faces.runs(text, face)
  let at = x
  const shown = runs.map((run) => {
    const content = faces.show(run, { x: at, y: baselineY, sizePt })
    if (runs.length > 1) at += faces.runWidth(run, sizePt)
    return content
  })
  if (shown.length > 0) doc.addContent(`BT ${grey} g ${shown.join(' ')} ET`)
}

function colour(grey: Grey): string {
  const level = Math.round(grey * 255)
    .toString(16)
    .padStart(2, '0')
  return `#${level}${level}${level}`
}
