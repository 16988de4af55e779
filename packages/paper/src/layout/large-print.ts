/**
 * The same document for people who read large print: one thing under the other, lines to write on below what they belong
 * to. Nothing is left out; it takes more pages.
 */
import type { Block, ChecklistBlock, PaperDocument } from '../model.ts'

/** Least size of any word in large print. [pt]  common practice, no source: 16 to 18 */
export const LARGE_LEAST_PT = 16
/** Running text in large print. [pt] */
export const LARGE_BODY_PT = 18

/** A table of no more rows than this stays on one page. [rows] */
const FEW_ROWS = 6

/** Blocks rearranged for large type; a document of ordinary print is handed back as it is. */
export function enlarged(document: PaperDocument): PaperDocument {
  if (!document.largePrint) return document
  const { fitPages: _, typePt: __, blocks, ...kept } = document
  return { ...kept, blocks: blocks.flatMap(enlargedBlock) }
}

function enlargedBlock(block: Block): readonly Block[] {
  switch (block.kind) {
    case 'big-number': {
      const notes = [...block.why, ...block.small].map(lineOf)
      return [{ ...block, why: [], small: [] }, ...(notes.length > 0 ? [{ kind: 'rule' } as const, ...notes] : [])]
    }
    case 'facts':
      return [{ ...block, columns: block.columns === 1 ? 1 : 2 }]
    case 'write-ins':
      return [{ ...block, columns: 1 }]
    case 'checklist':
      return stepByStep(block)
    case 'columns':
      return block.columns.flatMap(({ blocks }) => blocks.flatMap(enlargedBlock))
    case 'table':
      return block.rows.length > FEW_ROWS ? [block] : [{ kind: 'together', blocks: [block] }]
    case 'together':
      return [{ ...block, blocks: block.blocks.flatMap(enlargedBlock) }]
    default:
      return [block]
  }
}

function lineOf(text: string): Block {
  return { kind: 'line', text }
}

/** Each step with its own lines to write on below it. */
function stepByStep({ careWord, items }: ChecklistBlock): readonly Block[] {
  const hasMargin = items.some(({ margin }) => margin !== undefined)
  return items.flatMap(({ writeIns = [], cautions = [], ...item }): Block[] => {
    const step: Block = {
      kind: 'checklist',
      careWord,
      // Steps without a clock keep in line with those that have one.
      items: [{ ...item, ...(hasMargin && { margin: item.margin ?? '' }) }],
    }
    const care: Block[] = cautions.length === 0 ? [] : [{ kind: 'cautions', careWord, lines: cautions }]
    if (writeIns.length === 0) return [step, ...care]
    const lines = writeIns.map((label) => ({ label }))
    return [
      { kind: 'together', blocks: [step, ...care, { kind: 'write-ins', columns: lines.length > 1 ? 2 : 1, lines }] },
    ]
  })
}
