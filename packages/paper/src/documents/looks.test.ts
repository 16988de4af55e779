/**
 * Every page as it was last looked at by a person. A change ends up in .kettle/changed-pages as a picture; once looked at and found
 * right, `LOOKED_AT=1 npx vitest run packages/paper/src/documents/looks.test.ts` keeps the new look.
 */
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { PNG } from 'pngjs'
import { describe, expect, test } from 'vitest'
import { LABEL_CASES, PLAIN_CASES } from '../../testing/every-sheet.ts'
import { changedSquares, LOOK_DPI, lookOf } from '../../testing/looks.ts'
import { POPPLER_FOUND, picturesOf } from '../../testing/read-pdf.ts'
import type { PaperDocument } from '../model.ts'
import { renderPdf } from '../pdf/index.ts'

const LOOKS = new URL('../../testing/looks/', import.meta.url)
const CHANGED = new URL('../../../../.kettle/changed-pages/', import.meta.url)
const KEEP_NEW = process.env.LOOKED_AT === '1'

/** A4 differs from Letter by its edges alone, and every-sheet.test.ts holds both inside theirs. */
const LETTER = PLAIN_CASES.filter(({ document }) => document.paper === 'letter')
const CASES: readonly { readonly name: string; readonly document: PaperDocument }[] = [
  ...LETTER,
  ...LABEL_CASES.filter(({ name }) => name.startsWith('jar labels')),
  ...LETTER.map(({ name, document }) => ({
    name: `${name}, large print`,
    document: { ...document, largePrint: true } as const,
  })),
]

const fileName = (name: string) => `${name.replace(/[^a-z0-9]+/gi, '-').toLowerCase()}.txt`
const PAGE_BREAK = '\n=\n'

async function looksOf(
  document: PaperDocument,
): Promise<{ readonly pictures: readonly PNG[]; readonly looks: string[] }> {
  const pictures = picturesOf(await renderPdf(document), LOOK_DPI)
  return { pictures, looks: pictures.map(lookOf) }
}

/** Each is set, drawn and read. [ms] */
const TIME_OUT = 60_000

describe.skipIf(!POPPLER_FOUND)('looks as it did (needs poppler-utils)', { timeout: TIME_OUT }, () => {
  test.each(CASES)('$name', async ({ name, document }) => {
    const file = new URL(fileName(name), LOOKS)
    const { pictures, looks } = await looksOf(document)
    if (KEEP_NEW) {
      mkdirSync(LOOKS, { recursive: true })
      writeFileSync(file, `${looks.join(PAGE_BREAK)}\n`)
    }
    const before = existsSync(file) ? readFileSync(file, 'utf8').trimEnd().split(PAGE_BREAK) : []
    const changed = looks.flatMap((look, index) => {
      const squares = changedSquares(before[index]?.trimEnd() ?? '', look.trimEnd())
      if (squares.length === 0) return []
      mkdirSync(CHANGED, { recursive: true })
      const picture = new URL(`${fileName(name).replace('.txt', '')}-${index + 1}.png`, CHANGED)
      writeFileSync(picture, PNG.sync.write(pictures[index]!))
      return [`page ${index + 1}: ${squares.slice(0, 5).join('; ')}; see ${picture.pathname}`]
    })
    expect(changed).toEqual([])
    expect(looks).toHaveLength(before.length)
  })

  test('every look that is kept is of a sheet that is still made', () => {
    expect(readdirSync(LOOKS).sort()).toEqual(CASES.map(({ name }) => fileName(name)).sort())
  })

  const [{ document }] = PLAIN_CASES as [(typeof PLAIN_CASES)[number]]
  const moved: readonly (readonly [string, PaperDocument])[] = [
    [
      'a line more',
      {
        ...document,
        blocks: [...document.blocks.slice(0, 2), { kind: 'line', text: 'One more.' }, ...document.blocks.slice(2)],
      },
    ],
    ['a wider margin', { ...document, marginMm: 14 }],
    ['a heading less', { ...document, blocks: document.blocks.filter(({ kind }) => kind !== 'heading') }],
  ]
  test.each(moved)('%s is noticed', async (_what, other) => {
    const before = await looksOf(document)
    const after = await looksOf(other)
    expect(changedSquares(before.looks[0]!, after.looks[0]!).length).toBeGreaterThan(20)
  })

  test('the same page a little lighter or darker, as another renderer would draw it, is no change', async () => {
    const { pictures, looks } = await looksOf(document)
    const page = pictures[0]!
    const other = new PNG({ width: page.width, height: page.height })
    for (let at = 0; at < page.data.length; at += 1) {
      other.data[at] = at % 4 === 3 ? 255 : Math.min(255, Math.max(0, 255 - (255 - (page.data[at] ?? 255)) * 1.08))
    }
    expect(changedSquares(looks[0]!, lookOf(other))).toEqual([])
  })
})
