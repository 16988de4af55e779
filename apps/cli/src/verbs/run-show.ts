/** Shows where a load stands; shared by every verb that has just written something about one. */
import { type BookFlags, type OpenBook, withOpenBook } from '../book.ts'
import { clockMinOf } from '../clock-times.ts'
import { runLines } from '../run-lines.ts'
import { chosenRun, type RunOfBook } from '../run-of-book.ts'
import { type Door, printJson } from '../verb.ts'

export interface RunFlags extends BookFlags {
  readonly load?: string
}

/** Reads the book anew: what was just written is in it. */
export function showNow(door: Door, flags: RunFlags, code: string | undefined): Promise<void> {
  const { terminal } = door
  return withOpenBook(flags, terminal, async (book) => {
    const chosen = chosenRun(book, code, terminal.now())
    if (flags.json) return printJson(door, nowJson(chosen, book, terminal.zone))
    terminal.out(runLines(chosen, book.words, terminal.columns).join('\n'))
  })
}

function nowJson({ run, state }: RunOfBook, { words }: OpenBook, zone: string) {
  const worded = (sentence: Parameters<typeof words.sentence>[0]) => ({ ...sentence, text: words.sentence(sentence) })
  return {
    kind: 'run',
    load: run.begun.loadCode,
    state: {
      ...state,
      next: worded(state.next),
      whatNow: state.whatNow.map(worded),
      notes: state.notes.map(worded),
      questions: state.questions.map(worded),
      departures: state.departures.map(({ id, sentence }) => ({ id, ...worded(sentence) })),
    },
    dueClockMin: state.dueAtMs === undefined ? null : clockMinOf(state.dueAtMs, zone),
  }
}
