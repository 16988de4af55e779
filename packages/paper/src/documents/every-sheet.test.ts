/** Rules every sheet keeps, read from the printed page itself. */
import PDFDocument from 'pdfkit'
import { describe, expect, test } from 'vitest'
import { LABEL_CASES, PLAIN_CASES } from '../../testing/every-sheet.ts'
import { codeIn, POPPLER_FOUND, pagesOf, picturesOf, tallestStroke, textOf } from '../../testing/read-pdf.ts'
import type { Box, TextInk } from '../layout/ink.ts'
import { KNOWN_MEASURE } from '../layout/known-widths.ts'
import { labelBox } from '../layout/labels.ts'
import { layOut } from '../layout/pages.ts'
import type { PaperDocument } from '../model.ts'
import { Faces } from '../pdf/faces.ts'
import { renderPdf } from '../pdf/index.ts'
import { LABEL_SHEETS } from '../sheets.ts'

const CASES = [...PLAIN_CASES, ...LABEL_CASES]
const FONT_MEASURE = new Faces(new PDFDocument({ autoFirstPage: false }))
const MEASURES = [
  ['with the font files', FONT_MEASURE],
  ['by the known widths', KNOWN_MEASURE],
] as const

/** What no sheet may say (docs/nomenclature.md). */
const FORBIDDEN = [/\bsafe(ly)?\b/i, /(?<!(liquid|dry) )\bquarts?\b/i, /(?<!(liquid|dry) )\bqt\b/i, /\bpounds?\b/i]

/** Each sheet is rendered once for all that is read from it. */
const rendered = new Map<PaperDocument, Promise<Uint8Array>>()
function pdfOf(document: PaperDocument): Promise<Uint8Array> {
  const known = rendered.get(document) ?? renderPdf(document)
  rendered.set(document, known)
  return known
}

describe.each(MEASURES)('laid out %s', (_how, measure) => {
  test.each(CASES)('$name: no letter is below 9 pt, wider than its room, or off the page', ({ document }) => {
    for (const { widthPt, heightPt, ink } of layOut(document, measure)) {
      for (const one of ink) {
        if (one.ink !== 'text') continue
        expect(one.sizePt).toBeGreaterThanOrEqual(9)
        const right = one.x + FONT_MEASURE.width(one.text, one.face, one.sizePt)
        expect(right, one.text).toBeLessThanOrEqual(one.box.x + one.box.width + 0.01)
        expect(one.x, one.text).toBeGreaterThanOrEqual(one.box.x - 0.01)
        expect(right, one.text).toBeLessThanOrEqual(widthPt)
        expect(one.box.y + one.box.height, one.text).toBeLessThanOrEqual(heightPt)
      }
    }
  })

  test.each(CASES)('$name: nothing is printed over words', ({ document }) => {
    for (const { ink } of layOut(document, measure)) {
      const bodies = ink.flatMap((one) =>
        one.ink === 'text' && one.text !== '' ? [{ name: one.text, ...letters(one) }] : [],
      )
      // Tick boxes and codes; a frame round words is wider than 30 pt and empty inside.
      const marks = ink.flatMap((one) => {
        if (one.ink === 'squares') return [{ name: 'code', ...one.box }]
        return one.ink === 'rect' && one.box.width < 30 && one.strokePt !== undefined
          ? [{ name: 'box', ...one.box }]
          : []
      })
      // Shades of a drawing lie edge to edge, and under no word.
      const shades = ink.flatMap((one) =>
        one.ink === 'rect' && one.box.width < 30 && one.strokePt === undefined ? [{ name: 'shade', ...one.box }] : [],
      )
      const all = [...bodies, ...marks]
      const clashes = all.flatMap((a, index) =>
        [...all.slice(index + 1), ...shades].flatMap((b) => (overlap(a, b) ? [`${a.name} / ${b.name}`] : [])),
      )
      expect(clashes).toEqual([])
    }
  })
})

/** The body of a line: from baseline to the height of a capital. */
function letters({ text, face, sizePt, x, baselineY }: TextInk): Box {
  const height = FONT_MEASURE.metrics(face).capital * sizePt
  return { x, y: baselineY - height, width: FONT_MEASURE.width(text, face, sizePt), height }
}

function overlap(a: Box, b: Box): boolean {
  return a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height
}

describe('as a file', () => {
  test.each(CASES)('$name: the same document gives the same bytes', async ({ document }) => {
    expect(Buffer.compare(await pdfOf(document), await renderPdf(document))).toBe(0)
  })

  test('an instant that is none is refused', async () => {
    const [first] = PLAIN_CASES
    await expect(renderPdf({ ...first!.document, madeAt: 'tomorrow' })).rejects.toThrow('madeAt is "tomorrow"')
  })

  test('letters beyond Latin-1 are printed where the type has them, and owned up to where it has not', async () => {
    const { document } = PLAIN_CASES[0]!
    const named = (text: string) => renderPdf({ ...document, blocks: [{ kind: 'line', text }] })
    const pages = layOut({ ...document, blocks: [{ kind: 'line', text: 'ł' }] }, FONT_MEASURE)
    expect(pages).toHaveLength(1)
    if (!POPPLER_FOUND) return
    expect(textOf(await named('Płatek corn, Ñuñoa'))).toContain('Płatek corn, Ñuñoa')
    expect(textOf(await named('corn 玉米'))).toContain('corn ??')
    expect(textOf(await named('corn 玉米'))).toContain('? stands for letters this type lacks: Han')
  })
})

describe.skipIf(!POPPLER_FOUND)('as printed (needs poppler-utils)', () => {
  test.each(CASES)(
    '$name: says what it must, never what it must not, on its pages',
    async ({ document, mustSay, pageCount }) => {
      const pdf = await pdfOf(document)
      const text = textOf(pdf).replaceAll('’', "'")
      expect(mustSay.filter((phrase) => !text.includes(phrase.replaceAll('’', "'")))).toEqual([])
      expect(FORBIDDEN.filter((pattern) => pattern.test(text))).toEqual([])
      expect(pagesOf(pdf)).toHaveLength(pageCount)
    },
  )

  test.each(PLAIN_CASES)('$name: every word lies inside the page margin', async ({ document }) => {
    // 11 mm margin, less the depth that a font keeps for tails and accents.
    const marginPt = 11 * (72 / 25.4)
    for (const { widthPt, heightPt, words } of pagesOf(await pdfOf(document))) {
      expect(words.length).toBeGreaterThan(15)
      for (const { text, xMin, yMin, xMax, yMax } of words) {
        expect(xMin, text).toBeGreaterThanOrEqual(marginPt - 0.5)
        expect(xMax, text).toBeLessThanOrEqual(widthPt - marginPt + 0.5)
        expect(yMin, text).toBeGreaterThanOrEqual(marginPt - 4)
        expect(yMax, text).toBeLessThanOrEqual(heightPt - marginPt + 4)
      }
    }
  })

  test.each(LABEL_CASES)('$name: every word lies inside one label', async ({ document, sheetId }) => {
    const sheet = LABEL_SHEETS[sheetId]
    const boxes = Array.from({ length: sheet.columnCount * sheet.rowCount }, (_, place) => labelBox(sheet, place))
    for (const { words } of pagesOf(await pdfOf(document))) {
      expect(words.length).toBeGreaterThan(10)
      const outside = words.filter(
        ({ xMin, yMin, xMax, yMax }) =>
          !boxes.some(
            (box) => xMin >= box.x && xMax <= box.x + box.width && yMin >= box.y && yMax <= box.y + box.height,
          ),
      )
      expect(outside).toEqual([])
    }
  })

  test.each(LABEL_CASES)(
    '$name: every code is read back as its own record',
    async ({ name, document, sheetId, records }) => {
      // 0.8 mm squares are then 3 dots: what a phone sees from a hand's breadth.
      const dotsPerInch = 100
      const sheet = LABEL_SHEETS[sheetId]
      const perPage = sheet.columnCount * sheet.rowCount
      const skipped = name.includes('part-used') ? 3 : 0
      const pictures = picturesOf(await pdfOf(document), dotsPerInch)
      const scale = dotsPerInch / 72
      const read = records.map((_, index) => {
        const place = index + skipped
        const { x, y, width, height } = labelBox(sheet, place % perPage)
        const crop = { x: x * scale, y: y * scale, width: width * scale, height: height * scale }
        return codeIn(pictures[Math.floor(place / perPage)]!, crop)
      })
      expect(read).toEqual(records)
    },
  )

  test('the code on a batch sheet is read back as its record', async () => {
    const [picture] = picturesOf(await pdfOf(PLAIN_CASES[0]!.document), 100)
    const { width } = picture!
    expect(codeIn(picture!, { x: width / 2, y: 0, width: width / 2, height: width / 4 })).toBe('crib:batch/LF-3')
  })

  test.each(PLAIN_CASES.filter(({ name }) => name.startsWith('canner card')))(
    '$name: the number is at least 60 mm tall',
    async ({ document }) => {
      const dotsPerInch = 100
      const [picture] = picturesOf(await pdfOf(document), dotsPerInch)
      // The upright of the 1 is the tallest stroke on the page.
      expect((tallestStroke(picture!) / dotsPerInch) * 25.4).toBeGreaterThanOrEqual(60)
    },
  )
})
