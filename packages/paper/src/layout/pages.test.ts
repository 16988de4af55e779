import fc from 'fast-check'
import { expect, test } from 'vitest'
import type { PaperDocument } from '../model.ts'
import { LABEL_SHEETS } from '../sheets.ts'
import { layOut, turnPages } from './pages.ts'
import type { Piece } from './piece.ts'
import type { Measure } from './text.ts'

const measure: Measure = {
  width: (text, _face, sizePt) => text.length * sizePt * 0.5,
  metrics: () => ({ ascent: 0.95, descent: 0.29, capital: 0.67 }),
}

const DOCUMENT: PaperDocument = {
  title: 'A sheet',
  paper: 'letter',
  marginMm: 14,
  invented: true,
  madeAt: '2026-11-03T08:00:00Z',
  footer: { pageOf: 'page {page} of {pages}', edition: 'e', inventedLine: 'invented', missingLetters: 'm' },
  blocks: [],
}

const piece = (height: number, more: Partial<Piece> = {}): Piece => ({ height, gapBefore: 0, ink: () => [], ...more })

test('a heading never ends a page', () => {
  const heading = piece(10, { keepWithNext: true })
  const pages = turnPages([piece(85), heading, piece(20)], 100)
  expect(pages.map((page) => page.length)).toEqual([1, 2])
  expect(pages[1]?.[0]).toBe(heading)
})

test('the head row of a table is printed again on the page the table reaches', () => {
  const head = piece(10, { keepWithNext: true })
  const row = () => piece(30, { repeat: head })
  const pages = turnPages([head, row(), row(), row(), row()], 100)
  expect(pages.map((page) => page.length)).toEqual([4, 2])
  expect(pages[1]?.[0]).toBe(head)
})

test('no page is fuller than its height, and no piece is lost or moved', () => {
  const heights = fc.array(
    fc.record({ height: fc.integer({ min: 1, max: 60 }), gapBefore: fc.integer({ min: 0, max: 15 }) }),
  )
  fc.assert(
    fc.property(heights, (list) => {
      const pieces = list.map(({ height, gapBefore }) => piece(height, { gapBefore }))
      const pages = turnPages(pieces, 60)
      expect(pages.flat()).toEqual(pieces)
      for (const page of pages) {
        const used = page.reduce((total, one, index) => total + one.height + (index > 0 ? one.gapBefore : 0), 0)
        expect(used).toBeLessThanOrEqual(60)
      }
    }),
  )
})

test('type shrinks until the sheet fits its page, and never below 9 pt', () => {
  const blocks = Array.from({ length: 45 }, () => ({ kind: 'line', text: 'One more thing to do.' }) as const)
  const free = layOut({ ...DOCUMENT, typePt: 12, blocks }, measure)
  const fitted = layOut({ ...DOCUMENT, typePt: 12, fitPages: 1, blocks }, measure)
  expect([free.length, fitted.length]).toEqual([2, 1])
  const sizes = fitted.flatMap(({ ink }) => ink.flatMap((one) => (one.ink === 'text' ? [one.sizePt] : [])))
  expect(Math.min(...sizes)).toBeGreaterThanOrEqual(9)
})

test('a sheet too long for one page even at 9 pt goes on overleaf rather than losing a line', () => {
  const blocks = Array.from({ length: 120 }, (_, index) => ({ kind: 'line', text: `Line ${index}.` }) as const)
  const pages = layOut({ ...DOCUMENT, fitPages: 1, blocks }, measure)
  expect(pages.length).toBe(3)
  const texts = pages.flatMap(({ ink }) => ink.flatMap((one) => (one.ink === 'text' ? [one.text] : [])))
  expect(texts.filter((text) => text.startsWith('Line '))).toHaveLength(120)
})

test('labels must stand alone in their document', () => {
  const blocks = [
    { kind: 'labels', sheet: LABEL_SHEETS['a4-3x7'], skipCount: 0, labels: [] } as const,
    { kind: 'rule' } as const,
  ]
  expect(() => layOut({ ...DOCUMENT, blocks }, measure)).toThrow('a document of their own')
})
