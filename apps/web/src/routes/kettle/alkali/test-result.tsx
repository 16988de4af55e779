/**
 * TestResult: what a test of a lot says so far, with its band and cautions, and the handle that writes it down.
 * Props: lot, found (null while something is missing), missing (words for what is), gPerCup?, onKept.
 */
import type { AlkaliLotFact } from '@crib/journal'
import { type LotTestFound, readLotTest } from '@crib/planning'
import type { MessageKey } from '@crib/wording'
import { BigNumber, Caution, Fold, NextAction, NumberRow, Reasons, Refusal } from '../../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../../records/use-record.tsx'
import { useWords } from '../../../words.tsx'

/** What a cook asks for first; the others stand behind a tap. */
const FIRST = ['lotEqPerKg', 'hydroxideFraction', 'stripHydroxideMolPerL', 'lotHydroxideEqPerKg', 'slippedFraction']

export function TestResult({
  lot,
  found,
  missing,
  gPerCup,
  onKept,
}: {
  readonly lot: AlkaliLotFact
  readonly found: LotTestFound | null
  readonly missing: string
  readonly gPerCup?: number | undefined
  readonly onKept: () => void
}) {
  const { say } = useWords()
  const record = useRecord()
  if (!found) return <p role="status">{missing}</p>
  const read = readLotTest(found)
  if (!read.ok) return <Refusal title={say('kettle:test-does-not-fit')} why={read.why} askWhom={read.askWhom} />
  const first = read.values.filter(({ id }) => FIRST.includes(id))
  const others = read.values.filter((value) => !first.includes(value))
  const number = (value: (typeof first)[number]) => (
    <BigNumber
      key={value.id}
      label={say(`kettle:test-value-${value.id}` as MessageKey)}
      reckoned={value}
      size="small"
    />
  )
  return (
    <>
      <div aria-live="polite" className="passage-body">
        <NumberRow>{first.map(number)}</NumberRow>
        {others.length > 0 && (
          <Fold title={say('kettle:test-liquor')}>
            <NumberRow>{others.map(number)}</NumberRow>
          </Fold>
        )}
        <Reasons sentences={read.reasons} />
        {read.warnings.map((sentence) => (
          <Caution key={sentence.key} sentence={sentence} />
        ))}
      </div>
      <NextAction
        onClick={async () => {
          const body = { alkaliLotId: lot.alkaliLotId, found, ...(gPerCup !== undefined && { gPerCup }) }
          if (await record.keep('alkali-lot-tested', body)) onKept()
        }}
      >
        {say('kettle:test-keep')}
      </NextAction>
      <Asked record={record} onKept={onKept} />
    </>
  )
}
