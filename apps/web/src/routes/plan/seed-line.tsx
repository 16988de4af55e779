/** The seed line as the book has it, heading whatever follows. Props: seasonYear, cornLotId?, line? (from a plan that stands). */
import { type SeedLine, seedLine } from '@crib/planning'
import { useBook } from '../../book/book.tsx'
import { Reasons } from '../../parts-of-the-sheet/index.ts'

export function SeedLineOf({
  seasonYear,
  cornLotId,
}: {
  readonly seasonYear: number
  readonly cornLotId: string | undefined
}) {
  const { facts } = useBook()
  const season = Object.values(facts.seed).filter((seed) => seed.seasonYear === seasonYear)
  const seed = season.findLast(({ lotId }) => lotId !== undefined && lotId === cornLotId) ?? season.at(-1)
  if (!seed) return null
  const outcome = seedLine(seed)
  return outcome.kind === 'put-by' ? <SeedWords line={outcome.line} /> : <Reasons sentences={outcome.why} />
}

export function SeedWords({ line }: { readonly line: SeedLine }) {
  // The heading of the row says "Seed first" already.
  return <Reasons sentences={[...line.sentences.filter(({ key }) => key !== 'seed:first'), ...line.warnings]} />
}
