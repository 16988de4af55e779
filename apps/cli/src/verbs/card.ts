/** `crib card`: the one number to hold on each canner here, its reasons, and where the process stands. */
import { GUIDANCE_EDITION } from '@crib/guidance'
import { isStandingRead, seasonYearOf, standingFood } from '@crib/planning'
import { type BookFlags, withFacts, withOpenBook } from '../book.ts'
import { cardLines } from '../card-lines.ts'
import { type CardFlags, cardsOfBook, readAlkali, readJarSize, withCardFlags } from '../card-of-book.ts'
import { dateOf } from '../clock-times.ts'
import { badInput, EXIT } from '../exit-codes.ts'
import { type PrintFlags, printPdf, withPrintFlags } from '../print.ts'
import { cardDocument } from '../sheets.ts'
import { type AddVerb, printJson, verb, withBook } from '../verb.ts'
import { noteDown } from './note.ts'

interface CardVerbFlags extends BookFlags, CardFlags, PrintFlags {
  readonly pdf?: string
  readonly read?: true
}

export const addCard: AddVerb = (program, door) => {
  const { terminal, words, end } = door
  const command = withCardFlags(withBook(verb(program, door, 'card [canner]', 'terminal:about-card'), door), door)
  withPrintFlags(command, door)
    .option('--pdf <file>', words.say('terminal:flag-pdf'))
    .option('--read', words.say('terminal:flag-read'))
    .action(async (name: string | undefined, flags: CardVerbFlags) => {
      const today = dateOf(terminal.now(), terminal.zone)
      if (flags.read) await readStanding(flags, today)
      await withFacts(flags, terminal, async ({ facts, words: own }) => {
        const cards = cardsOfBook(facts, name, flags, today)
        if (cards.some(({ outcome }) => outcome.kind === 'refused')) end(EXIT.refused)
        if (flags.pdf !== undefined) {
          const names = cards.map((card) => card.name).join(', ')
          if (cards.length > 1) throw badInput('terminal:which-canner-here', { names })
          const document = cardDocument(cards[0]!, { facts, flags, door, words: own }, readJarSize(flags.size))
          return printPdf(document, flags.pdf, door, flags)
        }
        const listed = cards.map(({ name: canner, outcome }) => ({ canner, ...outcome }))
        if (flags.json) return printJson(door, listed)
        terminal.out(cards.map((card) => cardLines(card, own, terminal.columns).join('\n')).join('\n\n'))
      })
    })

  /** Asked once a season and edition; after it the minutes are shown. */
  function readStanding(flags: CardVerbFlags, today: string): Promise<void> {
    const alkali = readAlkali(flags.alkali)
    return withOpenBook(flags, terminal, async (book) => {
      const seasonYear = seasonYearOf(book.facts, today)
      if (isStandingRead(book.facts, alkali, seasonYear)) return
      const body = { readingId: book.newId(), seasonYear, edition: GUIDANCE_EDITION, food: standingFood(alkali) }
      await noteDown(book, 'standing-read', body)
      if (!flags.json) terminal.out(words.say('terminal:standing-noted', { season: String(seasonYear) }))
    })
  }
}
