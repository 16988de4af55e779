/** What each verb is given, and the flags they share. */
import type { MessageKey, Words } from '@crib/wording'
import type { Command } from 'commander'
import type { ExitCode } from './exit-codes.ts'
import type { Terminal } from './terminal.ts'

export interface Door {
  readonly terminal: Terminal
  readonly words: Words
  /** Names the code to end with; 0 when nobody does. */
  readonly end: (code: ExitCode) => void
}

export type AddVerb = (program: Command, door: Door) => void

/** Collects a flag that may be given several times. */
export function collect(value: string, earlier: readonly string[]): readonly string[] {
  return [...earlier, value]
}

/** A verb or a verb below a verb, with the flags every one has. */
export function verb(parent: Command, { words }: Door, usage: string, about: MessageKey, options = {}): Command {
  const command = parent.command(usage, options).description(words.say(about))
  command.option('--json', words.say('terminal:flag-json'))
  return command
}

/** The flag of every verb that opens the book. */
export function withBook(command: Command, { words }: Door): Command {
  return command
    .option('--book <file>', words.say('terminal:flag-book'))
    .option('--kitchen <name>', words.say('terminal:flag-kitchen'))
}

/** `--set name=value`, as often as wanted. */
export function withSets(command: Command, { words }: Door): Command {
  return command.option('--set <name=value>', words.say('terminal:flag-set'), collect, [])
}

export function printJson({ terminal }: Door, value: unknown): void {
  terminal.out(JSON.stringify(value, null, 2))
}
