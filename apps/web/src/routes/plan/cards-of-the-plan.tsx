/** Each canner's number to hold, small, with the way to its whole card. Props: plan, date. */
import type { CannerFact } from '@crib/journal'
import { type BatchPlan, cardOfCanner } from '@crib/planning'
import { useBook } from '../../book/book.tsx'
import { BigNumber, MarginNote, Passage, Reasons, Refusal, SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export function CardsOfThePlan({ plan, date }: { readonly plan: BatchPlan; readonly date: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const names = new Set(plan.input.canners.map(({ name }) => name))
  const canners = Object.values(facts.canners).filter(({ name }) => names.has(name))
  return (
    <Passage title={say('shell:plan-cards')} margin={<MarginNote>{say('shell:plan-cards-margin')}</MarginNote>}>
      {canners.length === 0 && (
        <>
          <p>{say('shell:plan-no-canner')}</p>
          <SideAction href="/canner">{say('shell:plan-to-canners')}</SideAction>
        </>
      )}
      {facts.kitchen?.elevationM === undefined ? (
        <>
          <p>{say('kettle:elevation-needed')}</p>
          <SideAction href="/house">{say('shell:plan-to-house')}</SideAction>
        </>
      ) : (
        canners.map((canner) => <SmallCard key={canner.cannerId} canner={canner} plan={plan} date={date} />)
      )}
    </Passage>
  )
}

function SmallCard({
  canner,
  plan,
  date,
}: {
  readonly canner: CannerFact
  readonly plan: BatchPlan
  readonly date: string
}) {
  const { facts } = useBook()
  const { say } = useWords()
  const card = cardOfCanner(canner, facts.kitchen, {
    today: date,
    jarSize: plan.jars?.jarSize ?? 'quart',
    alkali: plan.input.alkali,
    isHotPack: plan.kettle.stages.at(-1)?.isHotPack === true,
    isStandingRead: plan.input.isStandingRead,
  })
  if (!card) return null
  if (card.kind === 'refused') {
    return <Refusal title={canner.name} why={[...card.why, ...card.forInformation]} askWhom={card.askWhom} />
  }
  const [first, ...others] = card.routes
  return (
    <section className="small-card" aria-label={canner.name}>
      <h3>{canner.name}</h3>
      {first?.holdAt ? (
        <BigNumber label={say(`shell:card-hold-${first.gauge}`)} reckoned={first.holdAt} />
      ) : (
        <Reasons sentences={[...card.reasons, ...(first?.reasons ?? [])]} />
      )}
      {first?.holdAt && <Reasons sentences={first.reasons.slice(0, 2)} />}
      {others.some(({ usable }) => !usable) && (
        <Reasons sentences={others.filter(({ usable }) => !usable).flatMap(({ reasons }) => reasons.slice(0, 1))} />
      )}
      <SideAction href={`/canner/card/${canner.cannerId}`}>{say('shell:plan-whole-card')}</SideAction>
    </section>
  )
}
