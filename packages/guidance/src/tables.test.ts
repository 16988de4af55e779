/** Every data file is loaded, cites known sources, and every message it names exists. */
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import dial from '../data/pressure-bands-dial.json' with { type: 'json' }
import { pressureBandsSchema } from '../schema/process-tables.ts'
import { CAUTIONS, cautionsFor, MOMENTS } from './cautions.ts'
import { HABITS } from './habits.ts'
import { loadTable } from './load.ts'
import { GUIDANCE_TABLES } from './tables.ts'

const here = (path: string): URL => new URL(path, import.meta.url)
const readText = (path: string): string => readFileSync(here(path), 'utf8')
const bibKeys = new Set(
  [...readText('../../science/sources.bib').matchAll(/^@\w+\{([^,]+),/gm)].map((match) => match[1]),
)

test('every file in data/ is loaded and listed once', () => {
  const files = readdirSync(here('../data/')).map((name) => name.replace('.json', ''))
  expect(files.length).toBeGreaterThan(25)
  expect(GUIDANCE_TABLES.map((table) => table.id).sort()).toEqual(files.sort())
})

describe.each(GUIDANCE_TABLES)('$id', (table) => {
  test('cites sources that are in sources.bib', () => {
    const rowSources = table.rows.flatMap((row) => [row.source, row.habitSource, row.todaySource])
    const cited = [table.source, ...table.alsoSources, ...rowSources].filter((key) => typeof key === 'string')
    expect(cited.filter((key) => !bibKeys.has(key))).toEqual([])
  })

  test('says who copied it, and against what it was checked', () => {
    expect(table.transcribedBy).toBe('transcriber 1')
    expect(table.checkedBy === null).toBe(table.checkedAgainst === null)
  })
})

describe('messages', () => {
  const guidance: Record<string, string> = JSON.parse(readText('../../../messages/en/guidance.json'))
  const cautions: Record<string, string> = JSON.parse(readText('../../../messages/en/cautions.json'))

  test('every habit has its sentence, with a reason', () => {
    expect(HABITS.rows.map((row) => guidance[row.message])).toEqual(
      HABITS.rows.map(() => expect.stringMatching(/because|so that/)),
    )
  })

  test('the cautions of the data file and of the message file are the same', () => {
    expect(CAUTIONS.rows.map((row) => row.message).sort()).toEqual(Object.keys(cautions).sort())
  })

  test.each(MOMENTS)('at the moment "%s" there is a caution, and no wall of them', (moment) => {
    expect(cautionsFor(moment).length).toBeGreaterThanOrEqual(1)
    expect(cautionsFor(moment).length).toBeLessThanOrEqual(5)
  })

  test('each caution is one line', () => {
    expect(Object.entries(cautions).filter(([, text]) => text.length > 165 || text.includes('\n'))).toEqual([])
  })

  // Issue "cautions on day one".
  test.each([
    ['alkali', /goggles/],
    ['first-rub', /Gloves for the first rub/],
    ['alkali', /No aluminium pot or colander/],
    ['alkali', /open window/],
    ['alkali', /children/],
    ['foam', /Foam/],
    ['ash', /Live embers/],
    ['ash', /may have burnt in that fire/],
    ['wash-water', /not go down a drain/],
    ['seed', /Dressed \(treated\) seed corn is never food/],
    ['sort', /Mouldy/],
    ['lid', /away from your face/],
    ['pressure', /dial/],
    ['tasting', /do not taste/],
  ] as const)('%s: %s', (moment, words) => {
    const texts = cautionsFor(moment).map((sentence) => cautions[sentence.key.replace('cautions:', '')])
    expect(texts.some((text) => words.test(text ?? ''))).toBe(true)
  })
})

describe('a broken row', () => {
  test.each([
    ['a pressure that falls with height', (copy: typeof dial) => (copy.rows[2]!.setPsi = 11)],
    ['bands out of order', (copy: typeof dial) => (copy.rows[1]!.upToFt = 9000)],
    ['a table that ends elsewhere', (copy: typeof dial) => (copy.tableMaxFt = 10_000)],
    ['a pressure no canner holds', (copy: typeof dial) => (copy.rows[3]!.setPsi = 41)],
    ['another edition', (copy: typeof dial) => (copy.edition = 'guidance-1999-01')],
    ['an unknown standing', (copy: typeof dial) => (copy.standing.now = 'approved')],
  ])('does not load: %s', (_what, breakIt) => {
    const copy = structuredClone(dial)
    breakIt(copy)
    expect(() => loadTable(pressureBandsSchema, copy)).toThrow(/pressure-bands-dial/)
    expect(() => loadTable(pressureBandsSchema, structuredClone(dial))).not.toThrow()
  })
})
