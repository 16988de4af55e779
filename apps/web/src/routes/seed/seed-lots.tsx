/** SeedLots: every seed lot with what is left, what its last test says, where it is kept and when to test again. Props: today. */
import type { SeedLotFact } from '@crib/journal'
import { germinationOfTest, seedLotView } from '@crib/planning'
import { formatNumber, formatReckoned } from '@crib/wording'
import { useBook } from '../../book/book.tsx'
import { Reasons } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { dayText } from '../pantry/day-text.ts'
import { lotName } from './which-lot.tsx'

export function SeedLots({ today }: { readonly today: string }) {
  const { facts } = useBook()
  const lots = Object.values(facts.seedLots)
  return lots.map((lot) => <SeedLotRow key={lot.seedLotId} lot={lot} name={lotName(lots, lot)} today={today} />)
}

interface RowProps {
  readonly lot: SeedLotFact
  readonly name: string
  readonly today: string
}

function SeedLotRow({ lot, name, today }: RowProps) {
  const { say } = useWords()
  const view = seedLotView(lot, today)
  const test = lot.tests.at(-1)
  const facts = [
    [
      say('seed:screen-kernels-left'),
      lot.kernels ? formatNumber(lot.kernels.leftCount, 0) : say('seed:screen-not-counted'),
    ],
    [say('seed:screen-last-test'), test ? testText(test) : say('seed:screen-no-test')],
    [
      say('seed:screen-kept'),
      lot.containers.map(({ container, place }) => `${container}, ${place}`).join('; ') || say('seed:screen-kept-none'),
    ],
    [say('seed:screen-test-again'), dayText(view.testAgainBy)],
  ] as const
  function testText({ sproutedCount, ofCount }: SeedLotFact['tests'][number]): string {
    const germination = formatReckoned(germinationOfTest({ sproutedCount, testedCount: ofCount }))
    return say('seed:screen-test-said', { sprouted: sproutedCount, tested: ofCount, germination })
  }
  return (
    <div>
      <h3>{name}</h3>
      <dl className="facts">
        {facts.map(([what, text]) => (
          <div key={what} style={{ display: 'contents' }}>
            <dt>{what}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <Reasons sentences={[...view.reasons, ...view.warnings]} />
    </div>
  )
}
