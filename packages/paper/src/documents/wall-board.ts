/** The wall board of a shared day: load codes only. It cannot show a name, for it is never told one. */
import type { Reckoned } from '@crib/science'
import type { Words } from '@crib/wording'
import type { PaperDocument } from '../model.ts'
import { blocksOf, brief, dateText, documentOf, type PrintSetting, type Said, wordAll } from './said.ts'

/** No household, no keeper, no corn: a canner is named as on its card. */
export interface WallBoardLoad {
  readonly code: string
  readonly canner: string
  /** `Count`. */
  readonly jars: Reckoned
  readonly hold: Reckoned
  /** `ClockMin`. */
  readonly startsAt: Reckoned
}

export interface WallBoardInput {
  /** ISO 8601. */
  readonly date: string
  readonly loads: readonly WallBoardLoad[]
  /** Words for everyone who passes: house rules, what may leave the kitchen. */
  readonly notes?: readonly Said[]
}

/** Large type, one row per load, empty cells for the clock times as they come. */
export function wallBoard(input: WallBoardInput, setting: PrintSetting, words: Words): PaperDocument {
  const title = words.say('paper:wall-board')
  return documentOf(setting, words, {
    title,
    typePt: 16,
    fitPages: 1,
    blocks: blocksOf(
      { kind: 'head', title, lines: [words.say('paper:wall-board-lines', { date: dateText(input.date) })] },
      {
        kind: 'table',
        rowMm: 15,
        columns: [
          { title: words.say('paper:column-load'), share: 1.2, strong: true },
          { title: words.say('paper:column-canner'), share: 1.6 },
          { title: words.say('paper:column-jars'), share: 1.1, align: 'right' },
          { title: words.say('paper:column-hold'), share: 1.3 },
          { title: words.say('paper:column-starts'), share: 1.1 },
          { title: words.say('paper:column-vent'), share: 1.2 },
          { title: words.say('paper:column-pressure'), share: 1.3 },
          { title: words.say('paper:column-finish'), share: 1.2 },
          { title: words.say('paper:column-ends'), share: 1.1 },
        ],
        rows: input.loads.map(({ code, canner, jars, hold, startsAt }) => [
          code,
          canner,
          brief(jars),
          brief(hold),
          brief(startsAt),
          '',
          '',
          '',
          '',
        ]),
      },
      wordAll(input.notes, words).map((text) => ({ kind: 'line', text }) as const),
    ),
  })
}
