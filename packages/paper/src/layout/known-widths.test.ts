import PDFDocument from 'pdfkit'
import { expect, test } from 'vitest'
import { Faces } from '../pdf/faces.ts'
import type { Face } from './ink.ts'
import { KNOWN_MEASURE, knownWidth } from './known-widths.ts'

const FACES: readonly Face[] = ['text', 'text-strong', 'display']
const faces = new Faces(new PDFDocument({ autoFirstPage: false }))

test.each(FACES)('every known width of the %s face is that of the font file', (face) => {
  for (let code = 32; code < 127; code += 1) {
    const letter = String.fromCharCode(code)
    // Half a thousandth: the table is written in whole thousandths of the size.
    expect(Math.abs(knownWidth(letter, face) - faces.width(letter, face, 1000)), letter).toBeLessThanOrEqual(0.5)
  }
})

test.each(FACES)('heights of the %s face are those of the font file', (face) => {
  expect(KNOWN_MEASURE.metrics(face)).toEqual(faces.metrics(face))
})

test.each(FACES)('a line set by known widths is never narrower than the font makes it, %s face', (face) => {
  const text = 'Bulged, leaking, spurting, cloudy or off: never taste. AVATAR Type 11 min'
  expect(KNOWN_MEASURE.width(text, face, 9)).toBeGreaterThanOrEqual(faces.width(text, face, 9))
})
