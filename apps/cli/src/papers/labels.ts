/** Labels for what the pantry holds. */
import type { LabelSheetId } from '@crib/paper'
import { badInput } from '../exit-codes.ts'
import { labelDocument } from '../sheets.ts'
import type { Asked, MakePaper } from './paper-flags.ts'

export const LABEL_PAPERS = {
  'jar-labels': (asked) => labels('jar', asked),
  'bag-labels': (asked) => labels('bag', asked),
} satisfies Record<string, MakePaper>

function labels(form: 'jar' | 'bag', asked: Asked) {
  const { flags } = asked
  const wish = {
    sheet: flags.labels ?? usualSheet(flags),
    skip: readSkip(flags.skip),
    ...(flags.load !== undefined && { code: flags.load }),
  }
  return labelDocument(form, wish, asked)
}

/** By the paper in the tray; large print takes a larger label. */
function usualSheet({ paper, large }: Asked['flags']): LabelSheetId {
  if (large) return paper === 'a4' ? 'a4-2x4' : 'letter-2x3'
  return paper === 'a4' ? 'a4-3x7' : 'letter-2x5'
}

function readSkip(given: string): number {
  const skip = Number(given)
  if (!Number.isInteger(skip) || skip < 0) throw badInput('terminal:bad-count', { given })
  return skip
}
