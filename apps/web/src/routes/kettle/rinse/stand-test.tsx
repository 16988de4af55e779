/** StandTest: let kernels stand or crush some, hold a strip in that, and write down what it read. Props: batch, potLoad. */
import type { BatchFact } from '@crib/journal'
import { readStandTest } from '@crib/planning'
import { useHalfTyped } from '../../../half-typed.ts'
import { Caution, ChoiceTags, Reasons } from '../../../parts-of-the-sheet/index.ts'
import { Form } from '../../../records/form.tsx'
import { Asked, useRecord } from '../../../records/use-record.tsx'
import { useWords } from '../../../words.tsx'
import { STRIP_PH } from '../alkali/limits.ts'
import { AmountField, amountIn } from '../amount.tsx'
import { clockText } from '../pot-at.ts'

const WAYS = ['stood', 'crushed'] as const
type Way = (typeof WAYS)[number]

export function StandTest({
  batch,
  potLoad,
  zone,
}: {
  readonly batch: BatchFact
  readonly potLoad: number
  readonly zone: string
}) {
  const { say } = useWords()
  const record = useRecord()
  const fresh: { way: Way; pH: string } = { way: 'stood', pH: '' }
  const [typed, setTyped, forget] = useHalfTyped(`stand-test:${batch.batchId}:${potLoad}`, fresh)
  const stripPH = amountIn(typed.pH, STRIP_PH)
  const before = batch.cook.flatMap(({ seen, at, potLoad: pot }) =>
    seen.type === 'rinse-tested' && pot === potLoad ? [{ ...seen, at }] : [],
  )
  return (
    <>
      <Caution sentence={{ key: 'cautions:wash-clear-is-no-proof' }} />
      {before.length > 0 && (
        <ul className="reasons">
          {before.map(({ way, stripPH: pH, at }) => (
            <li key={at.entryId}>
              {clockText(Date.parse(at.instant), { zone })} {say(`kettle:rinse-tested-${way}`, { pH })}
            </li>
          ))}
        </ul>
      )}
      <Form
        action={say('kettle:stand-keep')}
        disabled={stripPH === null}
        onSubmit={async () => {
          if (stripPH === null) return
          const seen = { type: 'rinse-tested', way: typed.way, stripPH } as const
          if (await record.keep('cook-noted', { batchId: batch.batchId, potLoad, seen })) forget()
        }}
      >
        <ChoiceTags
          legend={say('kettle:stand-way')}
          options={WAYS.map((value) => ({
            value,
            label: say(`kettle:stand-way-${value}`),
            note: say(`kettle:stand-way-${value}-note`),
          }))}
          value={typed.way}
          onValue={(way) => setTyped({ ...typed, way })}
        />
        <AmountField
          label={say('kettle:test-strip-ph')}
          spec={STRIP_PH}
          text={typed.pH}
          onText={(pH) => setTyped({ ...typed, pH })}
        />
        <div aria-live="polite">{stripPH !== null && <Reasons sentences={readStandTest(stripPH)} />}</div>
        <Asked record={record} />
      </Form>
    </>
  )
}
