/** A canner card as lines: the one number first, then the table's own, vent and minutes, why, and where it stands. */
import type { CannerCard, CardRefusal, GaugeCard } from '@crib/planning'
import { formatReckoned, type Words } from '@crib/wording'
import type { CardOfCanner } from './card-of-book.ts'
import { section } from './lines.ts'

export function cardLines({ name, outcome }: CardOfCanner, words: Words, columns: number): string[] {
  return outcome.kind === 'card'
    ? numberLines(name, outcome, words, columns)
    : refusedLines(name, outcome, words, columns)
}

function numberLines(name: string, card: CannerCard, words: Words, columns: number): string[] {
  const said = (sentences: readonly Parameters<Words['sentence']>[0][]) => sentences.map(words.sentence)
  return [
    words.say('terminal:card-of', {
      canner: name,
      site: card.siteName ?? '',
      elevation: formatReckoned(card.elevation),
    }),
    ...card.routes.flatMap((route) => routeLines(route, words)),
    words.say('terminal:card-vent', { vent: formatReckoned(card.vent) }),
    card.minutes
      ? words.say('terminal:card-minutes', { minutes: formatReckoned(card.minutes) })
      : words.say('terminal:card-no-minutes'),
    ...section(words.say('terminal:heading-withheld'), said(card.withheld), columns),
    ...section(
      words.say('workbench:reasons'),
      said([...card.reasons, ...card.routes.flatMap(({ reasons }) => reasons)]),
      columns,
    ),
    ...section(words.say('terminal:heading-standing'), said(card.standing), columns),
    ...section(words.say('terminal:heading-care'), said(card.cautions), columns),
  ]
}

function routeLines({ gauge, holdAt, required, table, usable }: GaugeCard, words: Words): string[] {
  const tableLine = words.say('terminal:card-table', { table: formatReckoned(table) })
  if (!usable || !holdAt || !required) {
    return [
      words.say(gauge === 'dial' ? 'terminal:card-dial-not-used' : 'terminal:card-weight-not-used'),
      `    ${tableLine}`,
    ]
  }
  const hold = { hold: formatReckoned(holdAt), dip: formatReckoned(required, 'alone') }
  return [words.say(gauge === 'dial' ? 'terminal:card-dial' : 'terminal:card-weight', hold), `    ${tableLine}`]
}

function refusedLines(
  name: string,
  { why, askWhom, forInformation }: CardRefusal,
  words: Words,
  columns: number,
): string[] {
  return [
    words.say('terminal:card-refused', { canner: name }),
    ...[...why, ...forInformation].map((sentence) => `  ${words.sentence(sentence)}`),
    ...section(words.say('workbench:ask-whom'), askWhom.map(words.sentence), columns),
  ]
}
