/** `crib paper`: everything that is pinned, tied on or stuck to a jar, as PDF. */
import { withFacts } from '../book.ts'
import { oneOf } from '../card-of-book.ts'
import { PAPER_KINDS, PAPERS, type PaperFlags, withPaperFlags } from '../papers/index.ts'
import { printPdf, withPrintFlags } from '../print.ts'
import { type AddVerb, verb, withBook } from '../verb.ts'

export const addPaper: AddVerb = (program, door) => {
  const { terminal, words } = door
  withPaperFlags(
    withPrintFlags(withBook(verb(program, door, 'paper <kind>', 'terminal:about-paper'), door), door).requiredOption(
      '--out <file>',
      words.say('terminal:flag-out'),
    ),
    door,
  )
    .addHelpText('after', `\n${words.say('terminal:paper-kinds', { known: PAPER_KINDS.join(', ') })}`)
    .action(async (given: string, flags: PaperFlags) => {
      const kind = oneOf('KIND', given, PAPER_KINDS)
      await withFacts(flags, terminal, async ({ facts, words: own }) => {
        await printPdf(PAPERS[kind]({ facts, flags, door, words: own }), flags.out, door, flags)
      })
    })
}
