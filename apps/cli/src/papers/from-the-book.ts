/** Papers of the whole book: a class sheet, a year, the two sheets of a recall. */
import { cautionsFor, type Moment, suspectJarSteps } from '@crib/guidance'
import { cornOnPaper, factsOpenedTo } from '@crib/journal'
import { callListOfRecall, classSheetOfPlan, recallNoticeOfRecall, yearSheet } from '@crib/paper'
import {
  amountName,
  classAmounts,
  type Recall,
  type RecallOrigin,
  recall,
  recallAbout,
  shelfLot,
  yearSummary,
} from '@crib/planning'
import { dateOf } from '../clock-times.ts'
import { badInput } from '../exit-codes.ts'
import { printSetting } from '../print.ts'
import { chosenBatch } from './batch.ts'
import { type Asked, type MakePaper, readAudience } from './paper-flags.ts'

export const BOOK_PAPERS = {
  'class-sheet': (asked) => {
    const { facts, flags, door, words } = asked
    const { batchId, plan, date } = chosenBatch(asked, 'hull')
    const { corn, conditions } = cornOnPaper(facts, batchId, 'community')
    return classSheetOfPlan(
      plan,
      {
        contents: corn === undefined ? { key: 'pantry:hominy' } : { key: 'pantry:hominy-of', params: { name: corn } },
        conditions,
        date,
        amounts: classAmounts(plan).map((value) => ({ label: amountName(value.id) ?? value.id, value })),
        cautionsFor: (moment) => cautionsFor(moment as Moment),
      },
      printSetting(facts, flags, door),
      words,
    )
  },
  year: (asked) => {
    const { flags, door, words } = asked
    const audience = readAudience(asked)
    const today = todayOf(asked)
    const year = Number(flags.year ?? today.slice(0, 4))
    if (!Number.isInteger(year) || year < 1900 || year > 9999)
      throw badInput('terminal:bad-count', { given: flags.year ?? '' })
    const facts = factsOpenedTo(asked.facts, audience)
    const name = facts.kitchen?.name
    // Other eyes may not know the kitchen; its measure they may.
    const measureFirst = asked.facts.kitchen?.measureFirst
    return yearSheet(
      { summary: yearSummary(facts, year, today), audience, measureFirst, ...(name && { kitchen: name }) },
      printSetting(asked.facts, flags, door),
      words,
    )
  },
  'recall-notice': (asked) => {
    const { facts, flags, door, words } = asked
    const [origin, found] = recallOf(asked)
    const filledOn = Object.fromEntries(
      Object.values(facts.foodLots).map((lot) => [lot.loadCode, shelfLot(lot, facts).putUpOn]),
    )
    return recallNoticeOfRecall(
      found,
      {
        date: todayOf(asked),
        about: recallAbout(origin, facts),
        doSealed: suspectJarSteps('sealed'),
        doOpen: suspectJarSteps('open'),
        contact: flags.contact ?? '',
        filledOn,
      },
      printSetting(facts, flags, door),
      words,
    )
  },
  'call-list': (asked) => {
    const { facts, flags, door, words } = asked
    const [origin, found] = recallOf(asked)
    const beside = { date: todayOf(asked), about: recallAbout(origin, facts) }
    return callListOfRecall(found, beside, printSetting(facts, flags, door), words)
  },
} satisfies Record<string, MakePaper>

function todayOf({ door: { terminal } }: Asked): string {
  return dateOf(terminal.now(), terminal.zone)
}

/** From the load, the canner or the corn named by a flag; the first of them. */
function recallOf(asked: Asked): [RecallOrigin, Recall] {
  const origin = originOf(asked)
  if (!origin) throw badInput('terminal:recall-of-what')
  const found = recall(asked.facts, origin)
  if (found.loadCodes.length === 0) throw badInput('terminal:recall-finds-nothing')
  return [origin, found]
}

function originOf({ facts, flags }: Asked): RecallOrigin | null {
  const same = (name: string, given: string) => name.toLowerCase() === given.toLowerCase()
  const { load, canner, corn } = flags
  if (load !== undefined) return { by: 'load', loadCode: load }
  if (canner !== undefined) {
    const found = Object.values(facts.canners).find(({ name }) => same(name, canner))
    return found ? { by: 'canner', cannerId: found.cannerId } : null
  }
  if (corn === undefined) return null
  const lot = Object.values(facts.cornLots).find(({ name }) => same(name, corn))
  return lot ? { by: 'corn-lot', lotId: lot.lotId } : null
}
