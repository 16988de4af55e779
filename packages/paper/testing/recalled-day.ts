/** A recall to print: S6's canner B found in doubt. Counts are literals of the scenario; houses are invented. */
import type { RecalledLot } from '@crib/planning'
import type { Words } from '@crib/wording'
import { callListOfRecall, type PaperDocument, type PaperSize, recallNoticeOfRecall } from '../src/index.ts'
import { setting } from './invented-days.ts'

const CODES = [1, 2, 3].map((round) => `MILL-261103-B${round}`)

/** Nine pints a round, four to a house, as jars 15 to 23, 47 to 55 and 79 to 87 of the day. */
const HOUSES: readonly (readonly [string, string, number])[] = [
  ['house 4', CODES[0]!, 2],
  ['house 5', CODES[0]!, 4],
  ['house 6', CODES[0]!, 3],
  ['house 12', CODES[1]!, 2],
  ['house 13', CODES[1]!, 4],
  ['house 14', CODES[1]!, 3],
  ['house 20', CODES[2]!, 2],
  ['house 21', CODES[2]!, 4],
  ['house 22', CODES[2]!, 3],
]

const lots: readonly RecalledLot[] = HOUSES.map(([household, loadCode, putUpCount], index) => ({
  loadCode,
  lotId: `lot-${index}`,
  form: 'jar',
  jarSize: 'pint',
  household,
  place: null,
  putUpCount,
  onShelfCount: index === 1 ? putUpCount - 2 : putUpCount,
  given:
    index === 1
      ? [
          { toWhom: 'house 30', count: 1 },
          { toWhom: null, count: 1 },
        ]
      : [],
  eatenCount: 0,
  discardedCount: 0,
  usedInBatchCount: 0,
  untoldCount: 0,
}))

/** As guidance gives them for a jar in doubt. */
const step = (name: string) => ({ key: `guidance:suspect-${name}` })

const beside = {
  date: '2027-01-12',
  about: 'the dial of canner B',
  doSealed: [step('never-taste'), step('sealed-bag'), step('sealed-bin')],
  doOpen: [step('open-lay'), step('open-boil'), step('open-clean')],
  contact: 'the kitchen by the mill, mornings',
}

export function boardNotice(paper: PaperSize, words: Words): PaperDocument {
  const filledOn = Object.fromEntries(CODES.map((code) => [code, '2026-11-03']))
  return recallNoticeOfRecall({ loadCodes: CODES, lots }, { ...beside, filledOn }, setting(paper), words)
}

export function keeperList(paper: PaperSize, words: Words): PaperDocument {
  const households = [...HOUSES.map(([household]) => household), 'house 30']
  const notes = [{ key: 'pantry:recall-given-to-nobody-named', params: { count: 1 } }]
  return callListOfRecall({ lots, households, notes }, beside, setting(paper), words)
}
