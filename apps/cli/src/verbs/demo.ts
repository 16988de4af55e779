/** `crib demo`: writes the invented demo kitchen into a book, so that everything else can be tried on it. */
import { demoKitchen, type JournalStore } from '@crib/journal'
import { type BookFlags, bookFile, withStore } from '../book.ts'
import { badInput } from '../exit-codes.ts'
import { type AddVerb, printJson, verb, withBook } from '../verb.ts'

export const addDemo: AddVerb = (program, door) => {
  const { terminal, words } = door
  withBook(verb(program, door, 'demo', 'terminal:about-demo'), door).action((flags: BookFlags) => {
    // A keeper's own book is never filled with invented corn by a verb typed in passing.
    if (flags.book === undefined && terminal.env.KETTLE_BOOK === undefined) {
      throw badInput('terminal:demo-needs-book', { file: bookFile(flags, terminal) })
    }
    const write = async (store: JournalStore, file: string) => {
      const kitchens = await store.kitchens()
      if (kitchens.length > 0) throw badInput('terminal:demo-only-in-new-book', { file })
      const { entries } = demoKitchen({
        clock: { now: terminal.now },
        random: { bytes: terminal.randomBytes },
        zone: terminal.zone,
      })
      await store.append(entries)
      if (flags.json) printJson(door, { kind: 'demo', file, entriesCount: entries.length })
      else terminal.out(words.say('terminal:demo-written', { count: entries.length, file }))
    }
    return withStore(flags, terminal, write, { mayBegin: true })
  })
}
