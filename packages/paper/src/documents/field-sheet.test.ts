import { type FieldPlanInput, fieldPlan } from '@crib/planning'
import { createWords } from '@crib/wording'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { KETTLEBROOK_FIELD } from '../../../planning/testing/kettlebrook-field.ts'
import { reckoned, setting } from '../../testing/invented-days.ts'
import { POPPLER_FOUND, pagesOf, textOf } from '../../testing/read-pdf.ts'
import { fieldSheetOfPlan, renderHtml } from '../index.ts'
import type { Ink } from '../layout/ink.ts'
import { KNOWN_MEASURE } from '../layout/known-widths.ts'
import { layOut } from '../layout/pages.ts'
import { renderPdf } from '../pdf/index.ts'
import { type FieldSheetInput, fieldSheet, plotBlock } from './field-sheet.ts'

const words = createWords()
const BESIDE = {
  plot: 'Behind the house, Kettlebrook Hollow',
  date: '2026-04-20',
  cornName: 'Heron Foot flint',
  rowsBearingDeg: 90,
  neighbours: [
    { name: 'the field over the road', distance: reckoned(120, 'M'), bearingDeg: 240, halfTasselOn: '2026-07-24' },
    { name: 'the garden next door', distance: reckoned(40, 'M'), bearingDeg: 95 },
    { name: 'the school garden', distance: reckoned(400, 'M'), bearingDeg: 250 },
  ],
}
const sheet = (more: Partial<FieldPlanInput> = {}, paper: 'letter' | 'a4' = 'letter') => {
  const input = { ...KETTLEBROOK_FIELD, ...more }
  return fieldSheetOfPlan(fieldPlan(input), input, BESIDE, setting(paper), words)
}
const HILLS = { pattern: 'hills', rowSpacingM: 1.2192, inRowSpacingM: 1.2192, withBeans: true } as const
const groundInput = (lengthM: number, widthM: number): FieldSheetInput => ({
  plot: 'x',
  date: '2026-04-20',
  seedLines: [],
  amounts: [],
  ground: {
    lengthM,
    widthM,
    rowsCount: 4,
    perRowCount: 4,
    rowSpacingM: widthM / 4,
    inRowSpacingM: lengthM / 4,
    pattern: 'rows',
  },
})

describe('the field sheet', () => {
  test('draws every row to scale: 11 rows on 34 by 33 ft at 1 to 200', () => {
    const block = sheet().blocks.find(({ kind }) => kind === 'plot')
    if (block?.kind !== 'plot') throw new Error('no plot')
    expect(block).toMatchObject({ scale: 200, northDeg: -90 })
    expect(block.rows).toHaveLength(11)
    // The first row stands half a row in from the edge; 10.36 m are 34 ft.
    expect(block.rows[0]?.acrossM).toBeCloseTo(0.4572, 9)
    expect(block.lengthM).toBeCloseTo(10.3632, 9)
    const [page] = layOut(sheet(), KNOWN_MEASURE)
    const frame = page!.ink
      .filter((one): one is Extract<Ink, { ink: 'rect' }> => one.ink === 'rect')
      .find(({ fill }) => fill === undefined)
    // 10.3632 m at 1 to 200 is 51.8 mm; 33 ft across is 50.3 mm.
    expect((frame!.box.width / 72) * 25.4).toBeCloseTo(51.8, 1)
    expect((frame!.box.height / 72) * 25.4).toBeCloseTo(50.3, 1)
  })

  test('points north and towards each neighbour, two that lie one way together', () => {
    const block = sheet().blocks.find(({ kind }) => kind === 'plot')
    if (block?.kind !== 'plot') throw new Error('no plot')
    // Rows run east: a neighbour at 95° lies 5° below the right, at 240° 150° round.
    expect(block.towards).toEqual([
      { deg: 150, mark: '1, 3' },
      { deg: 5, mark: '2' },
    ])
  })

  test.each([undefined, true] as const)('keeps marks off the words of the sides, large print %s', (largePrint) => {
    const document = fieldSheetOfPlan(
      fieldPlan(KETTLEBROOK_FIELD),
      KETTLEBROOK_FIELD,
      BESIDE,
      { ...setting('letter'), largePrint: largePrint ?? false },
      words,
    )
    const texts = layOut(document, KNOWN_MEASURE)[0]!.ink.filter(
      (one): one is Extract<Ink, { ink: 'text' }> => one.ink === 'text',
    )
    const sides = texts.filter(({ text }) => /^10\.[14]\s/.test(text))
    const marks = texts.filter(({ text }) => text === '2' || text === '1, 3')
    expect([sides.length, marks.length]).toEqual([2, 2])
    const right = ({ x, text, face, sizePt }: (typeof texts)[number]) => x + KNOWN_MEASURE.width(text, face, sizePt)
    for (const mark of marks)
      for (const side of sides) {
        const apartAcross = mark.x > right(side) + 2 || side.x > right(mark) + 2
        const apartDown = Math.abs(mark.baselineY - side.baselineY) > Math.max(mark.sizePt, side.sizePt)
        expect(apartAcross || apartDown, `${mark.text} at ${side.text}`).toBe(true)
      }
    // Nor does a mark lie on the head of its own arrow.
    const heads = layOut(document, KNOWN_MEASURE)[0]!.ink.flatMap((one) =>
      one.ink === 'line' && one.points.length === 3 ? [one.points[1]!] : [],
    )
    for (const mark of marks)
      for (const [x, y] of heads) {
        const inside = x > mark.x && x < right(mark) && y > mark.baselineY - mark.sizePt * 0.7 && y < mark.baselineY
        expect(inside, `${mark.text} on an arrow`).toBe(false)
      }
  })

  test('draws hills as rings, and as plain ground where they would run together', () => {
    const rings = (document: ReturnType<typeof sheet>) =>
      layOut(document, KNOWN_MEASURE).flatMap(({ ink }) => ink.filter((one) => one.ink === 'circle')).length
    // The nail hole is a ring as well.
    const plan = fieldPlan({ ...KETTLEBROOK_FIELD, ...HILLS })
    expect(rings(sheet(HILLS))).toBe(plan.block.placesCount + 1)
    expect(rings(sheet({ ...HILLS, foodLb: 3000, rowSpacingM: 0.9, inRowSpacingM: 0.9 }))).toBe(1)
  })

  test('shows the drawing on a screen too, with words for whoever cannot see it', () => {
    const html = renderHtml(sheet())
    expect(html).toContain('<figure class="paper-plot"><svg role="img" aria-label="Plot of 11 rows, 10.4 m')
  })

  test('any ground fits its sheet, at the largest usual scale', () => {
    const side = fc.double({ min: 0.5, max: 5000, noNaN: true })
    fc.assert(
      fc.property(side, side, fc.constantFrom('letter' as const, 'a4' as const), (lengthM, widthM, paper) => {
        const input = groundInput(lengthM, widthM)
        const document = fieldSheet(input, setting(paper), words)
        const [page] = layOut(document, KNOWN_MEASURE)
        for (const one of page!.ink) {
          if (one.ink === 'rect') expect(one.box.x + one.box.width).toBeLessThanOrEqual(page!.widthPt)
        }
        const { scale } = plotBlock(input, setting(paper), words)
        expect((lengthM * 1000) / scale).toBeLessThanOrEqual(130)
        expect((widthM * 1000) / scale).toBeLessThanOrEqual(64)
      }),
      { numRuns: 40 },
    )
  })

  test('ground without a size is refused', () => {
    expect(() => fieldSheet(groundInput(0, 10), setting('a4'), words)).toThrow('cannot be drawn')
  })

  test.skipIf(!POPPLER_FOUND).each(['letter', 'a4'] as const)(
    'prints what it must on one page of %s',
    async (paper) => {
      for (const more of [{}, HILLS]) {
        const pdf = await renderPdf(sheet(more, paper))
        const text = textOf(pdf)
        expect(pagesOf(pdf)).toHaveLength(1)
        for (const phrase of [
          'Field sheet: Behind the house',
          'Seed first, then food: 1,020 kernels',
          'Heron Foot flint',
          'Drawn 1 to',
          'north',
          '1 the field over the road 120 m',
          '24 Jul 2026',
          'Half of plants silk on',
          'Invented demo',
        ]) {
          expect(text).toContain(phrase)
        }
        expect(text).not.toMatch(/\bpure|\bsafe/i)
      }
      expect(textOf(await renderPdf(sheet(HILLS, paper)))).toContain('Pole bean seeds')
    },
  )
})
