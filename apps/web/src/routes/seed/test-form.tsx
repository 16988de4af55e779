/** SproutingTestForm: a count, and what it says before it is written down. Props: choice (which lot), today. */
import { germinationInterval, germinationOfTest, testBesideOthers } from '@crib/planning'
import { useHalfTyped } from '../../half-typed.ts'
import { BigNumber, CountField, DateField, Reasons } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { type LotChoice, WhichLot } from './which-lot.tsx'

/** A fair start; project rule of every test here. [kernels] */
const KERNELS_TO_TEST = 50

export function SproutingTestForm({ choice, today }: { readonly choice: LotChoice; readonly today: string }) {
  const { say } = useWords()
  const record = useRecord()
  const { lot } = choice
  const of = `sprouting:${lot?.seedLotId}`
  const [testedOn, setTestedOn, forgetDay] = useHalfTyped(`${of}:on`, today)
  const [testedCount, setTestedCount] = useHalfTyped(`${of}:of`, KERNELS_TO_TEST)
  const [sproutedCount, setSproutedCount, forgetSprouted] = useHalfTyped<number | null>(`${of}:sprouted`, null)
  const forget = (sprouted?: number, on?: string) => {
    forgetSprouted(sprouted)
    forgetDay(on)
  }
  if (!lot) return null
  const counted = sproutedCount === null ? null : { sproutedCount, testedCount }
  const said = counted && germinationInterval(counted)
  const others = lot.tests.map((test) => ({ ...test, testedCount: test.ofCount }))
  const beside = counted ? testBesideOthers({ ...counted, testedOn }, others).sentences : []
  return (
    <Form
      action={say('seed:screen-keep-test')}
      disabled={!said?.ok}
      onSubmit={async () => {
        if (!counted || !said?.ok) return
        const body = { seedLotId: lot.seedLotId, testedOn, sproutedCount: counted.sproutedCount, ofCount: testedCount }
        // The next count may be typed already while this one is being written.
        if (await record.keep('germination-tested', body)) forget(counted.sproutedCount, testedOn)
      }}
    >
      <WhichLot {...choice} />
      <DateField label={say('seed:screen-tested-on')} value={testedOn} onValue={setTestedOn} max={today} />
      <CountField label={say('seed:screen-of')} value={testedCount} onValue={setTestedCount} max={10_000} />
      <CountField label={say('seed:screen-sprouted')} value={sproutedCount} onValue={setSproutedCount} max={10_000} />
      <div aria-live="polite" className="passage-body">
        {counted && said?.ok && (
          <>
            <BigNumber label={say('seed:screen-says')} reckoned={germinationOfTest(counted)} size="small" />
            <Reasons sentences={[...said.reasons, ...said.warnings, ...beside]} />
          </>
        )}
        {said && !said.ok && <Reasons sentences={said.why} />}
      </div>
      <Asked record={record} onKept={() => forget()} />
    </Form>
  )
}
