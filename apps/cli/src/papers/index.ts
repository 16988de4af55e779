/** Every paper by its name: a new one is a line here and a file of its own. */
import { BATCH_PAPERS } from './batch.ts'
import { CANNER_PAPERS } from './canner.ts'
import { FIELD_PAPERS } from './field.ts'
import { BOOK_PAPERS } from './from-the-book.ts'
import { HEAT_PAPERS } from './heat.ts'
import { KETTLE_PAPERS } from './kettle.ts'
import { LABEL_PAPERS } from './labels.ts'
import { SEED_PAPERS } from './seed.ts'

export { type PaperFlags, withPaperFlags } from './paper-flags.ts'

export const PAPERS = {
  ...BATCH_PAPERS,
  ...KETTLE_PAPERS,
  ...CANNER_PAPERS,
  ...HEAT_PAPERS,
  ...LABEL_PAPERS,
  ...BOOK_PAPERS,
  ...SEED_PAPERS,
  ...FIELD_PAPERS,
}

export const PAPER_KINDS = Object.keys(PAPERS) as (keyof typeof PAPERS)[]
