/** Any pack of messages: long words stay in their boxes or are refused by name; a script the type lacks is owned up to. */
import { createWordsOf, ENGLISH, type MessageFiles } from '@crib/wording'
import PDFDocument from 'pdfkit'
import { describe, expect, test } from 'vitest'
import { PLAIN_SHEETS } from '../../testing/every-sheet.ts'
import { MILLRIND_LABELS, setting } from '../../testing/invented-days.ts'
import { POPPLER_FOUND, textOf } from '../../testing/read-pdf.ts'
import { jarLabels, LABEL_SHEETS, type LabelSheetId, type PaperDocument } from '../index.ts'
import { KNOWN_MEASURE } from '../layout/known-widths.ts'
import { LabelTooSmallError } from '../layout/labels.ts'
import { layOut } from '../layout/pages.ts'
import { Faces } from '../pdf/faces.ts'
import { renderPdf } from '../pdf/index.ts'

const FONTS = new Faces(new PDFDocument({ autoFirstPage: false }))

/** An invented language made from the English: what stands in gaps is left alone. */
function packOf(change: (text: string) => string): MessageFiles {
  const changed = (text: string) =>
    text
      .split(/(\{\{.*?\}\})/)
      .map((part) => (part.startsWith('{{') ? part : change(part)))
      .join('')
  return Object.fromEntries(
    Object.entries(ENGLISH).map(([part, texts]) => [
      part,
      Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, changed(text)])),
    ]),
  )
}

/** Half as long again, with accents, and words run together as some languages build them. */
const LONG = createWordsOf(
  packOf((text) =>
    text
      .replace(/([a-z]{4,}) ([a-z]{4,})/g, '$1$2')
      .replace(/[aeou]/g, (one) => `${one}${{ a: 'ä', e: 'é', o: 'ö', u: 'ů' }[one]}`),
  ),
)
const CYRILLIC = createWordsOf(
  packOf((text) => text.replace(/[aeo]/g, (one) => ({ a: 'а', e: 'е', o: 'о' })[one] ?? one)),
)
const GREEK = createWordsOf(packOf((text) => text.replace(/o/g, 'ο')))

function outside(document: PaperDocument): string[] {
  return layOut(document, FONTS).flatMap(({ widthPt, heightPt, ink }) =>
    ink.flatMap((one) => {
      if (one.ink !== 'text') return []
      const right = one.x + FONTS.width(one.text, one.face, one.sizePt)
      const isInside =
        one.x >= one.box.x - 0.01 &&
        right <= one.box.x + one.box.width + 0.01 &&
        right <= widthPt &&
        one.box.y + one.box.height <= heightPt
      return isInside ? [] : [one.text]
    }),
  )
}

describe.each(['ordinary', 'large'] as const)('in %s print', (print) => {
  test.each(PLAIN_SHEETS)('$name: long words stay in their boxes', ({ make }) => {
    const document = make('letter', LONG)
    expect(outside(print === 'large' ? { ...document, largePrint: true } : document)).toEqual([])
  })
})

test.each(Object.keys(LABEL_SHEETS) as LabelSheetId[])(
  'a label of %s holds long words, or says which are too many',
  (sheet) => {
    const document = jarLabels(MILLRIND_LABELS.slice(0, 3), { sheet }, setting('a4'), LONG)
    try {
      expect(outside(document)).toEqual([])
    } catch (error) {
      expect(error).toBeInstanceOf(LabelTooSmallError)
      expect((error as LabelTooSmallError).message).toContain('Copper Hinge hominy')
    }
  },
)

test('the largest labels hold the long words', () => {
  for (const sheet of ['a4-2x4', 'letter-2x3'] as const) {
    expect(outside(jarLabels(MILLRIND_LABELS.slice(0, 3), { sheet }, setting('a4'), LONG))).toEqual([])
  }
})

describe.skipIf(!POPPLER_FOUND)('as printed (needs poppler-utils)', () => {
  const [{ make }] = PLAIN_SHEETS as [(typeof PLAIN_SHEETS)[number]]

  test.each([
    [CYRILLIC, 'Cyrillic'],
    [GREEK, 'Greek'],
  ] as const)(
    'letters of a script the type lacks are question marks, and the sheet names it',
    async (words, script) => {
      const text = textOf(await renderPdf(make('letter', words)))
      expect(text).toContain('?')
      expect(text).toContain(script)
    },
  )

  test('a pack the type has letters for has no question mark', async () => {
    const text = textOf(await renderPdf(make('letter', LONG)))
    expect(text).not.toMatch(/[A-Za-zäéöů]\?[a-zäéöů]/)
    expect(text).toContain('öo'.normalize('NFC').slice(0, 1))
  })
})

test('in the browser, letters of other scripts are given the room of the widest', () => {
  expect(KNOWN_MEASURE.width('Щ', 'text', 10)).toBeGreaterThanOrEqual(10)
  expect(KNOWN_MEASURE.width('玉米', 'text', 10)).toBeGreaterThanOrEqual(20)
})
