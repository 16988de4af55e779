/** A recall of the book onto its two sheets. */
import type { Recall } from '@crib/planning'
import { CODE_VERSION, type Reckoned } from '@crib/science/values'
import type { Words } from '@crib/wording'
import { callList, type RecallNoticeInput, recallNotice } from '../documents/recall-notice.ts'
import type { PrintSetting } from '../documents/said.ts'
import type { PaperDocument } from '../model.ts'

export interface RecallBeside extends Omit<RecallNoticeInput, 'codes'> {
  /** Day of filling by load code, ISO 8601, where the book says. */
  readonly filledOn?: { readonly [loadCode: string]: string }
}

/** By codes alone; `recall` may know names, and none of them is handed on. */
export function recallNoticeOfRecall(
  { loadCodes, lots }: Pick<Recall, 'loadCodes' | 'lots'>,
  { filledOn = {}, ...beside }: RecallBeside,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  const codes = loadCodes.map((code) => {
    const jars = lots.reduce((sum, lot) => (lot.loadCode === code ? sum + lot.putUpCount : sum), 0)
    const day = filledOn[code]
    return { code, jars: countOf(jars, setting.edition), ...(day !== undefined && { filledOn: day }) }
  })
  return recallNotice({ ...beside, codes }, setting, words)
}

/** Households with the codes they have or had, for the keeper alone. */
export function callListOfRecall(
  { lots, households, notes }: Pick<Recall, 'lots' | 'households' | 'notes'>,
  { date, about }: Pick<RecallBeside, 'date' | 'about'>,
  setting: PrintSetting,
  words: Words,
): PaperDocument {
  const called = households.map((household) => {
    const theirs = lots.flatMap(({ loadCode, household: owner, putUpCount, given }) => {
      const givenCount = given.reduce((sum, { toWhom, count }) => (toWhom === household ? sum + count : sum), 0)
      // What the owner gave on is counted with whoever has it now.
      const away = given.reduce((sum, { toWhom, count }) => (toWhom === null ? sum : sum + count), 0)
      const count = (owner === household ? putUpCount - away : 0) + givenCount
      return count > 0 || owner === household ? [{ loadCode, count }] : []
    })
    const jars = theirs.reduce((sum, { count }) => sum + count, 0)
    const codes = [...new Set(theirs.map(({ loadCode }) => loadCode))]
    return { household, codes, jars: countOf(jars, setting.edition) }
  })
  return callList({ date, about, households: called, notes }, setting, words)
}

function countOf(value: number, edition: string): Reckoned {
  const rounding = { mode: 'nearest', step: 1 } as const
  const common = { unit: 'Count', rounding, basis: 'own-record', sourceKeys: [], inputs: {} } as const
  return { id: 'recalledJars', value, ...common, edition, codeVersion: CODE_VERSION }
}
