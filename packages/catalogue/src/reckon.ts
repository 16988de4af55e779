/** Runs one calculation for a door: reads the inputs, runs, and words the result. Terminal, HTTP and web show this as it is. */
import { type Calc, type CalcResult, type Reckoned, type Sentence, shownValue, ValidRangeError } from '@crib/science'
import { formatReckoned, type MessageKey, type Words } from '@crib/wording'
import { findCalc } from './catalogue.ts'
import { readInputs } from './read-inputs.ts'

export interface WordedSentence extends Sentence {
  readonly text: string
}

export interface WordedValue extends Reckoned {
  readonly label: string
  /** Rounded once, by the value's own rule. */
  readonly shown: number
  readonly text: string
}

/** What every door hands on. `kind` chooses the exit code, the HTTP status and the screen. */
export type Reckoning =
  | {
      readonly kind: 'reckoned'
      readonly calc: string
      readonly values: readonly WordedValue[]
      readonly reasons: readonly WordedSentence[]
      readonly warnings: readonly WordedSentence[]
    }
  | {
      readonly kind: 'refused'
      readonly calc: string
      readonly refused: string
      readonly why: readonly WordedSentence[]
      readonly askWhom: readonly WordedSentence[]
    }
  | {
      readonly kind: 'bad-input'
      readonly calc: string
      readonly faults: readonly { readonly field: string; readonly text: string }[]
    }
  | { readonly kind: 'unknown-calc'; readonly calc: string; readonly text: string }

export function reckonById(id: string, raw: unknown, words: Words): Reckoning {
  const calc = findCalc(id)
  if (!calc) return { kind: 'unknown-calc', calc: id, text: words.say('workbench:unknown-calc', { id }) }
  return reckonCalc(calc, raw, words)
}

/** `nameOf` says what a fault calls a field where people see labels and no paths: `fieldLabel`, for example. */
export function reckonCalc(calc: Calc, raw: unknown, words: Words, nameOf?: (path: string) => string): Reckoning {
  const read = readInputs(calc.inputs, raw)
  if (!read.ok) {
    const faults = read.faults.map(({ field, sentence }) => {
      const named = nameOf ? { ...sentence, params: { ...sentence.params, field: nameOf(field) } } : sentence
      return { field, text: words.sentence(named) }
    })
    return { kind: 'bad-input', calc: calc.id, faults }
  }
  try {
    return worded(calc, calc.run(read.input as never), words)
  } catch (error) {
    if (!(error instanceof ValidRangeError)) throw error
    return { kind: 'bad-input', calc: calc.id, faults: [{ field: error.argument, text: error.message }] }
  }
}

function worded(calc: Calc, result: CalcResult, words: Words): Reckoning {
  const wordAll = (sentences: readonly Sentence[]): WordedSentence[] =>
    sentences.map((sentence) => ({ ...sentence, text: words.sentence(sentence) }))
  if (!result.ok) {
    const { refused, why, askWhom } = result
    return { kind: 'refused', calc: calc.id, refused, why: wordAll(why), askWhom: wordAll(askWhom) }
  }
  return {
    kind: 'reckoned',
    calc: calc.id,
    values: result.values.map((value) => ({
      ...value,
      label: labelOf(calc, value.id),
      shown: shownValue(value),
      text: formatReckoned(value),
    })),
    reasons: wordAll(result.reasons),
    warnings: wordAll(result.warnings),
  }
}

/**
 * An output that repeats per row joins the row and the output's own name with colons, in either order:
 * `604 m:dialCardPsi` and `load:A.1` take the labels of `dialCardPsi` and `load`.
 */
function labelOf(calc: Calc, valueId: string): string {
  const parts = valueId.split(':')
  const name = valueId in calc.outputs ? valueId : parts.find((part) => part in calc.outputs)
  const output = name === undefined ? undefined : calc.outputs[name]
  if (!output) throw new RangeError(`${calc.id} gave ${valueId}, which its outputs do not list`)
  const row = parts.filter((part) => part !== name).join(', ')
  return row === '' || name === valueId ? output.label : `${row}: ${output.label}`
}

/** Every message key a door itself may word, so that the compiler checks them here. */
export const BASIS_KEYS = {
  published: 'common:basis-published',
  computed: 'common:basis-computed',
  'own-record': 'common:basis-own-record',
  'common-practice': 'common:basis-common-practice',
  'project-rule': 'common:basis-project-rule',
  'as-typed': 'common:basis-as-typed',
} as const satisfies Record<Reckoned['basis'], MessageKey>
