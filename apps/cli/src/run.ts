/** Builds the command line from its verbs, runs one, and turns whatever happens into an exit code. */
import { CODE_VERSION } from '@crib/science'
import { createWords } from '@crib/wording'
import { Command } from 'commander'
import { EXIT, type ExitCode, failureOf } from './exit-codes.ts'
import type { Terminal } from './terminal.ts'
import type { Door } from './verb.ts'
import { addBook } from './verbs/book.ts'
import { addCard } from './verbs/card.ts'
import { addDemo } from './verbs/demo.ts'
import { addNote } from './verbs/note.ts'
import { addPaper } from './verbs/paper.ts'
import { addPlan } from './verbs/plan.ts'
import { addReckon } from './verbs/reckon.ts'
import { addRun } from './verbs/run.ts'
import { addSorted } from './verbs/sorted.ts'

const VERBS = [addReckon, addNote, addBook, addPlan, addSorted, addCard, addRun, addPaper, addDemo]

/** Runs one command line. Never throws and never ends the process; the code it gives is the process's to end with. */
export async function runCrib(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  const words = createWords()
  let exitCode: ExitCode = EXIT.ok
  const door: Door = {
    terminal,
    words,
    end: (code) => {
      exitCode = code
    },
  }
  const program = new Command('crib')
    .description(words.say('terminal:about'))
    .version(CODE_VERSION)
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.out(text.trimEnd()),
      writeErr: (text) => terminal.err(text.trimEnd()),
    })
    .addHelpText('after', `\n${words.say('terminal:exit-codes')}`)
  for (const addVerb of VERBS) addVerb(program, door)
  // Without a verb commander would call its own help an error; asking what there is is no fault.
  const asked = args.length === 0 ? ['--help'] : args
  try {
    await program.parseAsync([...asked], { from: 'user' })
    return exitCode
  } catch (error) {
    const failure = failureOf(error, words)
    if (args.includes('--json') && failure.kind !== 'ok') {
      const faults = failure.texts.map((text) => ({ text }))
      terminal.out(JSON.stringify({ kind: failure.kind, faults }, null, 2))
    } else {
      for (const text of failure.texts) terminal.err(text)
    }
    return failure.exitCode
  }
}
