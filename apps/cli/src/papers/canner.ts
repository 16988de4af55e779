/** Papers of a canner: its card, and the log of a load. */
import { cardsOfBook, readJarSize } from '../card-of-book.ts'
import { dateOf } from '../clock-times.ts'
import { badInput } from '../exit-codes.ts'
import { chosenRun } from '../run-of-book.ts'
import { cardDocument, logDocument } from '../sheets.ts'
import type { MakePaper } from './paper-flags.ts'

export const CANNER_PAPERS = {
  'canner-card': (asked) => {
    const { facts, flags, door } = asked
    const cardFlags = { alkali: flags.alkali, size: flags.size, gauge: [] }
    const cards = cardsOfBook(facts, flags.canner, cardFlags, dateOf(door.terminal.now(), door.terminal.zone))
    const names = cards.map(({ name }) => name)
    if (cards.length > 1) throw badInput('terminal:which-canner', { names: names.join(', ') })
    return cardDocument(cards[0]!, asked, readJarSize(flags.size))
  },
  'process-log': (asked) => {
    const { facts, flags, door } = asked
    return logDocument(flags.load === undefined ? null : chosenRun({ facts }, flags.load, door.terminal.now()), asked)
  },
} satisfies Record<string, MakePaper>
