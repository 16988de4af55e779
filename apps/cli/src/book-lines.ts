/** What a book holds, as lines for a terminal: kitchen, corn, seed, kettle things, batches, loads, food, open questions. */
import type { CornLotFact, FoodLotFact, RunFact } from '@crib/journal'
import { jarName } from '@crib/planning'
import { convert } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import type { OpenBook } from './book.ts'
import { showInstant } from './clock-times.ts'
import { aligned, section } from './lines.ts'
import { questionSentence } from './refusals.ts'
import type { Terminal } from './terminal.ts'

export function bookLines({ file, facts, words }: OpenBook, { zone, columns }: Terminal): string[] {
  const { kitchen, questions, unread, entryCount } = facts
  const us = kitchen?.measureFirst !== 'metric'
  const mass = (kg: number) =>
    formatQuantity(us ? { value: convert(kg, 'Kg', 'Lb'), unit: 'Lb' } : { value: kg, unit: 'Kg' })
  const volume = (litres: number) =>
    formatQuantity(us ? { value: convert(litres, 'L', 'LiquidQt'), unit: 'LiquidQt' } : { value: litres, unit: 'L' })
  const length = (metres: number) =>
    formatQuantity(us ? { value: convert(metres, 'M', 'Ft'), unit: 'Ft' } : { value: metres, unit: 'M' })
  const listed = (heading: string, rows: readonly (readonly string[])[]) =>
    rows.length === 0 ? [] : ['', heading, ...aligned(rows)]

  return [
    words.say('terminal:book-of', {
      name: kitchen?.name || words.say('terminal:nameless-kitchen'),
      file,
      count: entryCount,
    }),
    ...(kitchen?.demo ? [words.say('common:invented')] : []),
    ...(kitchen?.elevationM === undefined
      ? []
      : [words.say('terminal:book-elevation', { elevation: length(kitchen.elevationM) })]),
    ...listed(
      words.say('terminal:book-corn'),
      Object.values(facts.cornLots).map((lot) => [lot.name, lot.cornType, lot.asTyped, cornLeft(lot, mass, words)]),
    ),
    ...listed(
      words.say('terminal:book-seed'),
      Object.values(facts.seed).map(({ seasonYear, how, massKg, plantingsCount, places }) => [
        String(seasonYear),
        words.say(`terminal:seed-${how}`),
        massKg === undefined ? '' : mass(massKg),
        words.say('terminal:seed-plantings', { count: plantingsCount }),
        places.join(', '),
      ]),
    ),
    ...listed(
      words.say('terminal:book-alkali'),
      Object.values(facts.alkaliLots).map(({ name, alkali, judged, judgements }) => {
        const dose = judgements.findLast(({ cupsPerLiquidQt }) => cupsPerLiquidQt !== undefined)?.cupsPerLiquidQt
        return [
          name,
          alkali,
          words.say(`terminal:judged-${judged}`),
          dose === undefined ? '' : words.say('terminal:cups-per-qt', { cups: { value: dose, unit: 'Cup' } }),
        ]
      }),
    ),
    ...listed(
      words.say('terminal:book-pots'),
      Object.values(facts.pots).map(({ name, volumeL, material }) => [name, volume(volumeL), material]),
    ),
    ...listed(
      words.say('terminal:book-canners'),
      Object.values(facts.canners).map(({ name, gauges, capacityPints, capacityQuarts, gaugeTests }) => [
        name,
        gauges.join(' + '),
        words.say('terminal:canner-holds', { pints: capacityPints, quarts: capacityQuarts }),
        gaugeTests.length === 0 ? '' : words.say('terminal:gauge-tested-on', { day: gaugeTests.at(-1)!.testedOn }),
      ]),
    ),
    ...listed(
      words.say('terminal:book-batches'),
      Object.values(facts.batches).map(({ plan, begun }) => [
        showInstant(Date.parse(plan.at.instant), zone),
        plan.title,
        words.say(begun ? 'terminal:batch-begun' : 'terminal:batch-planned'),
      ]),
    ),
    ...listed(
      words.say('terminal:book-runs'),
      Object.values(facts.runs).map((run) => runRow(run, zone, words)),
    ),
    ...listed(
      words.say('terminal:book-food'),
      Object.values(facts.foodLots).map((lot) => foodRow(lot, words)),
    ),
    ...section(
      words.say('terminal:book-questions'),
      questions.map((question) => words.sentence(questionSentence(question, zone))),
      columns,
    ),
    ...(unread.length === 0 ? [] : ['', words.say('terminal:book-unread', { count: unread.length })]),
  ]
}

type Words = OpenBook['words']

function cornLeft({ balance, form }: CornLotFact, mass: (kg: number) => string, words: Words): string {
  if (balance === null) return words.say('terminal:corn-not-weighed')
  return words.say('terminal:corn-left', { mass: mass(balance.leftKg), form: balance.leftAs ?? form })
}

function runRow({ begun, events }: RunFact, zone: string, words: Words): string[] {
  const last = events.at(-1)
  return [
    begun.loadCode,
    begun.cannerName,
    words.say('terminal:run-jars', { number: begun.jarCount, jarName: words.sentence(jarName(begun.jarSize)) }),
    last ? `${showInstant(Date.parse(last.instant), zone)} ${last.event.type}` : '',
  ]
}

function foodRow({ loadCode, form, jarSize, count, remainingCount, place }: FoodLotFact, words: Words): string[] {
  return [
    loadCode,
    [form, jarSize && words.sentence(jarName(jarSize))].filter(Boolean).join(', '),
    words.say('terminal:food-left', { left: remainingCount, putUp: count }),
    place ?? '',
  ]
}
