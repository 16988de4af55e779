/**
 * The year: the corn as a mass balance, what the book asks, and the one next thing to do.
 * Says only what shell, common and errors hold: the first screen waits for no other words.
 */

import type { Facts, RunFact } from '@crib/journal'
import { type BalanceOfYear, balanceOfYear, becameInYear, yearsOf } from '@crib/planning/year'
import type { MessageKey } from '@crib/wording'
import { formatWeight } from '@crib/wording'
import { lazy, Suspense, useState } from 'react'
import { useBook } from '../book/book.tsx'
import {
  ButtonRow,
  ChoiceTags,
  Empty,
  Figure,
  Ledger,
  MarginNote,
  NextAction,
  Passage,
  Reasons,
  Sheet,
  SideAction,
} from '../parts-of-the-sheet/index.ts'
import { usePreferences } from '../preferences.tsx'
import { askedSentence } from '../records/asked-sentence.ts'
import { useWords } from '../words.tsx'
import { Braid } from '../year/braid.tsx'
import { nextThing } from '../year/next-thing.ts'

/** Fetched where something runs by the clock, so that the first screen of any other day does not wait for it. */
const OnTheClockPassage = lazy(() => import('../year/on-the-clock-passage.tsx'))

export default function HomeScreen() {
  const { facts } = useBook()
  const words = useWords()
  const { say } = words
  const years = yearsOf(facts)
  const [chosen, setChosen] = useState<number | null>(null)
  const year = chosen ?? years[0]
  const next = nextThing(facts, Date.now())
  const handle = <NextAction href={next.href}>{say(next.say)}</NextAction>
  const clock = hasClock(facts) && (
    <Suspense>
      <OnTheClockPassage />
    </Suspense>
  )

  if (year === undefined) {
    return (
      <Sheet title={say('shell:part-season')} drawing="year">
        {clock}
        <Passage>
          <Empty drawing="braid" action={handle}>
            <p>{say(next.why)}</p>
          </Empty>
        </Passage>
      </Sheet>
    )
  }
  const balance = balanceOfYear(facts, year)
  return (
    <Sheet title={say('shell:part-season')} drawing="year" lead={say('shell:year-lead')}>
      {clock}
      <Passage title={say('shell:next-title')}>
        <p>{say(next.why)}</p>
        {handle}
      </Passage>
      {facts.questions.length > 0 && (
        <Passage title={say('shell:questions-title')} margin={<MarginNote>{say('shell:questions-margin')}</MarginNote>}>
          <Reasons sentences={facts.questions.map((asked) => askedSentence(asked, words))} />
          <ButtonRow>
            {facts.questions
              .flatMap(({ entities }) => runsAsked(facts, entities))
              .map(({ runId, begun }) => (
                <SideAction key={runId} href={`/canner/run/${runId}`}>
                  {say('shell:questions-run', { name: begun.loadCode })}
                </SideAction>
              ))}
          </ButtonRow>
        </Passage>
      )}
      <Passage
        title={say('shell:braid-title', { year: String(year) })}
        margin={<MarginNote>{say('shell:braid-margin')}</MarginNote>}
      >
        {years.length > 1 && (
          <ChoiceTags
            legend={say('shell:braid-year')}
            options={years.map((value) => ({ value: String(value), label: String(value) }))}
            value={String(year)}
            onValue={(value) => setChosen(Number(value))}
          />
        )}
        {balance.broughtInKg > 0 && (
          <Figure title={say('shell:braid-caption')} table={<BalanceTable balance={balance} />}>
            <Braid balance={balance} />
          </Figure>
        )}
        <Reasons
          title={say('shell:became-title')}
          sentences={becameInYear(facts, year).map(({ form, count }) => ({
            key: `shell:became-${form}` satisfies MessageKey,
            params: { count },
          }))}
        />
        {balance.unweighed.map((lot) => (
          <p key={lot.lotId}>{say('shell:braid-unweighed', { name: lot.name, typed: lot.asTyped })}</p>
        ))}
        {balance.overdrawnKg > 0 && (
          <p>{say('shell:braid-overdrawn', { weight: formatWeight(balance.overdrawnKg) })}</p>
        )}
      </Passage>
    </Sheet>
  )
}

function hasClock({ coolings, dryings }: Facts): boolean {
  return [...Object.values(coolings), ...Object.values(dryings)].some(({ ended }) => ended === null)
}

/** The canner loads a question is about: it is answered on their sheets. */
function runsAsked(facts: Facts, entities: readonly string[]): RunFact[] {
  return Object.values(facts.runs).filter(({ runId }) => entities.includes(`run:${runId}`))
}

function BalanceTable({ balance }: { readonly balance: BalanceOfYear }) {
  const { say } = useWords()
  const { measureFirst } = usePreferences()
  return (
    <Ledger
      head={[say('shell:strand'), say('shell:strand-weight')]}
      rows={[
        {
          key: 'all',
          cells: [say('shell:strand-brought-in'), { number: formatWeight(balance.broughtInKg, measureFirst) }],
        },
        ...balance.strands.map(({ id, name, massKg }) => ({
          key: id,
          cells: [say(name), { number: formatWeight(massKg, measureFirst) }],
        })),
      ]}
    />
  )
}
