/** `crib reckon`: any calculation of the catalogue by itself, from flags or from JSON on standard input. */
import { BASIS_KEYS, CATALOGUE, findCalc, type Reckoning, reckonById, type WordedValue } from '@crib/catalogue'
import type { Calc, Field, Fields } from '@crib/science'
import { formatQuantity } from '@crib/wording'
import { badInput, EXIT } from '../exit-codes.ts'
import { aligned, section, wrap } from '../lines.ts'
import { readRecord } from '../read-sets.ts'
import { type AddVerb, type Door, printJson, verb, withSets } from '../verb.ts'

const EXIT_BY_KIND = {
  reckoned: EXIT.ok,
  refused: EXIT.refused,
  'bad-input': EXIT.badInput,
  'unknown-calc': EXIT.badInput,
} as const satisfies Record<Reckoning['kind'], number>

interface ReckonFlags {
  readonly list?: true
  readonly example?: true
  readonly json?: true
  readonly set: readonly string[]
}

export const addReckon: AddVerb = (program, door) => {
  const { words, terminal, end } = door
  withSets(verb(program, door, 'reckon [id] [dash]', 'terminal:about-reckon'), door)
    .option('--list', words.say('terminal:flag-list'))
    .option('--example', words.say('terminal:flag-example'))
    .action(async (id: string | undefined, dash: string | undefined, flags: ReckonFlags) => {
      if (flags.list) return list(door, flags, id)
      if (id === undefined) throw badInput('terminal:reckon-what')
      const asked = flags.example ? exampleOf(id) : await readRecord(dash, flags.set, terminal)
      const reckoning = reckonById(id, asked, words)
      if (flags.json) printJson(door, reckoning)
      else if (reckoning.kind === 'reckoned' || reckoning.kind === 'refused')
        terminal.out(reckoningText(reckoning, door))
      else terminal.err(reckoningText(reckoning, door))
      end(EXIT_BY_KIND[reckoning.kind])
    })
}

function exampleOf(id: string) {
  return findCalc(id)?.example ?? {}
}

/** Every calculation, or one with all it asks. */
function list(door: Door, { json }: ReckonFlags, id?: string): void {
  const { terminal, words, end } = door
  if (id === undefined) {
    if (json)
      printJson(
        door,
        CATALOGUE.map(({ run: _run, ...listed }) => listed),
      )
    else terminal.out(aligned(CATALOGUE.map(({ id, question }) => [id, question])).join('\n'))
    return
  }
  const calc = findCalc(id)
  if (!calc) {
    end(EXIT.badInput)
    terminal.err(words.say('workbench:unknown-calc', { id }))
    return
  }
  const { run: _run, ...listed } = calc
  if (json) printJson(door, listed)
  else terminal.out(calcText(calc, door))
}

function calcText({ title, question, inputs, outputs, sourceKeys, example }: Calc, { words, terminal }: Door): string {
  const outputRows = Object.entries(outputs).map(([id, { label, unit }]) => [id, `${label} [${unit}]`])
  return [
    title,
    wrap(question, terminal.columns, '  '),
    '',
    words.say('terminal:heading-inputs'),
    ...aligned(inputRows(inputs, words.say('terminal:optional'))),
    '',
    words.say('terminal:heading-outputs'),
    ...aligned(outputRows),
    '',
    `${words.say('workbench:sources')}: ${sourceKeys.join(', ')}`,
    '',
    words.say('workbench:example'),
    `  ${JSON.stringify(example)}`,
  ].join('\n')
}

function inputRows(fields: Fields, optional: string, path = ''): string[][] {
  return Object.entries(fields).flatMap(([name, field]) => {
    const label = field.optional ? `${field.label} (${optional})` : field.label
    const row = [`${path}${name}`, limitsOf(field), label]
    if (field.kind === 'table') return [row, ...inputRows(field.columns, optional, `${path}${name}[].`)]
    if (field.kind === 'record') return [row, ...inputRows(field.fields, optional, `${path}${name}.`)]
    return [row]
  })
}

/** What may be typed there, in few characters. */
function limitsOf(field: Field): string {
  switch (field.kind) {
    case 'quantity': {
      const [low, high] = [field.min, field.max].map((value) => formatQuantity({ value, unit: field.unit }, 'alone'))
      return `${low} .. ${high} (${field.limitSource})`
    }
    case 'count':
      return `${field.min} .. ${field.max} (${field.limitSource})`
    case 'choice':
      return field.options.join(' | ')
    case 'flag':
      return 'yes | no'
    case 'clock':
      return 'HH:MM'
    case 'text':
      return `<= ${field.maxLength}`
    case 'series':
      return `[[${field.timeUnit}, ${field.unit}], ...]`
    case 'table':
      return '[{...}, ...]'
    case 'record':
      return '{...}'
  }
}

/** The whole worded result as plain text: the same sentences and values as every other door, none left out. */
function reckoningText(reckoning: Reckoning, { words, terminal: { columns } }: Door): string {
  const textsOf = (sentences: readonly { readonly text: string }[]) => sentences.map(({ text }) => text)
  switch (reckoning.kind) {
    case 'reckoned': {
      const { values, reasons, warnings } = reckoning
      return [
        words.say('workbench:values'),
        ...values.flatMap((value) => valueLines(value, words.say(BASIS_KEYS[value.basis]), columns)),
        ...section(words.say('workbench:reasons'), textsOf(reasons), columns),
        ...section(words.say('workbench:warnings'), textsOf(warnings), columns),
        ...editionLines(values, words),
      ].join('\n')
    }
    case 'refused':
      return [
        words.say('workbench:refused'),
        ...textsOf(reckoning.why).map((text) => wrap(text, columns, '  ')),
        ...section(words.say('workbench:ask-whom'), textsOf(reckoning.askWhom), columns),
      ].join('\n')
    case 'bad-input':
      return [
        ...reckoning.faults.map(({ text }) => wrap(text, columns, '', '  ')),
        words.say('terminal:see-inputs', { id: reckoning.calc }),
      ].join('\n')
    case 'unknown-calc':
      return [reckoning.text, words.say('terminal:see-list')].join('\n')
  }
}

function valueLines({ label, text, sourceKeys }: WordedValue, basis: string, columns: number): string[] {
  const from = sourceKeys.length > 0 ? `${basis} [${sourceKeys.join(', ')}]` : basis
  return [wrap(`${label}: ${text}`, columns, '  ', '    '), wrap(from, columns, '      ')]
}

function editionLines(values: readonly WordedValue[], words: Door['words']): string[] {
  const first = values[0]
  if (!first) return []
  return ['', words.say('workbench:edition', { edition: first.edition, version: first.codeVersion })]
}
