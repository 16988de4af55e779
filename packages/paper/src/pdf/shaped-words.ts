/** Words as the file's own operators, with their widths: each is shaped once, since labels share most of theirs. */

/** The part of pdfkit's embedded font that its type declarations leave out. */
export interface EmbeddedFont {
  readonly id: string
  readonly ascender: number
  readonly descender: number
  readonly capHeight: number
  readonly font: { hasGlyphForCodePoint(codePoint: number): boolean }
  /** Glyphs in hexadecimal, and where each goes. [thousandths of the size] */
  encode(text: string): readonly [readonly string[], readonly GlyphPosition[]]
  ref(): PDFKit.PDFKitReference
}

interface GlyphPosition {
  readonly xAdvance: number
  readonly xOffset: number
  readonly yOffset: number
  /** What `xAdvance` would be without kerning. */
  readonly advanceWidth: number
}

interface PlacedGlyph {
  readonly hex: string
  readonly position: GlyphPosition
}

/** Glyphs shown one behind the other from one place. */
interface Stretch {
  /** From the word's beginning, in thousandths of the size. */
  readonly right: number
  readonly up: number
  /** Glyphs and kerning, as they stand within a TJ. */
  readonly show: string
}

interface ShapedWord {
  readonly width: number
  readonly stretches: readonly Stretch[]
}

/** Enough for all that labels share; words of one label alone are forgotten again. [count] */
const MOST_KEPT = 1000
/** Codes and dates: in them a letter's place hangs on its neighbour alone, so pairs are shaped and not every code. */
const CODE_LETTERS = /^[A-PR-Z\d.,:-]+$/

/** Words of one font. */
export class ShapedWords {
  readonly #font: EmbeddedFont
  readonly #kept = new Map<string, ShapedWord>()
  /** Letters of codes, by themselves and before another. */
  readonly #ofCodes = new Map<string, PlacedGlyph>()

  constructor(font: EmbeddedFont) {
    this.#font = font
  }

  /** Width of `text`, at 1000 pt. */
  width(text: string): number {
    let width = 0
    forWords(text, (word) => {
      width += this.#shaped(word).width
    })
    return width
  }

  /** Operators that show `text`, to stand between BT and ET on a page whose y runs downward. */
  show(text: string, { x, y, sizePt }: { x: number; y: number; sizePt: number }): string {
    let shown = `/${this.#font.id} ${short(sizePt)} Tf`
    let row = ''
    let from = 0
    const endRow = (): void => {
      if (row !== '') shown += ` [${row}] TJ`
      row = ''
    }
    forWords(text, (word) => {
      const { width, stretches } = this.#shaped(word)
      for (const { right, up, show } of stretches) {
        if (row === '' || right !== 0 || up !== 0) {
          endRow()
          shown += ` 1 0 0 -1 ${short(x + ((from + right) / 1000) * sizePt)} ${short(y - (up / 1000) * sizePt)} Tm`
        }
        row += show
      }
      if (stretches.length > 1) endRow()
      from += width
    })
    endRow()
    return shown
  }

  #shaped(word: string): ShapedWord {
    const known = this.#kept.get(word)
    if (known) return known
    if (this.#kept.size >= MOST_KEPT) this.#kept.clear()
    const shaped = gathered(CODE_LETTERS.test(word) ? this.#placedByPairs(word) : placed(this.#font, word))
    this.#kept.set(word, shaped)
    return shaped
  }

  #placedByPairs(code: string): PlacedGlyph[] {
    return Array.from(code, (letter, index) => {
      const pair = letter + (code[index + 1] ?? '')
      const known = this.#ofCodes.get(pair) ?? placed(this.#font, pair)[0]!
      this.#ofCodes.set(pair, known)
      return known
    })
  }
}

/** Calls `each` for words and for the spaces between them, which no face here draws closer to a letter. */
export function forWords(text: string, each: (word: string) => void): void {
  for (let from = 0; from < text.length; ) {
    const space = text.indexOf(' ', from)
    const end = space === from ? from + 1 : space < 0 ? text.length : space
    each(space === from ? ' ' : text.slice(from, end))
    from = end
  }
}

function placed(font: EmbeddedFont, text: string): PlacedGlyph[] {
  const [glyphs, positions] = font.encode(text)
  return glyphs.map((hex, index) => ({ hex, position: positions[index]! }))
}

function gathered(glyphs: readonly PlacedGlyph[]): ShapedWord {
  const stretches: Stretch[] = []
  let width = 0
  let from = 0
  let parts = ''
  let open = ''
  const end = (up: number): void => {
    const show = parts + (open === '' ? '' : `<${open}>`)
    if (show !== '') stretches.push({ right: from, up, show })
    ;[from, parts, open] = [width, '', '']
  }
  for (const { hex, position } of glyphs) {
    const { xAdvance, advanceWidth, xOffset, yOffset } = position
    const isMoved = xOffset !== 0 || yOffset !== 0
    if (isMoved) {
      end(0)
      from += xOffset
    }
    open += hex
    width += xAdvance
    const kerned = short(advanceWidth - xAdvance)
    if (isMoved) end(yOffset)
    else if (kerned !== 0) {
      parts += `<${open}> ${kerned} `
      open = ''
    }
  }
  end(0)
  return { width, stretches }
}

/** Files hold no more digits than a printer can follow. */
function short(value: number): number {
  return Math.round(value * 10_000) / 10_000
}
