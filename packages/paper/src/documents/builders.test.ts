import { createWords } from '@crib/wording'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import * as days from '../../testing/invented-days.ts'
import {
  batchSheet,
  cannerCard,
  jarLabels,
  type PaperDocument,
  processLog,
  refusedCard,
  renderHtml,
  wallBoard,
} from '../index.ts'
import { KNOWN_MEASURE } from '../layout/known-widths.ts'
import { layOut } from '../layout/pages.ts'
import { renderPdf } from '../pdf/index.ts'
import { dateText, numberParts } from './said.ts'

const words = createWords()
const setting = days.setting('letter')
const textOf = (document: PaperDocument) =>
  layOut(document, KNOWN_MEASURE)
    .flatMap(({ ink }) => ink.flatMap((one) => (one.ink === 'text' ? [one.text] : [])))
    .join(' ')

describe('the canner card', () => {
  test('of a dial that does not say what a dip is, is refused', () => {
    const { dipBelow: _, ...silent } = days.RIDGE_DIAL
    expect(() => cannerCard(silent, setting, words)).toThrow('dipBelow is missing')
  })

  test('prints no minutes until the standing of the process was read', () => {
    const { processMin: _, ...unread } = days.RIDGE_DIAL
    const text = textOf(cannerCard(unread, setting, words))
    expect(text).toContain('read where this process stands first')
    expect(text).not.toMatch(/\b(60|70)\b/)
    expect(text).not.toContain('Made out for')
  })

  test('without a gauge test leaves lines to write it on the tag', () => {
    const { gaugeTest: _, ...untested } = days.RIDGE_DIAL
    expect(textOf(cannerCard(untested, setting, words))).toContain('Last gauge test: ____________')
  })

  test('off the table prints no pressure at all', () => {
    const text = textOf(refusedCard(days.CAMP_REFUSED, setting, words))
    expect(text).not.toMatch(/psi|kPa|Hold/)
  })

  test('speaks the keeper’s own nouns', () => {
    const bottles = createWords({ hull: 'husk', hulls: 'husks', jar: 'bottle', jars: 'bottles', corn: 'flint' })
    expect(textOf(processLog({ head: {}, standing: [] }, setting, bottles))).toContain('Bottles, size and number')
  })
})

describe('the wall board', () => {
  test('shows load codes only, even when it is handed more than it asked for', () => {
    const loads = days.MILLRIND_BOARD.loads.map((load) => ({ ...load, household: 'house 3', keeper: 'the miller' }))
    const text = textOf(wallBoard({ ...days.MILLRIND_BOARD, loads }, setting, words))
    expect(text).toContain('B-2')
    expect(text).not.toMatch(/house 3|miller/)
  })
})

describe('labels', () => {
  const [label] = days.MILLRIND_LABELS

  test('refuse what they cannot hold rather than print half of it', async () => {
    const contents = 'Copper Hinge hominy, hulled with the ash of last winter’s maple and the apple tree by the gate'
    const document = jarLabels([{ ...label!, contents }], { sheet: 'letter-3x10' }, setting, words)
    await expect(renderPdf(document)).rejects.toThrow('take a larger label')
    expect(() => renderHtml(document)).toThrow('take a larger label')
  })

  test('that grow too long shrink, then wrap and shorten, then are refused with the offending text', () => {
    const inkFor = (contents: string) =>
      layOut(
        jarLabels([{ ...label!, contents }], { sheet: 'letter-2x5' }, setting, words),
        KNOWN_MEASURE,
      )[0]!.ink.flatMap((one) => (one.ink === 'text' ? [one] : []))
    const largestPt = (contents: string) => Math.max(...inkFor(contents).map(({ sizePt }) => sizePt))
    const name = (wordsCount: number) => Array.from({ length: wordsCount }, () => 'hominy').join(' ')
    expect(largestPt(name(30))).toBeLessThan(largestPt(name(1)))
    // Wrapped, and every word still there.
    const wrapped = inkFor(name(20))
    expect(wrapped.filter(({ text }) => /hominy/.test(text)).length).toBeGreaterThan(1)
    expect(wrapped.flatMap(({ text }) => text.match(/hominy/g) ?? [])).toHaveLength(20)
    expect(Math.min(...wrapped.map(({ sizePt }) => sizePt))).toBeGreaterThanOrEqual(9)
    const long = name(200)
    expect(() => inkFor(long)).toThrow(long)
    expect(() => inkFor(long)).toThrow('101.6 x 50.8 mm')
  })

  test('of a departed load say so even on the smallest label', () => {
    const real = { ...setting, invented: false }
    const text = textOf(jarLabels([{ ...label!, departed: true }], { sheet: 'letter-3x10' }, real, words))
    expect(text).toContain('MILL-261103-B1')
    expect(text).toMatch(/Departed: see log\.$/)
    expect(text.replaceAll('\u00a0', ' ')).toContain('Boil 11 min before tasting')
  })

  test('begin after the places already used', () => {
    expect(() => jarLabels([label!], { sheet: 'a4-3x7', skipCount: 21 }, setting, words)).toThrow('places 0 to 20')
    const sheet = layOut(jarLabels([label!], { sheet: 'a4-3x7', skipCount: 20 }, setting, words), KNOWN_MEASURE)
    expect(sheet).toHaveLength(1)
  })

  test('are printed on the paper of their own sheet, whatever the setting', () => {
    expect(jarLabels([label!], { sheet: 'a4-3x7' }, setting, words).paper).toBe('a4')
  })

  test('of a real kitchen say nothing of a demo', () => {
    const document = jarLabels([label!], { sheet: 'letter-2x5' }, { ...setting, invented: false }, words)
    expect(textOf(document)).not.toMatch(/demo/i)
  })
})

describe('any sheet', () => {
  test('a walk too long for one side goes on overleaf, whole', () => {
    const stages = Array.from({ length: 60 }, (_, index) => ({
      what: `Stage ${index}.`,
      cautions: ['Hot.'],
      details: ['a', 'b'],
    }))
    const document = batchSheet({ ...days.OSTREY_BATCH, stages }, setting, words)
    expect(layOut(document, KNOWN_MEASURE).length).toBeGreaterThan(1)
    for (const { what } of stages) expect(textOf(document)).toContain(what)
  })

  test('takes whatever a keeper may write, and loses none of it', () => {
    const written = fc.string({ minLength: 1, maxLength: 3000 })
    fc.assert(
      fc.property(written, written, (name, note) => {
        const document = processLog(
          {
            head: { canner: name },
            standing: [note],
            run: {
              ...days.HARK_LAKE_LOG.run!,
              departures: [note],
              lines: [{ clock: days.reckoned(600, 'ClockMin'), what: note }],
            },
          },
          setting,
          words,
        )
        const squeezed = (text: string) => text.replace(/[\s\u00a0]/g, '')
        expect(squeezed(textOf(document))).toContain(squeezed(note))
      }),
      { numRuns: 30 },
    )
  })

  test('dates read alike everywhere, and what is no date is refused', () => {
    expect(dateText('2026-11-03')).toBe('3 Nov 2026')
    expect(() => dateText('3/11/26')).toThrow('is not a date')
  })

  test.each([
    [12, 'PsiGauge', { number: '12', unit: 'psi', beside: '83 kPa' }],
    [12.5, 'PsiGauge', { number: '12.5', unit: 'psi', beside: '86 kPa' }],
    [15, 'LbWeight', { number: '15', unit: 'lb weight', beside: '103 kPa' }],
  ] as const)('%s %s is parted for the big number', (value, unit, parts) => {
    expect(numberParts(days.reckoned(value, unit))).toEqual(parts)
  })
})
