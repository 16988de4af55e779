/** Yield: the hominy of a pot weighed, where its dry matter went, and what this corn lot yields by the keeper's own scales. */
import { cornLotOf, hominyWeighed, lotYield, potBalance } from '@crib/planning'
import { type Reckoned, wetFractionOfSample } from '@crib/science'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { BigNumber, Fold, NumberRow, Passage, Reasons, Refusal } from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { upperFirst } from '../../upper-first.ts'
import { useWords } from '../../words.tsx'
import { AmountField, type AmountSpec, amountIn } from './amount.tsx'
import type { PotAt } from './pot-at.ts'

const HOMINY_KG: AmountSpec = { unit: 'Kg', min: 0.001, max: 5000 }
const SAMPLE_G: AmountSpec = { unit: 'G', min: 1, max: 10_000 }
const NAMES = {
  hominyPerCorn: 'kettle:yield-per-corn',
  lossFraction: 'kettle:yield-loss',
  inKg: 'kettle:yield-in',
  hominyDryKg: 'kettle:yield-hominy',
  tailsDryKg: 'kettle:yield-tails',
  lossKg: 'kettle:yield-lost',
} as const

/** What a cook asks first; the parts stand behind it. */
const HEADLINES: ReadonlySet<string> = new Set(['hominyPerCorn', 'lossFraction'])

export function Yield({ at }: { readonly at: PotAt }) {
  const { facts } = useBook()
  const { say } = useWords()
  const { batch, walk } = at
  const { potLoad } = walk
  const weighed = hominyWeighed(batch, potLoad)
  const balance = potBalance(facts, batch, potLoad)
  const lotId = cornLotOf(batch)
  const stamped = (value: Reckoned) => (
    <BigNumber
      key={value.id}
      label={upperFirst(say(NAMES[value.id as keyof typeof NAMES]))}
      reckoned={value}
      size="small"
    />
  )
  const own = lotId === undefined ? null : lotYield(facts, lotId)
  return (
    <Passage title={say('kettle:yield-title')}>
      {weighed && !balance && <p>{say('kettle:yield-no-plan')}</p>}
      {balance && !balance.ok && (
        <Refusal title={say('kettle:yield-refused')} why={balance.why} askWhom={balance.askWhom} />
      )}
      {balance?.ok && (
        <>
          <NumberRow>{balance.values.filter(({ id }) => HEADLINES.has(id)).map(stamped)}</NumberRow>
          <Reasons sentences={balance.reasons} />
          <Fold title={say('kettle:yield-parts')}>
            <NumberRow>{balance.values.filter(({ id }) => !HEADLINES.has(id)).map(stamped)}</NumberRow>
          </Fold>
        </>
      )}
      {own && (
        <NumberRow>
          <BigNumber
            label={say('kettle:yield-own', { count: own.batchesCount })}
            reckoned={own.hominyPerCorn}
            size="small"
          />
          {own.spread && <BigNumber label={say('kettle:yield-own-spread')} reckoned={own.spread} size="small" />}
        </NumberRow>
      )}
      {own && <p className="field-hint">{say('kettle:yield-own-used')}</p>}
      <Fold title={say(weighed ? 'kettle:yield-weigh-again' : 'kettle:yield-weigh')}>
        <WeighForm at={at} />
      </Fold>
    </Passage>
  )
}

const NOTHING = { hominy: '', wet: '', dry: '' }

function WeighForm({ at: { batch, walk } }: { readonly at: PotAt }) {
  const { say } = useWords()
  const record = useRecord()
  const { potLoad } = walk
  const [typed, setTyped, forget] = useHalfTyped(`hominy:${batch.batchId}:${potLoad}`, NOTHING)
  const massKg = amountIn(typed.hominy, HOMINY_KG)
  const wetG = amountIn(typed.wet, SAMPLE_G)
  const dryG = amountIn(typed.dry, SAMPLE_G)
  const hasSample = typed.wet.trim() !== '' || typed.dry.trim() !== ''
  const wetFraction = wetG !== null && dryG !== null && dryG < wetG ? wetFractionOfSample(wetG, dryG) : null
  const keep = async () => {
    if (massKg === null) return
    const seen = { type: 'hominy-weighed', massKg, ...(wetFraction !== null && { wetFraction }) } as const
    if (await record.keep('cook-noted', { batchId: batch.batchId, potLoad, seen })) forget()
  }
  return (
    <Form
      action={say('kettle:yield-keep')}
      onSubmit={() => void keep()}
      disabled={massKg === null || (hasSample && wetFraction === null)}
    >
      <AmountField
        label={say('kettle:yield-hominy-kept')}
        hint={say('kettle:yield-hominy-hint')}
        spec={HOMINY_KG}
        text={typed.hominy}
        onText={(hominy) => setTyped({ ...typed, hominy })}
        required
      />
      <AmountField
        label={say('kettle:yield-sample-wet')}
        hint={say('kettle:balance-how-to-measure')}
        spec={SAMPLE_G}
        text={typed.wet}
        onText={(wet) => setTyped({ ...typed, wet })}
      />
      <AmountField
        label={say('kettle:yield-sample-dry')}
        spec={SAMPLE_G}
        text={typed.dry}
        onText={(dry) => setTyped({ ...typed, dry })}
      />
      {wetG !== null && dryG !== null && dryG >= wetG && (
        <Reasons
          sentences={[
            {
              key: 'kettle:balance-sample-gained',
              params: { wet: { value: wetG, unit: 'G' }, dry: { value: dryG, unit: 'G' } },
            },
          ]}
        />
      )}
      <Asked record={record} />
    </Form>
  )
}
