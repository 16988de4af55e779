/** The day by clock: door to door first, then the strip; two days offered where hulling and canning share one. */
import type { Day, DayPlan, Moved } from '@crib/planning'
import { type Reckoned, shownValue } from '@crib/science'
import { formatDuration } from '@crib/wording'
import { Behind, ChoiceTags, Figure, Ledger, MarginNote, Passage, Reasons } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { clock } from './clock-text.ts'
import { DayStrip } from './day-strip.tsx'
import { type Draft, useDraft } from './draft.tsx'

export function TheDay({
  day,
  moved,
  change,
}: {
  readonly day: DayPlan
  readonly moved: readonly Moved[]
  readonly change: (change: Partial<Draft>) => void
}) {
  const { say } = useWords()
  const { draft } = useDraft()
  const value = (id: string) => day.values.find((each) => each.id === id)
  const length = value('doorToDoorMin')
  const was = moved.find(({ id }) => id === 'doorToDoorMin')?.before
  const split = day.twoDays && draft.dayCount === 2 ? day.twoDays : null
  return (
    <Passage title={say('shell:plan-day')} margin={<MarginNote>{say('shell:plan-day-margin')}</MarginNote>}>
      {split ? (
        <>
          <FromTo name={say('shell:plan-hull-day')} day={split.hull} />
          <FromTo name={say('shell:plan-can-day')} day={split.can} />
        </>
      ) : (
        <FromTo
          name={say(isCannersAlone(day) ? 'season:screen-canners-day' : 'shell:plan-door-to-door')}
          day={day.day}
        />
      )}
      {length && !split && (
        <div>
          <p>
            {lengthText(length, say)}
            {was !== undefined && (
              <span className="was">
                {' '}
                {say('shell:plan-was')} <s>{formatDuration(was)}</s>
              </span>
            )}
          </p>
          <Behind reckoned={length} label={say('season:screen-amount-door-to-door')} />
        </div>
      )}
      <Reasons sentences={day.warnings} />
      {day.twoDays && (
        <ChoiceTags
          legend={say('shell:plan-days')}
          options={[
            { value: '1', label: say('shell:plan-days-one') },
            { value: '2', label: say('shell:plan-days-two') },
          ]}
          value={String(draft.dayCount)}
          onValue={(count) => change({ dayCount: count === '2' ? 2 : 1 })}
        />
      )}
      {(split
        ? ([
            ['hull', split.hull],
            ['can', split.can],
          ] as const)
        : ([['whole', day.day]] as const)
      ).map(([name, each]) => (
        <Figure
          key={name}
          title={say(`shell:plan-strip-${name}`)}
          table={<StepTable day={each} caption={say(`shell:plan-strip-${name}`)} />}
        >
          <DayStrip day={each} title={say(`shell:plan-strip-${name}`)} />
        </Figure>
      ))}
      <Reasons sentences={day.reasons.filter(({ key }) => key !== 'season:door-to-door')} />
    </Passage>
  )
}

function isCannersAlone({ reasons }: DayPlan): boolean {
  return reasons.some(({ key }) => key === 'season:canners-alone')
}

function FromTo({ name, day }: { readonly name: string; readonly day: Day }) {
  const { say } = useWords()
  return (
    <div className="stamped from-to">
      <p className="stamped-name">{name}</p>
      <p className="stamped-value">
        <Clock at={day.startMin} /> <span className="unit">{say('shell:plan-to')}</span> <Clock at={day.finishMin} />
      </p>
    </div>
  )
}

/** The digits stamped, the day after them small. */
function Clock({ at }: { readonly at: number }) {
  const text = clock(at)
  const digits = text.slice(0, 5)
  return (
    <>
      <span>{digits}</span>
      {text.length > 5 && <span className="unit">{text.slice(5).replace(/^, /, '')}</span>}
    </>
  )
}

function lengthText({ value, low, high, rounding }: Reckoned, say: ReturnType<typeof useWords>['say']): string {
  const shown = (each: number) => formatDuration(shownValue({ value: each, rounding }))
  if (low === undefined || high === undefined || low === high) return say('shell:plan-length', { length: shown(value) })
  return say('shell:plan-length-range', { length: shown(value), low: shown(low), high: shown(high) })
}

function StepTable({ day, caption }: { readonly day: Day; readonly caption: string }) {
  const { say, sentence } = useWords()
  return (
    <Ledger
      caption={caption}
      head={[
        say('shell:plan-step'),
        say('shell:plan-step-from'),
        say('shell:plan-step-to'),
        say('shell:plan-step-where'),
      ]}
      rows={day.steps.map((step, index) => ({
        key: `${index}:${step.id}`,
        cells: [
          sentence(step.title),
          { number: clock(step.startMin) },
          { number: clock(step.endMin) },
          step.where === null
            ? ''
            : step.potLoad !== undefined
              ? say('shell:plan-pot-load-in', { number: step.potLoad, where: step.where })
              : say('shell:plan-load-in', { number: step.load ?? 0, where: step.where }),
        ],
      }))}
    />
  )
}
