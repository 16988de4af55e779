/** A document may come over the network as JSON: what layout cannot draw is refused before it is tried. */
import type { Block, LabelSheet, PaperDocument, QrCode } from '../model.ts'
import { PAPER_MM } from '../sheets.ts'
import { SMALLEST_PT } from './text.ts'

const KINDS: ReadonlySet<string> = new Set<Block['kind']>([
  'head',
  'heading',
  'line',
  'notice',
  'big-number',
  'facts',
  'table',
  'checklist',
  'cautions',
  'write-ins',
  'qr',
  'tag',
  'columns',
  'rule',
  'together',
  'labels',
  'plot',
  'curves',
  'cut-jar',
])

/** A code longer than this has squares too small for an old phone at 20 mm. [characters]  project rule */
const LONGEST_CODE = 120

/** @throws {RangeError} naming the part, its value and its limits. */
export function checkDocument({ paper, marginMm, typePt, fitPages, largePrint, blocks }: PaperDocument): void {
  if (!Object.hasOwn(PAPER_MM, paper)) throw new RangeError(`paper is "${paper}"; it must be one of: letter, a4`)
  if (largePrint !== undefined && largePrint !== true)
    throw new RangeError(`largePrint is ${JSON.stringify(largePrint)}; it must be true or left out`)
  within('marginMm', marginMm, 5, 40, 'mm')
  if (typePt !== undefined) within('typePt', typePt, SMALLEST_PT, 40, 'pt')
  if (fitPages !== undefined) within('fitPages', fitPages, 1, 100, 'pages')
  checkBlocks(blocks)
}

function checkBlocks(blocks: readonly Block[]): void {
  for (const block of blocks) {
    if (!KINDS.has(block.kind)) throw new RangeError(`"${block.kind}" is no kind of block`)
    if (block.kind === 'head' && block.qr) checkCode(block.qr)
    if (block.kind === 'qr') checkCode(block)
    if (block.kind === 'together') checkBlocks(block.blocks)
    if (block.kind === 'columns') for (const { blocks: inner } of block.columns) checkBlocks(inner)
    if (block.kind === 'big-number') within('digitMm', block.digitMm, 5, 200, 'mm')
    if (block.kind === 'table') within('rowMm', block.rowMm ?? 0, 0, 100, 'mm')
    if (block.kind === 'checklist') {
      for (const { tallyCount = 0 } of block.items) within('tallyCount', tallyCount, 0, 20, 'boxes')
    }
    if (block.kind === 'plot') {
      within('lengthM', block.lengthM, 0.1, 10_000, 'm')
      within('widthM', block.widthM, 0.1, 10_000, 'm')
      within('scale', block.scale, 1, 1_000_000, 'to one')
      within('barM', block.barM, 0.1, 10_000, 'm')
      within('rows', block.rows.length, 0, 2000, 'rows')
      for (const { hillsM = [] } of block.rows) within('hillsM', hillsM.length, 0, 2000, 'hills')
    }
    if (block.kind === 'curves') {
      within('heightMm', block.heightMm, 20, 200, 'mm')
      for (const { points } of block.lines) within('points', points.length, 0, 5000, 'points')
      for (const { min, max } of [block.across, block.up, block.upAlso])
        within('max', max, min + 1e-9, 1e12, 'above min')
    }
    if (block.kind === 'cut-jar') {
      within('heightMm', block.heightMm, 20, 200, 'mm')
      const cellCount = (block.ringsM.length - 1) * (block.levelsM.length - 1)
      within('steps', block.steps.length, cellCount, cellCount, 'cells')
      for (const step of block.steps) within('step', step, 0, block.scale.length - 1, 'steps')
    }
    if (block.kind === 'labels') {
      checkSheet(block.sheet)
      within('skipCount', block.skipCount, 0, block.sheet.columnCount * block.sheet.rowCount - 1, 'labels')
      for (const { qr } of block.labels) if (qr) checkCode(qr)
    }
  }
}

function checkSheet(sheet: LabelSheet): void {
  within('columnCount', sheet.columnCount, 1, 20, 'columns')
  within('rowCount', sheet.rowCount, 1, 40, 'rows')
  within('widthMm', sheet.widthMm, 10, 300, 'mm')
  within('heightMm', sheet.heightMm, 10, 300, 'mm')
  for (const name of ['topMm', 'leftMm', 'gapXMm', 'gapYMm'] as const) within(name, sheet[name], 0, 100, 'mm')
}

function checkCode({ content, sizeMm }: QrCode): void {
  within('sizeMm', sizeMm, 20, 100, 'mm')
  if (content.length > LONGEST_CODE) {
    throw new RangeError(
      `a code holds ${content.length} characters; at most ${LONGEST_CODE} can be read back with ease`,
    )
  }
}

function within(name: string, value: number, min: number, max: number, unit: string): void {
  if (!(value >= min && value <= max))
    throw new RangeError(`${name} is ${value}; it must lie between ${min} and ${max} ${unit}`)
}
