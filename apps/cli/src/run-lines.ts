/** Where a canner load stands, as lines: the next thing first, then what is due by the clock, what counted, what departed. */
import { jarName, runClock } from '@crib/planning'
import { formatQuantity, type Words } from '@crib/wording'
import { section } from './lines.ts'
import type { RunOfBook } from './run-of-book.ts'

export function runLines({ run, setup, records, state }: RunOfBook, words: Words, columns: number): string[] {
  const clock = runClock(setup, records)
  const due = (key: 'vent' | 'finish' | 'lid', atMs: number | undefined) =>
    atMs === undefined ? [] : [words.say(`terminal:run-due-${key}`, { clock: clock.dueClock(atMs) })]
  const { marks, sealWindow } = state
  const { begun } = run
  const say = (sentences: typeof state.whatNow) => sentences.map(words.sentence)
  return [
    words.say('terminal:run-of', {
      code: begun.loadCode,
      canner: begun.cannerName,
      number: begun.jarCount,
      jarName: words.sentence(jarName(begun.jarSize)),
    }),
    words.say(setup.gauge === 'dial' ? 'terminal:run-held-to-dial' : 'terminal:run-held-to-weight', {
      pressure: { value: setup.requiredReadingPsi, unit: setup.gauge === 'dial' ? 'PsiGauge' : 'LbWeight' },
      process: { value: setup.processMin, unit: 'Min' },
    }),
    '',
    words.say('terminal:run-next', { next: words.sentence(state.next) }),
    ...(marks.ventClosedAtMs === undefined ? due('vent', state.ventDueAtMs) : []),
    ...(state.outcome === 'short' || state.outcome === 'dry' ? [] : due('finish', state.dueAtMs)),
    ...(state.countedMin > 0
      ? [
          words.say('terminal:run-counted', {
            counted: formatQuantity({ value: Math.floor(state.countedMin), unit: 'Min' }),
            process: { value: setup.processMin, unit: 'Min' },
          }),
        ]
      : []),
    ...(marks.lidOffAtMs === undefined ? due('lid', state.lidOffFromMs) : []),
    ...(sealWindow && !state.seals
      ? [
          words.say(sealWindow.assumed ? 'terminal:run-seals-assumed' : 'terminal:run-seals', {
            from: clock.dueClock(sealWindow.fromMs),
            to: clock.clock(sealWindow.toMs),
          }),
        ]
      : []),
    ...section(words.say('terminal:heading-what-now'), say(state.whatNow), columns),
    ...section(
      words.say('terminal:heading-departures'),
      state.departures.map(({ sentence }) => words.sentence(sentence)),
      columns,
    ),
    ...section(words.say('terminal:heading-notes'), say(state.notes), columns),
    ...section(words.say('terminal:book-questions'), say(state.questions), columns),
  ]
}
