/**
 * What was taken for granted, one row each, opened by a tap. A change moves the plan at once, and what moved stands under
 * the row that was changed. Props: plan, change, changeAnswer, moved, unitOf.
 */
import { type BatchPlan, HOMINY_PER_DRY_VOLUME, type Moved, WATER_TO_CORN_RATIO } from '@crib/planning'
import type { Unit } from '@crib/science'
import { formatNumber, formatQuantity } from '@crib/wording'
import { useState } from 'react'
import { ChoiceTags, ClockField, CountField, Fold, MarginNote, Passage } from '../../parts-of-the-sheet/index.ts'
import { upperFirst } from '../../upper-first.ts'
import { useWords } from '../../words.tsx'
import { AlkaliChoice, PercentField, PotChoice } from './assumed-choices.tsx'
import { type Row, type RowsProps, useJarRows } from './assumed-jars.tsx'
import { type Assumed, type Draft, useDraft } from './draft.tsx'
import { HominyField } from './hominy-field.tsx'
import { MovedList } from './plan-number.tsx'
import { StageList } from './stage-list.tsx'

interface AssumptionsProps {
  readonly plan: BatchPlan
  readonly change: (change: Assumed) => void
  readonly changeAnswer: (change: Partial<Draft>) => void
  readonly moved: readonly Moved[]
  readonly unitOf: (id: string) => Unit | null
}

export function Assumptions(props: AssumptionsProps) {
  const { say } = useWords()
  const [touched, setTouched] = useState<string | null>(null)
  // Marked by the change itself: a mark made while the tap is still on its way down would make React undo the tap.
  const marking =
    <T,>(act: (change: T) => void) =>
    (id: string) =>
    (change: T) => {
      setTouched(id)
      act(change)
    }
  const rows = useRows({
    plan: props.plan,
    change: marking(props.change),
    changeAnswer: marking(props.changeAnswer),
  })
  return (
    <Passage title={say('shell:plan-assumed')} margin={<MarginNote>{say('shell:plan-assumed-margin')}</MarginNote>}>
      {rows.map(({ id, title, value, control }) => (
        <div key={id}>
          <Fold title={value ? `${title}: ${value}` : title}>
            {control}
            {touched === id && <MovedList moved={props.moved} unitOf={props.unitOf} />}
          </Fold>
        </div>
      ))}
    </Passage>
  )
}

function useRows({ plan, change, changeAnswer }: RowsProps): readonly Row[] {
  const { say } = useWords()
  const { draft } = useDraft()
  const { input } = plan
  const hasJars = (draft.parts.jars ?? 0) > 0
  const wanted = (Object.entries(draft.parts) as [keyof Draft['parts'], number][]).filter(([, count]) => count > 0)
  const ratio = input.hominyPerDryVolume ?? HOMINY_PER_DRY_VOLUME
  const pattern = input.stages ? 'own' : (input.washPattern ?? 'common-practice')
  const jarRows = useJarRows({ plan, change, changeAnswer })
  const rows: (Row | false)[] = [
    {
      id: 'alkali',
      title: say('shell:plan-assume-alkali'),
      value: input.alkaliLot?.name || say(`shell:alkali-${input.alkali}`),
      control: <AlkaliChoice plan={plan} change={change('alkali')} />,
    },
    {
      id: 'pots',
      title: say('shell:pots-title'),
      value: input.pots.map(({ name }) => name).join(', ') || say('shell:plan-none'),
      control: <PotChoice plan={plan} change={change('pots')} />,
    },
    {
      id: 'water',
      title: say('shell:plan-assume-water'),
      value: say('shell:plan-assume-ratio', { ratio: input.waterToCornRatio ?? WATER_TO_CORN_RATIO }),
      control: (
        <CountField
          label={say('shell:plan-assume-water-label')}
          hint={say('shell:plan-assume-water-hint')}
          value={input.waterToCornRatio ?? WATER_TO_CORN_RATIO}
          onValue={(waterToCornRatio) => change('water')({ waterToCornRatio })}
          min={1}
          max={20}
        />
      ),
    },
    {
      id: 'stages',
      title: say('shell:plan-assume-stages'),
      value: say(`shell:plan-pattern-${pattern}`),
      control: <StageList plan={plan} change={change('stages')} />,
    },
    {
      id: 'hominy',
      title: say('shell:plan-assume-hominy'),
      value: say('common:range', { low: formatNumber(ratio.low), high: formatNumber(ratio.high) }),
      control: <HominyField ratio={ratio} onRatio={(hominyPerDryVolume) => change('hominy')({ hominyPerDryVolume })} />,
    },
    {
      id: 'sorted',
      title: say('shell:plan-assume-sorted'),
      value: formatQuantity({ value: input.sortedOutDryFraction ?? 0, unit: 'Fraction' }),
      control: (
        <>
          <PercentField
            label={say('shell:plan-assume-sorted-dry')}
            fraction={input.sortedOutDryFraction ?? 0}
            onFraction={(sortedOutDryFraction) => change('sorted')({ sortedOutDryFraction })}
          />
          <PercentField
            label={say('shell:plan-assume-sorted-wet')}
            fraction={input.sortedOutWetFraction ?? 0}
            onFraction={(sortedOutWetFraction) => change('sorted')({ sortedOutWetFraction })}
          />
        </>
      ),
    },
    {
      id: 'hull',
      title: upperFirst(say('shell:plan-assume-hull')),
      value: input.hull ? say(`shell:plan-hull-${input.hull}`) : say('shell:plan-hull-unknown'),
      control: (
        <ChoiceTags
          legend={say('shell:plan-assume-hull-legend')}
          options={(['easy', 'thick'] as const).map((value) => ({ value, label: say(`shell:plan-hull-${value}`) }))}
          value={input.hull ?? null}
          onValue={(hull) => change('hull')({ hull })}
        />
      ),
    },
    wanted.length > 1 && {
      id: 'parts',
      title: say('shell:plan-assume-parts'),
      value: wanted.map(([ending, count]) => `${count} ${say(`shell:plan-end-${ending}`)}`).join(', '),
      control: (
        <>
          {wanted.map(([ending, count]) => (
            <CountField
              key={ending}
              label={say('shell:plan-parts-for', { end: say(`shell:plan-end-${ending}`) })}
              value={count}
              onValue={(next) => changeAnswer('parts')({ parts: { ...draft.parts, [ending]: next } })}
              min={1}
              max={99}
            />
          ))}
        </>
      ),
    },
    ...(hasJars ? jarRows : []),
    {
      id: 'when',
      title: say('shell:plan-when'),
      value: `${draft.clock}, ${say('shell:plan-people-count', { count: draft.peopleCount })}`,
      control: (
        <>
          <ClockField
            label={say(`shell:plan-clock-${draft.clockFrom}-at`)}
            value={draft.clock}
            onValue={(clock) => clock && changeAnswer('when')({ clock })}
          />
          <CountField
            label={say('shell:plan-people')}
            hint={say('shell:plan-people-hint')}
            value={draft.peopleCount}
            onValue={(peopleCount) => changeAnswer('when')({ peopleCount })}
            min={1}
            max={500}
          />
          {hasJars && (
            <ChoiceTags
              legend={say('season:screen-counts')}
              options={(['whole', 'canners'] as const).map((value) => ({
                value,
                label: say(`season:screen-counts-${value}`),
              }))}
              value={draft.counts}
              onValue={(counts) => changeAnswer('when')({ counts })}
            />
          )}
        </>
      ),
    },
    {
      id: 'households',
      title: say('season:screen-households'),
      value: say('season:screen-households-count', { count: draft.householdsCount }),
      control: (
        <CountField
          label={say('season:screen-households-label')}
          hint={say('season:screen-households-hint')}
          value={draft.householdsCount}
          onValue={(householdsCount) => changeAnswer('households')({ householdsCount })}
          min={1}
          max={500}
        />
      ),
    },
  ]
  return rows.filter((row): row is Row => row !== false)
}
