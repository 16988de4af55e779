/** Setting text: measuring, breaking into lines, placing. Nothing is ever wider than the room it was given. */
import { BLACK, type Face, type Grey, type TextInk } from './ink.ts'

/** What layout must know of the type; handed in, so that layout itself needs no font file. */
export interface Measure {
  /** Advance width of `text`. [pt] */
  width(text: string, face: Face, sizePt: number): number
  /** Above and below the baseline, and height of a capital or digit, as parts of the size. */
  metrics(face: Face): { readonly ascent: number; readonly descent: number; readonly capital: number }
}

/** No text is set smaller. [pt] */
export const SMALLEST_PT = 9

const LEADING = 1.18

export interface SetText {
  /** The text, its lines broken to the width. */
  readonly lines: readonly string[]
  readonly height: number
  readonly widest: number
  /** Ink with the first line's top at `y`. */
  ink(x: number, y: number): TextInk[]
}

export interface TextStyle {
  readonly face: Face
  readonly sizePt: number
  readonly grey?: Grey
  readonly align?: 'left' | 'right' | 'centre'
  readonly leading?: number
}

export function setText(text: string, width: number, style: TextStyle, measure: Measure): SetText {
  const { face, sizePt, grey = BLACK, align = 'left', leading = LEADING } = style
  const widthOf = (line: string) => measure.width(line, face, sizePt)
  const lines = breakLines(text, width, widthOf)
  const { ascent, descent } = measure.metrics(face)
  const lineHeight = leading * sizePt
  const baseline = (lineHeight - (ascent + descent) * sizePt) / 2 + ascent * sizePt
  return {
    lines,
    height: lines.length * lineHeight,
    widest: Math.max(0, ...lines.map(widthOf)),
    ink: (x, y) =>
      lines.map((line, index) => {
        const top = y + index * lineHeight
        const slack = align === 'left' ? 0 : (width - widthOf(line)) * (align === 'right' ? 1 : 0.5)
        const box = { x, y: top, width, height: lineHeight }
        return { ink: 'text', text: line, face, sizePt, grey, x: x + slack, baselineY: top + baseline, box }
      }),
  }
}

/** Lines no wider than `width`: broken at spaces, and inside a word only where the word alone is too wide. */
export function breakLines(text: string, width: number, widthOf: (line: string) => number): string[] {
  const lines: string[] = []
  for (const paragraph of glued(text).split('\n')) {
    let line = ''
    for (const word of paragraph.split(/[ \t]+/).filter((word) => word !== '')) {
      const longer = line === '' ? word : `${line} ${word}`
      if (widthOf(longer) <= width) {
        line = longer
        continue
      }
      if (line !== '') lines.push(line)
      const parts = breakWord(word, width, widthOf)
      lines.push(...parts.slice(0, -1))
      line = parts.at(-1) ?? ''
    }
    lines.push(line)
  }
  return lines
}

/** A number stays on the line of its unit. */
export function glued(text: string): string {
  return text.replace(
    /(\d) (?=(?:min|h|psi|kPa|lb|oz|kg|g|ft|in|cm|mm?|liquid|dry|US|cups?|Tbsp|tsp|m?L|°[CF])\b)/g,
    '$1\u00a0',
  )
}

function breakWord(word: string, width: number, widthOf: (line: string) => number): string[] {
  const parts: string[] = []
  let part = ''
  for (const letter of word) {
    if (part !== '' && widthOf(part + letter) > width) {
      parts.push(part)
      part = ''
    }
    part += letter
  }
  return [...parts, part]
}
