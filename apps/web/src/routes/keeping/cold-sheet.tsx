/** Fridge and freezer: how long each keeps, how much a freezer takes in a day, and how long a flat bag takes to freeze. */
import { keepingAdvice } from '@crib/guidance'
import { freezingPlan } from '@crib/planning'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  Caution,
  CountField,
  NumberRow,
  Passage,
  QuantityField,
  Reasons,
  Sheet,
  SourceLine,
} from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { MoistureField, useMoisture, useWritten, within } from './written.tsx'

const THICK = { min: 0.005, max: 0.2, unit: 'M', source: 'project rule' } as const
const START = { min: 0, max: 60, unit: 'C', source: 'project rule' } as const
const FREEZER = { min: -40, max: -10, unit: 'C', source: 'project rule' } as const
/** Drained hominy; half to nine tenths is what the freezing time is reckoned for. */
const WATER = { min: 0.5, max: 0.9 } as const

export function ColdSheet() {
  const { say } = useWords()
  const [roomFt3, setRoom] = useHalfTyped('cold:room', 0)
  const thick = useWritten('cold:thick')
  const start = useWritten('cold:start')
  const freezer = useWritten('cold:freezer')
  const water = useMoisture('cold:water')
  const bagThicknessM = thick.in('M')
  const startC = start.in('C')
  const freezerC = freezer.in('C')
  const { wetFraction } = water
  const isWaterOut = wetFraction !== null && !(wetFraction >= WATER.min && wetFraction <= WATER.max)
  const plan =
    bagThicknessM !== null && startC !== null && freezerC !== null && wetFraction !== null && !isWaterOut
      ? within(() =>
          freezingPlan({ bagThicknessM, startC, freezerC, wetFraction, ...(roomFt3 > 0 && { freezerFt3: roomFt3 }) }),
        )
      : null
  const load = plan?.values.find(({ id }) => id === 'loadPerDayLb')
  return (
    <Sheet title={say('keeping:screen-freezer')} drawing="tin" lead={say('keeping:screen-freezer-lead')}>
      <Passage title={say('keeping:screen-how-long')}>
        <Reasons
          sentences={[keepingAdvice('fresh').say, keepingAdvice('frozen').say, { key: 'keeping:freeze-flat' }]}
        />
        {[...keepingAdvice('fresh').sourceKeys, ...keepingAdvice('frozen').sourceKeys].map((key) => (
          <SourceLine key={key} sourceKey={key} />
        ))}
        <Caution sentence={{ key: 'keeping:freeze-cold-first' }} />
      </Passage>
      <Passage title={say('keeping:screen-bag')}>
        <QuantityField
          label={say('keeping:screen-thick')}
          hint={say('keeping:screen-thick-hint')}
          measures="length"
          {...thick.field}
          limits={THICK}
        />
        <QuantityField
          label={say('keeping:screen-goes-in-at')}
          hint={say('keeping:screen-goes-in-hint')}
          measures="temperature"
          {...start.field}
          limits={START}
        />
        <QuantityField
          label={say('keeping:screen-freezer-at')}
          hint={say('keeping:screen-freezer-at-hint')}
          measures="temperature"
          allowNegative
          {...freezer.field}
          limits={FREEZER}
        />
        <MoistureField
          label={say('keeping:screen-hominy-water')}
          hint={say('keeping:screen-hominy-water-hint')}
          moisture={water}
        />
        {isWaterOut && <p role="alert">{say('keeping:screen-water-outside', { typed: water.text })}</p>}
        <CountField
          label={say('keeping:screen-room')}
          hint={say('keeping:screen-room-hint')}
          value={roomFt3}
          onValue={setRoom}
          max={100}
        />
        <div aria-live="polite" className="passage-body">
          {plan ? (
            <NumberRow>
              <BigNumber label={say('keeping:screen-freezing-h')} reckoned={plan.values[0]!} />
              {load && <BigNumber label={say('keeping:screen-load-a-day')} reckoned={load} />}
            </NumberRow>
          ) : (
            <p>{say('keeping:screen-bag-needs')}</p>
          )}
        </div>
      </Passage>
    </Sheet>
  )
}
