/** The power is out: how long fridge and freezer still hold behind shut doors, and what may be frozen again. */
import { powerCutAdvice } from '@crib/guidance'
import { convert } from '@crib/science'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  ChoiceTags,
  CountField,
  FlagTag,
  NumberRow,
  Passage,
  QuantityField,
  Reasons,
  Sheet,
} from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { useWritten } from './written.tsx'

const FREEZERS = ['full', 'half', 'none'] as const
const READS = { min: -60, max: 120, unit: 'F', source: 'project rule' } as const

export function PowerCutSheet() {
  const { say } = useWords()
  const [hoursOut, setHours] = useHalfTyped('power-cut:hours', 0)
  const [freezer, setFreezer] = useHalfTyped<(typeof FREEZERS)[number]>('power-cut:freezer', 'full')
  const [hasIceCrystals, setIce] = useHalfTyped('power-cut:ice', false)
  const reads = useWritten('power-cut:reads')
  const readsC = reads.in('C')
  const advice = powerCutAdvice({
    hoursOut,
    freezer,
    hasIceCrystals,
    ...(readsC !== null && { freezerReadsF: convert(readsC, 'C', 'F') }),
  })
  return (
    <Sheet title={say('keeping:screen-power-cut')} drawing="cut-string" lead={say('keeping:screen-power-cut-lead')}>
      <Passage>
        <CountField label={say('keeping:screen-hours-out')} value={hoursOut} onValue={setHours} max={720} />
        <ChoiceTags
          legend={say('keeping:screen-freezer-how-full')}
          options={FREEZERS.map((value) => ({ value, label: say(`keeping:screen-freezer-${value}`) }))}
          value={freezer}
          onValue={setFreezer}
        />
        {freezer !== 'none' && (
          <>
            <FlagTag label={say('keeping:screen-ice')} value={hasIceCrystals} onValue={setIce} />
            <QuantityField
              label={say('keeping:screen-freezer-reads')}
              hint={say('keeping:screen-freezer-reads-hint')}
              measures="temperature"
              allowNegative
              {...reads.field}
              limits={READS}
            />
          </>
        )}
        <div aria-live="polite" className="passage-body">
          <Reasons sentences={advice.say} />
          <NumberRow>
            <BigNumber label={say('keeping:screen-fridge-left')} reckoned={advice.fridgeLeft} />
            {advice.freezerLeft && (
              <BigNumber label={say('keeping:screen-freezer-left')} reckoned={advice.freezerLeft} />
            )}
          </NumberRow>
        </div>
      </Passage>
    </Sheet>
  )
}
