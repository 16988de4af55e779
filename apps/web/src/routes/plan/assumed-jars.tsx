/** What was taken for granted of the jars: how full, which size, salt and lids, which canners. Props as the other rows. */
import type { BatchPlan } from '@crib/planning'
import type { ReactNode } from 'react'
import { useBook } from '../../book/book.tsx'
import { ChoiceTags, FlagTag, SideAction } from '../../parts-of-the-sheet/index.ts'
import { upperFirst } from '../../upper-first.ts'
import { useWords } from '../../words.tsx'
import { PercentField, RememberFill } from './assumed-choices.tsx'
import { type Assumed, type Draft, useDraft } from './draft.tsx'

export interface Row {
  readonly id: string
  readonly title: string
  readonly value?: string
  readonly control: ReactNode
}

export interface RowsProps {
  readonly plan: BatchPlan
  readonly change: (id: string) => (change: Assumed) => void
  readonly changeAnswer: (id: string) => (change: Partial<Draft>) => void
}

export function useJarRows({ plan, change }: RowsProps): readonly Row[] {
  const { facts } = useBook()
  const { say } = useWords()
  const { draft } = useDraft()
  const { input } = plan
  const fill = input.fill ?? 'loose-to-headspace'
  const canners = Object.values(facts.canners)
  return [
    {
      id: 'fill',
      title: upperFirst(say('shell:jar-fill')),
      value: say(`shell:jar-fill-${fill}`),
      control: (
        <>
          <ChoiceTags
            legend={say('shell:jar-fill')}
            hint={say('shell:jar-fill-hint')}
            options={(['loose-to-headspace', 'half', 'third'] as const).map((value) => ({
              value,
              label: say(`shell:jar-fill-${value}`),
            }))}
            value={fill}
            onValue={(next) => change('fill')({ fill: next })}
          />
          {draft.assumed.fill && draft.assumed.fill !== facts.kitchen?.jarFill && <RememberFill fill={fill} />}
        </>
      ),
    },
    {
      id: 'jar-size',
      title: upperFirst(say('shell:plan-assume-jar')),
      value: say(`season:screen-jar-${input.jarSize ?? 'quart'}`),
      control: (
        <ChoiceTags
          legend={say('shell:plan-assume-jar')}
          options={(['half-pint', 'pint', 'quart'] as const).map((value) => ({
            value,
            label: upperFirst(say(`season:screen-jar-${value}`)),
          }))}
          value={input.jarSize ?? 'quart'}
          onValue={(jarSize) => change('jar-size')({ jarSize })}
        />
      ),
    },
    {
      id: 'salt',
      title: say('shell:plan-assume-salt'),
      value: say(input.wantsSalt === false ? 'shell:plan-no' : 'shell:plan-yes'),
      control: (
        <>
          <FlagTag
            label={say('shell:plan-assume-salt')}
            value={input.wantsSalt !== false}
            onValue={(wantsSalt) => change('salt')({ wantsSalt })}
          />
          <PercentField
            label={say('shell:plan-assume-lids')}
            fraction={input.spareLidFraction ?? 0}
            onFraction={(spareLidFraction) => change('salt')({ spareLidFraction })}
          />
        </>
      ),
    },
    {
      id: 'canners',
      title: say('shell:canners-title'),
      value: input.canners.map(({ name }) => name).join(', ') || say('shell:plan-none'),
      control: (
        <>
          {canners.map(({ cannerId, name }) => (
            <FlagTag
              key={cannerId}
              label={name}
              value={input.canners.some((canner) => canner.name === name)}
              onValue={(isUsed) => {
                const used = canners.filter((each) =>
                  each.cannerId === cannerId ? isUsed : input.canners.some((canner) => canner.name === each.name),
                )
                change('canners')({ cannerIds: used.map((each) => each.cannerId) })
              }}
            />
          ))}
          <SideAction href="/canner">{say('shell:plan-to-canners')}</SideAction>
        </>
      ),
    },
  ]
}
