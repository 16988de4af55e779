/** The rinse of one pot-load: the wash for the water at hand, what remains where, the stand test, and the spent liquor. */
import { planOfBatch, potCornKg, potWalk, washSoFar } from '@crib/planning'
import { convert } from '@crib/science'
import { formatNumber } from '@crib/wording'
import { useMemo } from 'react'
import { useSearch } from 'wouter'
import { useBook } from '../../../book/book.tsx'
import { deviceZone } from '../../../book/keeper.ts'
import { useHalfTyped } from '../../../half-typed.ts'
import { CountField, Fold, MarginNote, NextAction, Passage, Sheet } from '../../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../../shell/not-here.tsx'
import { useWords } from '../../../words.tsx'
import { AmountField, type AmountSpec, amountIn } from '../amount.tsx'
import { Disposal } from './disposal.tsx'
import { StandTest } from './stand-test.tsx'
import { WashPlan } from './wash-plan.tsx'

const CORN_LB: AmountSpec = { unit: 'Lb', min: 0.2, max: 400 }
const WATER_GAL: AmountSpec = { unit: 'LiquidGal', min: 0.1, max: 2000 }
const TIME_MIN: AmountSpec = { unit: 'Min', min: 5, max: 2880 }

export default function RinsePage({ batchId }: { readonly batchId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const potLoad = Math.max(1, Number(new URLSearchParams(useSearch()).get('pot')) || 1)
  const batch = facts.batches[batchId]
  const plan = useMemo(() => {
    const outcome = batch && planOfBatch(batch)
    return outcome?.kind === 'planned' ? outcome : null
  }, [batch])
  const plannedKg = potCornKg(facts, plan, potLoad)
  const [typed, setTyped] = useHalfTyped(`rinse:${batchId}:${potLoad}`, {
    corn: plannedKg === null ? '' : `${formatNumber(convert(plannedKg, 'Kg', 'Lb'), 2)} lb`,
    water: '',
    time: '2 h',
    boils: 3,
  })
  if (!batch) return <NotHere />
  const change = (part: Partial<typeof typed>) => setTyped({ ...typed, ...part })
  const cornLb = amountIn(typed.corn, CORN_LB)
  const waterGal = amountIn(typed.water, WATER_GAL)
  const timeMin = amountIn(typed.time, TIME_MIN)
  const dryCornKg = cornLb === null ? null : convert(cornLb, 'Lb', 'Kg')
  const input =
    dryCornKg === null || waterGal === null || timeMin === null
      ? null
      : { dryCornKg, waterL: convert(waterGal, 'LiquidGal', 'L'), timeMin, boilsCount: typed.boils }
  const cornKg = dryCornKg ?? plannedKg
  const soFar = cornKg === null ? null : washSoFar(potWalk(batch, plan, potLoad), cornKg)
  return (
    <Sheet
      title={say('kettle:wash-title')}
      drawing="pot"
      lead={say('kettle:wash-lead', { title: batch.plan.title, number: potLoad })}
    >
      <Passage title={say('kettle:wash-at-hand')} margin={<MarginNote>{say('kettle:wash-margin')}</MarginNote>}>
        <AmountField
          label={say('kettle:wash-water')}
          hint={say('kettle:wash-water-hint')}
          spec={WATER_GAL}
          text={typed.water}
          onText={(water) => change({ water })}
          required
        />
        <AmountField
          label={say('kettle:wash-time')}
          spec={TIME_MIN}
          text={typed.time}
          onText={(time) => change({ time })}
          required
        />
        <CountField
          label={say('kettle:wash-boils')}
          value={typed.boils}
          onValue={(boils) => change({ boils })}
          max={8}
        />
        <AmountField
          label={say('kettle:dose-corn')}
          spec={CORN_LB}
          text={typed.corn}
          onText={(corn) => change({ corn })}
          required
        />
      </Passage>
      <Passage title={say('kettle:wash-plan')}>
        <div id="wash" aria-live="polite">
          <WashPlan input={input} soFar={soFar} />
        </div>
        <NextAction href={`/kettle/${batchId}`}>{say('kettle:wash-back')}</NextAction>
      </Passage>
      <Passage title={say('kettle:stand-title')}>
        <StandTest batch={batch} potLoad={potLoad} zone={deviceZone()} />
      </Passage>
      <Passage>
        <Fold title={say('kettle:disposal-title')}>
          <Disposal batch={batch} potLoad={potLoad} />
        </Fold>
      </Passage>
    </Sheet>
  )
}
