import { expect, test } from 'vitest'
import { LABEL_CASES, PLAIN_CASES } from '../../testing/every-sheet.ts'
import type { Block, PaperDocument } from '../model.ts'
import { checkDocument } from './check-document.ts'
import { KNOWN_MEASURE } from './known-widths.ts'
import { layOut } from './pages.ts'

const { document } = PLAIN_CASES[0]!
const labels = LABEL_CASES[0]!.document.blocks[0] as Extract<Block, { kind: 'labels' }>

test.each([...PLAIN_CASES, ...LABEL_CASES])('$name passes', ({ document }) => {
  expect(() => checkDocument(document)).not.toThrow()
})

const blocks = (...given: unknown[]) => ({ blocks: given as Block[] })
const BAD: readonly (readonly [string, object, string])[] = [
  ['an unknown paper', { paper: 'foolscap' }, 'paper is "foolscap"'],
  ['a margin below what a printer reaches', { marginMm: -3 }, 'marginMm is -3; it must lie between 5 and 40 mm'],
  ['a margin that is no number', { marginMm: Number.NaN }, 'marginMm is NaN'],
  ['type without end', { typePt: Number.POSITIVE_INFINITY }, 'typePt is Infinity; it must lie between 9 and 40 pt'],
  ['type below 9 pt', { typePt: 6 }, 'typePt is 6'],
  ['a block nobody knows', blocks({ kind: 'banner' }), '"banner" is no kind of block'],
  ['such a block inside another', blocks({ kind: 'together', blocks: [{ kind: 'banner' }] }), '"banner" is no kind'],
  [
    'a billion boxes',
    blocks({ kind: 'checklist', careWord: '', items: [{ text: '', tallyCount: 1e9 }] }),
    'tallyCount',
  ],
  ['a code below 20 mm', blocks({ kind: 'qr', content: 'x', sizeMm: 8, caption: '' }), 'sizeMm is 8'],
  ['a code too long', blocks({ kind: 'qr', content: 'x'.repeat(500), sizeMm: 20, caption: '' }), '500 characters'],
  [
    'a label sheet of no columns',
    blocks({ ...labels, sheet: { ...labels.sheet, columnCount: 0 } }),
    'columnCount is 0',
  ],
  ['more labels skipped than there are', blocks({ ...labels, skipCount: 21 }), 'skipCount is 21'],
]

test.each(BAD)('%s is refused before anything is drawn', (_what, change, message) => {
  expect(() => layOut({ ...document, ...change } as PaperDocument, KNOWN_MEASURE)).toThrow(message)
})
