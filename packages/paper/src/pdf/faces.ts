/** The type: two open faces, each in two cuts of letters, read from the installed packages. Node only. */
import { createRequire } from 'node:module'
import type { Face } from '../layout/ink.ts'
import type { Measure } from '../layout/text.ts'
import { type EmbeddedFont, forWords, ShapedWords } from './shaped-words.ts'

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

/** As they are registered in a file. */
const FONT_NAMES: Readonly<Record<Face, readonly string[]>> = {
  text: FILES.text.map((_, index) => `text ${index}`),
  'text-strong': FILES['text-strong'].map((_, index) => `text-strong ${index}`),
  display: FILES.display.map((_, index) => `display ${index}`),
}

export interface Run {
  readonly fontName: string
  readonly text: string
}

interface OpenFont {
  readonly font: EmbeddedFont
  readonly words: ShapedWords
  /** Whether it has a letter, asked of its file once. */
  readonly letters: Map<number, boolean>
}

/** Widths of words kept at once. [count] */
const MOST_KEPT = 2000

/** Fonts registered in one PDF, with the letters none of them has. */
export class Faces implements Measure {
  readonly #doc: Doc
  readonly #fonts = new Map<string, OpenFont>()
  /** Of words, at 1 pt: widths grow with the size alone. */
  readonly #widths: Readonly<Record<Face, Map<string, number>>> = {
    text: new Map(),
    'text-strong': new Map(),
    display: new Map(),
  }
  readonly #missing = new Set<string>()

  constructor(doc: Doc) {
    this.#doc = doc
    for (const face of ['text', 'text-strong', 'display'] as const)
      for (const [index, file] of FILES[face].entries()) doc.registerFont(FONT_NAMES[face][index]!, file)
  }

  /** Read from its file when first asked for: most sheets need no letter of the second cuts. */
  #font(name: string): OpenFont {
    const known = this.#fonts.get(name)
    if (known) return known
    this.#doc.font(name)
    const font = (this.#doc as unknown as { _font: EmbeddedFont })._font
    const opened = { font, words: new ShapedWords(font), letters: new Map<number, boolean>() }
    this.#fonts.set(name, opened)
    return opened
  }

  /** Letters asked for that no face has; `?` stands in for them. */
  get missingLetters(): ReadonlySet<string> {
    return this.#missing
  }

  /** `text` cut where the letters change from one font file to the other. */
  runs(text: string, face: Face): readonly Run[] {
    const normal = text.normalize('NFC')
    const [first] = FONT_NAMES[face] as readonly [string]
    if (this.#hasAll(normal, first)) return [{ fontName: first, text: normal }]
    const runs: { fontName: string; text: string }[] = []
    for (const letter of normal) {
      const found = FONT_NAMES[face].find((name) => this.#has(letter.codePointAt(0) ?? 0, name))
      if (!found) this.#missing.add(letter)
      const fontName = found ?? first
      const shown = found ? letter : '?'
      const last = runs.at(-1)
      if (last?.fontName === fontName) last.text += shown
      else runs.push({ fontName, text: shown })
    }
    return runs
  }

  /** As nearly every line is: it need not be cut. */
  #hasAll(text: string, fontName: string): boolean {
    for (let at = 0; at < text.length; at += 1) {
      const codePoint = text.codePointAt(at) ?? 0
      if (!this.#has(codePoint, fontName)) return false
      if (codePoint > 0xffff) at += 1
    }
    return text !== ''
  }

  #has(codePoint: number, fontName: string): boolean {
    const { font, letters } = this.#font(fontName)
    const known = letters.get(codePoint)
    if (known !== undefined) return known
    const has = font.font.hasGlyphForCodePoint(codePoint)
    letters.set(codePoint, has)
    return has
  }

  width(text: string, face: Face, sizePt: number): number {
    let total = 0
    forWords(text, (word) => {
      total += this.#wordWidth(word, face)
    })
    return total * sizePt
  }

  /** Width of a word with the space after it, at 1 pt. */
  #wordWidth(word: string, face: Face): number {
    const widths = this.#widths[face]
    const known = widths.get(word)
    if (known !== undefined) return known
    if (widths.size >= MOST_KEPT) widths.clear()
    const width = this.runs(word, face).reduce((sum, run) => sum + this.runWidth(run, 1), 0)
    widths.set(word, width)
    return width
  }

  runWidth({ fontName, text }: Run, sizePt: number): number {
    return (this.#font(fontName).words.width(text) / 1000) * sizePt
  }

  /** Operators that show the run on the page being drawn, which is told of the font. */
  show({ fontName, text }: Run, place: { x: number; y: number; sizePt: number }): string {
    const { font, words } = this.#font(fontName)
    this.#doc.page.fonts[font.id] ??= font.ref()
    return words.show(text, place)
  }

  metrics(face: Face): { ascent: number; descent: number; capital: number } {
    const { ascender, descender, capHeight } = this.#font(FONT_NAMES[face][0]!).font
    return { ascent: ascender / 1000, descent: -descender / 1000, capital: capHeight / 1000 }
  }
}
