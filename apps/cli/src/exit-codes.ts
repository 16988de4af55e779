/** The one place where outcomes and errors become exit codes, for people's eyes and for scripts. */
import { ExchangeBroken } from '@crib/journal/http'
import { StoreTrouble } from '@crib/journal/trouble'
import { type Sentence, ValidRangeError } from '@crib/science'
import type { MessageKey, SayParams, Words } from '@crib/wording'
import { CommanderError } from 'commander'

/** `refused` is an honest "no number": nothing went wrong, yet a script must not read on as if there were one. */
export const EXIT = { ok: 0, refused: 1, badInput: 2, trouble: 3 } as const

export type ExitCode = (typeof EXIT)[keyof typeof EXIT]

/** What was typed cannot be used; the sentence says why and what to type instead. */
export class BadInput extends Error {
  readonly sentences: readonly Sentence[]

  constructor(...sentences: readonly Sentence[]) {
    super(sentences.map(({ key }) => key).join(', '))
    this.name = 'BadInput'
    this.sentences = sentences
  }
}

/** A fault with one sentence, its key checked by the compiler. */
export function badInput(key: MessageKey, params: SayParams = {}): BadInput {
  return new BadInput({ key, params })
}

export interface Failure {
  readonly exitCode: ExitCode
  readonly kind: 'ok' | 'bad-input' | 'trouble'
  readonly texts: readonly string[]
}

/** How an error is said and which code it ends with. */
export function failureOf(error: unknown, words: Words): Failure {
  if (error instanceof CommanderError) {
    // Help and version come through here as well; commander has written its own text already.
    return error.exitCode === 0
      ? { exitCode: EXIT.ok, kind: 'ok', texts: [] }
      : { exitCode: EXIT.badInput, kind: 'bad-input', texts: [] }
  }
  if (error instanceof BadInput) {
    return { exitCode: EXIT.badInput, kind: 'bad-input', texts: error.sentences.map(words.sentence) }
  }
  if (error instanceof ValidRangeError) return { exitCode: EXIT.badInput, kind: 'bad-input', texts: [error.message] }
  return { exitCode: EXIT.trouble, kind: 'trouble', texts: [troubleText(error, words)] }
}

function troubleText(error: unknown, words: Words): string {
  if (error instanceof StoreTrouble) return words.say(`errors:store-${error.code}`, { where: error.where })
  if (error instanceof ExchangeBroken) return words.say('terminal:exchange-broken', { detail: error.message })
  const { code, path, message } = error as { code?: string; path?: string; message?: string }
  if (code === 'ENOENT') return words.say('terminal:no-such-file', { file: path ?? '' })
  if (code === 'EACCES' || code === 'EPERM') return words.say('terminal:file-not-ours', { file: path ?? '' })
  return words.say('terminal:trouble', { detail: message ?? String(error) })
}
