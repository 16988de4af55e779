/** PlanWishes: the few things every plan of a field asks. Props: wish, change, onFood, onBetweenM, onInRowM. */
import type { Quantity } from '@crib/science'
import { useBook } from '../../book/book.tsx'
import { ChoiceTags, CountField, FlagTag, QuantityField, TextField } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { LengthField } from './length-field.tsx'
import type { Wish } from './plan-wish.ts'

const FOOD_LIMIT = { min: 0, max: 5000, unit: 'Kg', source: 'project rule' } as const
const NO_LOT = ''
const PATTERNS = ['rows', 'hills'] as const
/** What each pattern is sown at before another spacing is typed: garden guides, and the hills of early textbooks. */
const USUAL = { rows: ['36 in', '12 in'], hills: ['42 in', '42 in'] } as const

export function PlanWishes({
  wish,
  change,
  onFood,
  onBetweenM,
  onInRowM,
}: {
  readonly wish: Wish
  readonly change: (part: Partial<Wish>) => void
  readonly onFood: (food: Quantity | null) => void
  readonly onBetweenM: (metres: number | null) => void
  readonly onInRowM: (metres: number | null) => void
}) {
  const { facts } = useBook()
  const { say } = useWords()
  const lots = Object.values(facts.seedLots)
  const isHills = wish.pattern === 'hills'
  return (
    <>
      <TextField label={say('field:screen-plan-corn')} value={wish.corn} onValue={(corn) => change({ corn })} />
      {lots.length > 0 && (
        <ChoiceTags
          legend={say('field:screen-plan-seed-lot')}
          options={[
            { value: NO_LOT, label: say('field:screen-plan-no-lot') },
            ...lots.map((lot) => ({ value: lot.seedLotId, label: lot.name })),
          ]}
          value={wish.seedLotId}
          onValue={(seedLotId) => {
            const perOz = Math.round(facts.seedLots[seedLotId]?.kernelsPerOz ?? wish.perOz)
            change({ seedLotId, perOz, corn: facts.seedLots[seedLotId]?.name ?? wish.corn })
          }}
        />
      )}
      <QuantityField
        label={say('field:screen-plan-food')}
        hint={say('field:screen-plan-food-hint')}
        measures="mass"
        bareNumberUnit="Lb"
        text={wish.foodText}
        onText={(foodText) => change({ foodText })}
        onQuantity={onFood}
        limits={FOOD_LIMIT}
      />
      <CountField
        label={say('field:screen-plan-reserve')}
        hint={say('field:screen-plan-reserve-hint')}
        value={wish.reserveKernels}
        onValue={(reserveKernels) => change({ reserveKernels })}
        max={1_000_000}
      />
      <CountField
        label={say('field:screen-plan-line')}
        hint={say('field:screen-plan-line-hint')}
        value={wish.linePlants}
        onValue={(linePlants) => change({ linePlants })}
        max={200_000}
      />
      <ChoiceTags
        legend={say('field:screen-plan-pattern')}
        options={PATTERNS.map((value) => ({ value, label: say(`field:screen-pattern-${value}`) }))}
        value={wish.pattern}
        onValue={(pattern) => {
          const [betweenText, inRowText] = USUAL[pattern]
          change({ pattern, betweenText, inRowText })
        }}
      />
      {isHills && (
        <fieldset className="field">
          <legend>{say('field:screen-plan-companions')}</legend>
          <div className="tags">
            <FlagTag label={say('field:screen-beans')} value={wish.beans} onValue={(beans) => change({ beans })} />
            <FlagTag label={say('field:screen-squash')} value={wish.squash} onValue={(squash) => change({ squash })} />
          </div>
        </fieldset>
      )}
      <LengthField
        label={say(isHills ? 'field:screen-plan-between-hill-rows' : 'field:screen-plan-between-rows')}
        hint={say('field:screen-plan-spacing-hint')}
        text={wish.betweenText}
        onText={(betweenText) => change({ betweenText })}
        onMetres={onBetweenM}
        least={0.1}
        most={5}
      />
      <LengthField
        label={say(isHills ? 'field:screen-plan-between-hills' : 'field:screen-plan-in-row')}
        text={wish.inRowText}
        onText={(inRowText) => change({ inRowText })}
        onMetres={onInRowM}
        least={0.02}
        most={5}
      />
      {isHills && (
        <CountField
          label={say('field:screen-plan-per-hill')}
          value={wish.perHill}
          onValue={(perHill) => change({ perHill })}
          min={1}
          max={12}
        />
      )}
    </>
  )
}
