/** Jars of the plan: the middle, the high end to set out, loads spread evenly, the published minutes and where they stand. */
import {
  type BatchPlan,
  type DayPlan,
  type JarSection,
  jarCapacity,
  jarName,
  type Moved,
  planLoads,
  sheetAmounts,
} from '@crib/planning'
import { ceilCount } from '@crib/science'
import { formatClock } from '@crib/wording'
import { useBook } from '../../book/book.tsx'
import { Fold, Ledger, MarginNote, NumberRow, Passage, Reasons } from '../../parts-of-the-sheet/index.ts'
import { upperFirst } from '../../upper-first.ts'
import { useWords } from '../../words.tsx'
import { useDraft } from './draft.tsx'
import { PlanNumber } from './plan-number.tsx'

export function JarsOfThePlan({
  plan,
  jars,
  day,
  moved,
}: {
  readonly plan: BatchPlan
  readonly jars: JarSection
  readonly day: DayPlan | null
  readonly moved: readonly Moved[]
}) {
  const { say, sentence } = useWords()
  const value = (id: string) => jars.values.find((each) => each.id === id)
  const small = ['processMin', 'ventAndProcessMin'].flatMap((id) => value(id) ?? [])
  const rounds = jars.rounds.map((round) => round.map(({ jarCount }) => jarCount).join(' + '))
  const isOneCanner = plan.input.canners.length === 1
  return (
    <Passage
      title={upperFirst(say('shell:plan-jars-title'))}
      margin={<MarginNote>{say('shell:plan-jars-margin', { jar: sentence(jarName(jars.jarSize)) })}</MarginNote>}
    >
      <Reasons sentences={jars.standing} title={say('shell:plan-standing-now')} />
      <div className="plan-amounts">
        <NumberRow>
          {sheetAmounts(plan).forJars.map((each) => (
            <PlanNumber key={each.id} reckoned={each} moved={moved} />
          ))}
        </NumberRow>
      </div>
      {rounds.length > 0 && (
        <p>
          {isOneCanner
            ? say('shell:plan-loads-spread', { spread: rounds.join(' + ') })
            : new Set(rounds).size === 1
              ? say('season:screen-rounds-alike', { count: rounds.length, spread: rounds[0] ?? '' })
              : say('season:screen-rounds', { count: rounds.length, spread: rounds.join('; ') })}
        </p>
      )}
      <LoadTable plan={plan} jars={jars} day={day} />
      <div className="plan-amounts">
        <NumberRow>
          {small.map((each) => (
            <PlanNumber key={each.id} reckoned={each} moved={moved} size="small" />
          ))}
        </NumberRow>
      </div>
      <Reasons sentences={jars.reasons} />
    </Passage>
  )
}

function LoadTable({
  plan,
  jars,
  day,
}: {
  readonly plan: BatchPlan
  readonly jars: JarSection
  readonly day: DayPlan | null
}) {
  const { facts } = useBook()
  const { say } = useWords()
  const { draft } = useDraft()
  const jarCount = ceilCount(jars.values.find(({ id }) => id === 'jars')?.value ?? 0)
  if (jarCount < 1) return null
  const loads = planLoads({
    jarCount,
    jarSize: jars.jarSize,
    canners: plan.input.canners.map((canner) => ({ name: canner.name, capacity: jarCapacity(canner, jars.jarSize) })),
    kitchenName: facts.kitchen?.name ?? '',
    day: draft.date,
  })
  if (!loads) return null
  const steps = (draft.dayCount === 2 && day?.twoDays ? day.twoDays.can : day?.day)?.steps ?? []
  const isOneCanner = plan.input.canners.length === 1
  const at = (load: number, step: string) => steps.find(({ id }) => id === `load-${load}:${step}`)
  return (
    <>
      <Ledger
        caption={say('shell:plan-loads-caption')}
        head={[
          say('shell:plan-load-code'),
          ...(isOneCanner ? [] : [say('shell:canner-name')]),
          upperFirst(say('shell:plan-load-jars')),
          say('shell:plan-load-lid-on'),
          say('shell:plan-load-out'),
        ]}
        rows={loads.rounds.flat().map((load, index) => {
          const begins = at(index + 1, 'heat')
          const ends = at(index + 1, 'unload')
          return {
            key: load.loadCode,
            cells: [
              load.loadCode,
              ...(isOneCanner ? [] : [load.cannerName]),
              { number: String(load.jarCount) },
              { number: begins ? formatClock(begins.startMin) : '' },
              { number: ends ? formatClock(ends.endMin) : '' },
            ],
          }
        })}
      />
      <Fold title={say('shell:plan-loads-notes')}>
        <Reasons sentences={loads.notes} />
      </Fold>
    </>
  )
}
