/** The type: two open faces, each in two cuts of letters, read from the installed packages. Node only. */
import { createRequire } from 'node:module'
import type { Face } from '../layout/ink.ts'
import type { Measure } from '../layout/text.ts'

type Doc = PDFKit.PDFDocument

const require = createRequire(import.meta.url)

/** Latin first, then extended Latin for the letters the first lacks. */
const FILES: Readonly<Record<Face, readonly string[]>> = {
  text: [
    require.resolve('@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-400-normal.woff'),
    require.resolve('@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-ext-400-normal.woff'),
  ],
  'text-strong': [
    require.resolve('@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-700-normal.woff'),
    require.resolve('@fontsource/atkinson-hyperlegible/files/atkinson-hyperlegible-latin-ext-700-normal.woff'),
  ],
  display: [
    require.resolve('@fontsource/bitter/files/bitter-latin-700-normal.woff'),
    require.resolve('@fontsource/bitter/files/bitter-latin-ext-700-normal.woff'),
  ],
}

/** The part of pdfkit's embedded font that its type declarations leave out. */
interface EmbeddedFont {
  readonly ascender: number
  readonly descender: number
  readonly capHeight: number
  readonly font: { hasGlyphForCodePoint(codePoint: number): boolean }
}

export interface Run {
  readonly fontName: string
  readonly text: string
}

/** Fonts registered in one PDF, with the letters none of them has. */
export class Faces implements Measure {
  readonly #doc: Doc
  readonly #fonts = new Map<string, EmbeddedFont>()
  /** By face and word: widths grow with the size alone. */
  readonly #widths = new Map<string, number>()
  readonly #missing = new Set<string>()

  constructor(doc: Doc) {
    this.#doc = doc
    for (const [face, files] of Object.entries(FILES)) {
      for (const [index, file] of files.entries()) {
        doc.registerFont(`${face} ${index}`, file)
      }
    }
  }

  /** Read from its file when first asked for: most sheets need no letter of the second cuts. */
  #font(name: string): EmbeddedFont {
    const known = this.#fonts.get(name)
    if (known) return known
    this.#doc.font(name)
    const font = (this.#doc as unknown as { _font: EmbeddedFont })._font
    this.#fonts.set(name, font)
    return font
  }

  /** Letters asked for that no face has; `?` stands in for them. */
  get missingLetters(): ReadonlySet<string> {
    return this.#missing
  }

  /** `text` cut where the letters change from one font file to the other. */
  runs(text: string, face: Face): readonly Run[] {
    const runs: { fontName: string; text: string }[] = []
    for (const letter of text.normalize('NFC')) {
      const names = FILES[face].map((_, index) => `${face} ${index}`)
      const found = names.find((name) => this.#font(name).font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0))
      if (!found) this.#missing.add(letter)
      const fontName = found ?? (names[0] as string)
      const shown = found ? letter : '?'
      const last = runs.at(-1)
      if (last?.fontName === fontName) last.text += shown
      else runs.push({ fontName, text: shown })
    }
    return runs
  }

  width(text: string, face: Face, sizePt: number): number {
    // Word by word, as the typesetter sets it: fitting asks for the same words in many lines.
    let total = 0
    for (let from = 0; from < text.length; ) {
      const space = text.indexOf(' ', from)
      const end = space < 0 ? text.length : space + 1
      total += this.#wordWidth(text.slice(from, end), face)
      from = end
    }
    return total * sizePt
  }

  /** Width of a word with the space after it, at 1 pt. */
  #wordWidth(word: string, face: Face): number {
    const key = `${face}\n${word}`
    let width = this.#widths.get(key)
    if (width === undefined) {
      width = this.runs(word, face).reduce((sum, run) => sum + this.runWidth(run, 1), 0)
      this.#widths.set(key, width)
    }
    return width
  }

  runWidth({ fontName, text }: Run, sizePt: number): number {
    return (this.#doc.font(fontName).fontSize(1000).widthOfString(text) / 1000) * sizePt
  }

  metrics(face: Face): { ascent: number; descent: number; capital: number } {
    const { ascender, descender, capHeight } = this.#font(`${face} 0`)
    return { ascent: ascender / 1000, descent: -descender / 1000, capital: capHeight / 1000 }
  }
}
