/** `crib paper`: everything that is pinned, tied on or stuck to a jar, as PDF. */
import { dayForPlan, plannedInputs, planOfBatch } from '@crib/planning'
import { type BookFlags, type OpenBook, withFacts } from '../book.ts'
import { cardsOfBook, oneOf, readJarSize } from '../card-of-book.ts'
import { dateOf, dayAfter } from '../clock-times.ts'
import { badInput } from '../exit-codes.ts'
import { type PrintFlags, printPdf, withPrintFlags } from '../print.ts'
import { chosenRun } from '../run-of-book.ts'
import { batchSheetDocument, cardDocument, labelDocument, logDocument, wallBoardDocument } from '../sheets.ts'
import { type AddVerb, verb, withBook } from '../verb.ts'

const KINDS = ['batch-sheet', 'canner-card', 'process-log', 'jar-labels', 'bag-labels', 'wall-board'] as const

interface PaperFlags extends BookFlags, PrintFlags {
  readonly out: string
  readonly batch?: string
  readonly canner?: string
  readonly load?: string
  readonly size: string
  readonly alkali: string
  readonly labels?: string
  readonly skip: string
}

export const addPaper: AddVerb = (program, door) => {
  const { terminal, words } = door
  withPrintFlags(withBook(verb(program, door, 'paper <kind>', 'terminal:about-paper'), door), door)
    .requiredOption('--out <file>', words.say('terminal:flag-out'))
    .option('--batch <title>', words.say('terminal:flag-batch-to-print'))
    .option('--canner <name>', words.say('terminal:flag-canner'))
    .option('--load <code>', words.say('terminal:flag-load-to-print'))
    .option('--size <jar>', words.say('terminal:flag-size', { known: 'half-pint, pint, quart' }), 'quart')
    .option('--alkali <alkali>', words.say('terminal:flag-alkali-else'), 'ash')
    .option('--labels <sheet>', words.say('terminal:flag-labels'))
    .option('--skip <count>', words.say('terminal:flag-skip'), '0')
    .addHelpText('after', `\n${words.say('terminal:paper-kinds', { known: KINDS.join(', ') })}`)
    .action(async (given: string, flags: PaperFlags) => {
      const kind = oneOf('KIND', given, KINDS)
      await withFacts(flags, terminal, async (book) => {
        await printPdf(documentFor(kind, book, flags), flags.out, door, flags)
      })
    })

  function documentFor(
    kind: (typeof KINDS)[number],
    { facts, words: own }: Pick<OpenBook, 'facts' | 'words'>,
    flags: PaperFlags,
  ) {
    const now = terminal.now()
    const sheet = { facts, flags, door, words: own }
    switch (kind) {
      case 'batch-sheet':
        return batchSheetDocument({ ...sheet, ...chosenBatch(facts, flags.batch, 'hull') })
      case 'wall-board':
        return wallBoardDocument({ ...sheet, ...chosenBatch(facts, flags.batch, 'can') })
      case 'canner-card': {
        const cardFlags = { alkali: flags.alkali, size: flags.size, gauge: [] }
        const cards = cardsOfBook(facts, flags.canner, cardFlags, dateOf(now, terminal.zone))
        const names = cards.map(({ name }) => name)
        if (cards.length > 1) throw badInput('terminal:which-canner', { names: names.join(', ') })
        return cardDocument(cards[0]!, sheet, readJarSize(flags.size))
      }
      case 'process-log':
        return logDocument(flags.load === undefined ? null : chosenRun({ facts }, flags.load, now), sheet)
      case 'jar-labels':
      case 'bag-labels': {
        const sheetId = flags.labels ?? (flags.paper === 'a4' ? 'a4-3x7' : 'letter-2x5')
        const wish = {
          sheet: sheetId,
          skip: readSkip(flags.skip),
          ...(flags.load !== undefined && { code: flags.load }),
        }
        return labelDocument(kind === 'jar-labels' ? 'jar' : 'bag', wish, sheet)
      }
    }
  }

  /** The batch named, else the latest of the book, with its day; of two days the one the sheet is for. */
  function chosenBatch(facts: OpenBook['facts'], title: string | undefined, part: 'hull' | 'can') {
    const batches = Object.values(facts.batches)
    const wanted = title?.toLowerCase()
    const batch = batches.findLast(({ plan }) => wanted === undefined || plan.title.toLowerCase() === wanted)
    const outcome = batch && planOfBatch(batch)
    if (!batch || outcome?.kind !== 'planned') throw badInput('terminal:no-such-batch', { given: title ?? '-' })
    const planned = plannedInputs(batch)?.day
    const dayPlan = planned && dayForPlan(outcome, planned)
    const twoDays = planned?.dayCount === 2 ? dayPlan?.twoDays : null
    const firstDate = planned?.date ?? dateOf(Date.parse(batch.plan.at.instant), terminal.zone)
    return {
      plan: outcome,
      title: batch.plan.title,
      date: twoDays && part === 'can' ? dayAfter(firstDate) : firstDate,
      day: twoDays ? twoDays[part] : dayPlan?.day,
    }
  }
}

function readSkip(given: string): number {
  const skip = Number(given)
  if (!Number.isInteger(skip) || skip < 0) throw badInput('terminal:bad-count', { given })
  return skip
}
