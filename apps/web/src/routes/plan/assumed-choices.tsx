/** Controls of single assumptions: which alkali and how much, which pots, a share in percent, remembering the fill. */
import { type BatchPlan, isHullingLot } from '@crib/planning'
import { formatNumber } from '@crib/wording'
import { useBook } from '../../book/book.tsx'
import { ChoiceTags, CountField, FlagTag, Reasons, SideAction } from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import type { Assumed } from './draft.tsx'

interface ChoiceProps {
  readonly plan: BatchPlan
  readonly change: (change: Assumed) => void
}

export function AlkaliChoice({ plan, change }: ChoiceProps) {
  const { facts } = useBook()
  const { say } = useWords()
  const { input } = plan
  const lots = Object.values(facts.alkaliLots).filter(isHullingLot)
  const chosen = lots.find(({ name }) => name === input.alkaliLot?.name)?.alkaliLotId ?? input.alkali
  const halfCups = Math.round((input.alkaliLot?.cupsPerLiquidQt ?? 1) * 2)
  return (
    <>
      <ChoiceTags
        legend={say('shell:plan-assume-alkali')}
        options={[
          ...lots.map(({ alkaliLotId, name, judged }) => ({
            value: alkaliLotId,
            label: name,
            note: say(`shell:alkali-judged-${judged}`),
          })),
          ...(['ash', 'calcium-hydroxide', 'sodium-hydroxide', 'baking-soda'] as const).map((value) => ({
            value,
            label: say('shell:plan-no-lot', { kind: say(`shell:alkali-${value}`) }),
          })),
        ]}
        value={chosen}
        onValue={(value) => {
          const lot = lots.find(({ alkaliLotId }) => alkaliLotId === value)
          if (lot) change({ alkaliLotId: lot.alkaliLotId, alkali: lot.alkali })
          else change({ alkaliLotId: 'none', alkali: value as typeof input.alkali })
        }}
      />
      {input.alkali === 'ash' && (
        <CountField
          label={say('shell:alkali-half-cups')}
          hint={say('shell:alkali-cups', { cups: formatNumber(halfCups / 2) })}
          value={halfCups}
          onValue={(halves) => change({ cupsPerLiquidQt: halves / 2 })}
          min={1}
          max={48}
        />
      )}
      <Reasons sentences={plan.kettle.reasons.filter(({ key }) => key.startsWith('kettle:ash-'))} />
    </>
  )
}

export function PotChoice({ plan, change }: ChoiceProps) {
  const { facts } = useBook()
  const { say } = useWords()
  const pots = Object.values(facts.pots)
  const isUsed = (name: string) => plan.input.pots.some((pot) => pot.name === name)
  return (
    <>
      {pots.map(({ potId, name }) => (
        <FlagTag
          key={potId}
          label={name}
          value={isUsed(name)}
          onValue={(use) =>
            change({
              potNames: pots.flatMap((pot) => ((pot.name === name ? use : isUsed(pot.name)) ? [pot.name] : [])),
            })
          }
        />
      ))}
      <SideAction href="/kettle">{say('shell:plan-to-pots')}</SideAction>
    </>
  )
}

export function RememberFill({ fill }: { readonly fill: NonNullable<Assumed['fill']> }) {
  const { kitchenId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  return (
    <>
      <SideAction onClick={() => kitchenId && record.keep('kitchen-noted', { kitchenId, jarFill: fill })}>
        {say('shell:plan-remember')}
      </SideAction>
      <Asked record={record} />
    </>
  )
}

export function PercentField({
  label,
  fraction,
  onFraction,
}: {
  readonly label: string
  readonly fraction: number
  readonly onFraction: (fraction: number) => void
}) {
  return (
    <CountField
      label={label}
      value={Math.round(fraction * 100)}
      onValue={(percent) => onFraction(percent / 100)}
      max={90}
    />
  )
}
