import PDFDocument from 'pdfkit'
import { describe, expect, test } from 'vitest'
import type { Face } from '../layout/ink.ts'
import { Faces } from './faces.ts'
import type { EmbeddedFont } from './shaped-words.ts'

const CODES = ['MILL-261103-A1', 'OSTR-261103-A3', 'KB-269-47', '24.11.2026', '07:55,', 'TAVY-711', '1-2-7-71']

function opened(): { doc: PDFKit.PDFDocument; faces: Faces } {
  const doc = new PDFDocument({ autoFirstPage: false, fontLayoutCache: false } as PDFKit.PDFDocumentOptions)
  return { doc, faces: new Faces(doc) }
}

describe('words in type', () => {
  test.each(['text', 'text-strong', 'display'] as const satisfies Face[])(
    'a code set letter by letter is as wide as the same code shaped whole, in %s',
    (face) => {
      const { doc, faces } = opened()
      for (const code of CODES) {
        const width = faces.width(code, face, 1000)
        doc.font(`${face} 0`)
        const [, positions] = (doc as unknown as { _font: EmbeddedFont })._font.encode(code)
        expect(width).toBeCloseTo(
          positions.reduce((sum, { xAdvance }) => sum + xAdvance, 0),
          6,
        )
      }
    },
  )

  test('a line is as wide as its words and spaces, whatever was measured before', () => {
    const { faces } = opened()
    const line = 'Before tasting,  boil 11 min'
    const alone = faces.width(line, 'text', 10)
    const parts = ['Before', ' ', 'tasting,', ' ', ' ', 'boil', ' ', '11', ' ', 'min']
    expect(parts.reduce((sum, part) => sum + faces.width(part, 'text', 10), 0)).toBeCloseTo(alone, 9)
    for (let index = 0; index < 5000; index += 1) faces.width(`word${index}`, 'text', 10)
    expect(faces.width(line, 'text', 10)).toBe(alone)
  })

  test('a letter that no face has is told, and a question mark stands for it', () => {
    const { faces } = opened()
    expect(
      faces
        .runs('a\u0416b', 'text')
        .map(({ text }) => text)
        .join(''),
    ).toBe('a?b')
    expect([...faces.missingLetters]).toEqual(['\u0416'])
  })
})
