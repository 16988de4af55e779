/** A recall on paper: the notice by load codes, and the keeper's list of whom to call. Leaves out every number of its own. */
import { suspectJarSteps } from '@crib/guidance'
import { callListOfRecall, type PaperDocument, recallNoticeOfRecall } from '@crib/paper'
import { type RecallOrigin, recall, recallAbout, shelfLot } from '@crib/planning'
import { type Desk, settingOf } from './documents.ts'

export function recallNoticeDocument(desk: Desk, origin: RecallOrigin, contact: string): PaperDocument | null {
  const { facts, today, words } = desk
  const found = recall(facts, origin)
  if (found.loadCodes.length === 0) return null
  const filledOn = Object.fromEntries(
    Object.values(facts.foodLots).map((lot) => [lot.loadCode, shelfLot(lot, facts).putUpOn]),
  )
  return recallNoticeOfRecall(
    found,
    {
      date: today,
      about: recallAbout(origin, facts),
      doSealed: suspectJarSteps('sealed'),
      doOpen: suspectJarSteps('open'),
      contact,
      filledOn,
    },
    settingOf(desk),
    words,
  )
}

export function callListDocument(desk: Desk, origin: RecallOrigin): PaperDocument | null {
  const { facts, today, words } = desk
  const found = recall(facts, origin)
  if (found.loadCodes.length === 0) return null
  return callListOfRecall(found, { date: today, about: recallAbout(origin, facts) }, settingOf(desk), words)
}

/** From an address such as `/paper/recall-notice/canner/<id>`; null for one that names no origin. */
export function originOfAddress(by: string, id: string): RecallOrigin | null {
  switch (by) {
    case 'load':
      return { by, loadCode: id }
    case 'canner':
      return { by, cannerId: id }
    case 'dial':
    case 'weight':
      return { by: 'gauge', cannerId: id, gauge: by }
    case 'batch':
      return { by, batchId: id }
    case 'alkali-lot':
      return { by, alkaliLotId: id }
    case 'corn-lot':
      return { by, lotId: id }
    default:
      return null
  }
}
