/** The pages of a document as drawings for the browser's printer: the same layout, the same ink, as the PDF. */
import { escapeHtml } from './escape-html.ts'
import type { Ink, SquaresInk } from './layout/ink.ts'
import { KNOWN_MEASURE } from './layout/known-widths.ts'
import { layOut } from './layout/pages.ts'
import type { PaperDocument } from './model.ts'

const FAMILIES = {
  text: "400 'Atkinson Hyperlegible', sans-serif",
  'text-strong': "700 'Atkinson Hyperlegible', sans-serif",
  display: "700 'Bitter', serif",
} as const

/** One SVG a page, hidden from screen readers: the article beside it holds the same words in order. */
export function pagesSvg(document: PaperDocument): string {
  return layOut(document, KNOWN_MEASURE)
    .map(({ widthPt, heightPt, ink }) => {
      const size = `width="${short(widthPt)}pt" height="${short(heightPt)}pt" viewBox="0 0 ${short(widthPt)} ${short(heightPt)}"`
      return `<svg class="paper-page" xmlns="http://www.w3.org/2000/svg" aria-hidden="true" ${size}>${ink.map(inkSvg).join('')}</svg>`
    })
    .join('')
}

/** One piece of ink as SVG, in points. */
export function inkSvg(ink: Ink): string {
  switch (ink.ink) {
    case 'text': {
      const [weight, ...family] = FAMILIES[ink.face].split(' ')
      const font = `font-family="${family.join(' ')}" font-weight="${weight}" font-size="${short(ink.sizePt)}"`
      return `<text x="${short(ink.x)}" y="${short(ink.baselineY)}" ${font} fill="${grey(ink.grey)}">${escapeHtml(ink.text)}</text>`
    }
    case 'line': {
      const points = ink.points.map(([x, y]) => `${short(x)},${short(y)}`).join(' ')
      const dash = ink.dashPt === undefined ? '' : ` stroke-dasharray="${ink.dashPt}"`
      const shape = ink.closed ? 'polygon' : 'polyline'
      return `<${shape} points="${points}" fill="none" stroke="${grey(ink.grey)}" stroke-width="${ink.widthPt}"${dash}/>`
    }
    case 'rect': {
      const { x, y, width, height } = ink.box
      const fill = ink.fill === undefined ? 'none' : grey(ink.fill)
      const stroke = ink.strokePt === undefined ? '' : ` stroke="#000000" stroke-width="${ink.strokePt}"`
      return `<rect x="${short(x)}" y="${short(y)}" width="${short(width)}" height="${short(height)}" fill="${fill}"${stroke}/>`
    }
    case 'circle':
      return `<circle cx="${short(ink.x)}" cy="${short(ink.y)}" r="${short(ink.radius)}" fill="none" stroke="#000000" stroke-width="${ink.strokePt}"/>`
    case 'squares':
      return squaresSvg(ink)
  }
}

function squaresSvg({ box, rows }: SquaresInk): string {
  const edge = box.width / rows.length
  return `<path transform="translate(${short(box.x)} ${short(box.y)}) scale(${edge.toFixed(4)})" shape-rendering="crispEdges" d="${squaresPath(rows)}"/>`
}

/** Black squares, joined along each row, one unit each. */
export function squaresPath(rows: readonly (readonly boolean[])[]): string {
  return rows
    .flatMap((row, y) =>
      row.flatMap((black, x) => {
        if (!black || row[x - 1]) return []
        const white = row.indexOf(false, x)
        return [`M${x} ${y}h${(white < 0 ? row.length : white) - x}v1H${x}z`]
      }),
    )
    .join('')
}

function grey(level: number): string {
  const hex = Math.round(level * 255)
    .toString(16)
    .padStart(2, '0')
  return `#${hex}${hex}${hex}`
}

function short(value: number): string {
  return String(Number(value.toFixed(2)))
}
