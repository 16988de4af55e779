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
  readonly #widths = new Map<string, number>()
  readonly #runs = new Map<string, readonly Run[]>()
  readonly #missing = new Set<string>()

  constructor(doc: Doc) {
    this.#doc = doc
    for (const [face, files] of Object.entries(FILES)) {
      for (const [index, file] of files.entries()) {
        const name = `${face} ${index}`
        doc.registerFont(name, file)
        doc.font(name)
        this.#fonts.set(name, (doc as unknown as { _font: EmbeddedFont })._font)
      }
    }
  }

  /** Letters asked for that no face has; `?` stands in for them. */
  get missingLetters(): ReadonlySet<string> {
    return this.#missing
  }

  /** `text` cut where the letters change from one font file to the other. */
  runs(text: string, face: Face): readonly Run[] {
    const key = `${face}\n${text}`
    const known = this.#runs.get(key)
    if (known) return known
    const runs: { fontName: string; text: string }[] = []
    for (const letter of text.normalize('NFC')) {
      const names = FILES[face].map((_, index) => `${face} ${index}`)
      const found = names.find((name) => this.#fonts.get(name)?.font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0))
      if (!found) this.#missing.add(letter)
      const fontName = found ?? (names[0] as string)
      const shown = found ? letter : '?'
      const last = runs.at(-1)
      if (last?.fontName === fontName) last.text += shown
      else runs.push({ fontName, text: shown })
    }
    this.#runs.set(key, runs)
    return runs
  }

  width(text: string, face: Face, sizePt: number): number {
    return this.runs(text, face).reduce((total, run) => total + this.runWidth(run, sizePt), 0)
  }

  /** Widths grow with the size alone, so each run is measured once: fitting a sheet asks for the same words again. */
  runWidth({ fontName, text }: Run, sizePt: number): number {
    const key = `${fontName}\n${text}`
    let width = this.#widths.get(key)
    if (width === undefined) {
      width = this.#doc.font(fontName).fontSize(1000).widthOfString(text) / 1000
      this.#widths.set(key, width)
    }
    return width * sizePt
  }

  metrics(face: Face): { ascent: number; descent: number; capital: number } {
    const { ascender, descender, capHeight } = this.#fonts.get(`${face} 0`) as EmbeddedFont
    return { ascent: ascender / 1000, descent: -descender / 1000, capital: capHeight / 1000 }
  }
}
