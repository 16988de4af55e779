/** Seed: what is put by, season by season, before any of the corn is food; and the seed lots with their tests. */
import { seasonYearOf, seedLine, seedOfSeason } from '@crib/planning'
import { lazy } from 'react'
import { Route, Switch } from 'wouter'
import { useBook } from '../book/book.tsx'
import { localDay } from '../local-day.ts'
import {
  ButtonRow,
  Empty,
  Fold,
  MarginNote,
  NextAction,
  Passage,
  Reasons,
  Sheet,
  SideAction,
} from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'
import { GrowOutAdvice } from './seed/grow-out.tsx'
import { LotPapers } from './seed/lot-papers.tsx'
import { Reserve } from './seed/reserve.tsx'
import { SeedLotForm } from './seed/seed-lot-form.tsx'
import { SeedLots } from './seed/seed-lots.tsx'
import { StoreForm } from './seed/store-form.tsx'
import { StoreWhatIf } from './seed/store-what-if.tsx'
import { TakenForm } from './seed/taken-form.tsx'
import { SproutingTestForm } from './seed/test-form.tsx'
import { useWhichLot } from './seed/which-lot.tsx'

const OffTypesSheet = lazy(() => import('./seed/off-types-sheet.tsx'))

export default function SeedScreen() {
  return (
    <Switch>
      <Route path="/off-types/:seedLotId">{({ seedLotId }) => <OffTypesSheet seedLotId={seedLotId} />}</Route>
      <Route component={SeedSheet} />
    </Switch>
  )
}

function SeedSheet() {
  const { facts } = useBook()
  const { say } = useWords()
  const today = localDay()
  const seasonYear = seasonYearOf(facts, today)
  const choice = useWhichLot()
  const seeds = Object.values(facts.seed)
  const years = [...new Set(seeds.map((seed) => seed.seasonYear))].sort((a, b) => b - a)
  const isAnswered = seedOfSeason(facts, seasonYear).length > 0
  return (
    <Sheet title={say('shell:part-seed')} drawing="ear" lead={say('shell:seed-lead')}>
      {!isAnswered && (
        <Passage>
          <Empty drawing="ear" action={<NextAction href="/plan">{say('shell:next-seed')}</NextAction>}>
            <p>{years.length === 0 && choice.lot === null ? say('shell:seed-empty') : say('seed:ask')}</p>
          </Empty>
        </Passage>
      )}
      {years.map((year) => (
        <Passage key={year} title={say('shell:seed-season', { year: String(year) })}>
          {seeds
            .filter((seed) => seed.seasonYear === year)
            .map((seed) => {
              const outcome = seedLine(seed)
              const sentences = outcome.kind === 'put-by' ? outcome.line.sentences : outcome.why
              const lot = seed.lotId === undefined ? undefined : facts.cornLots[seed.lotId]?.name
              return (
                <div key={seed.seedId}>
                  {lot && <h3>{lot}</h3>}
                  <Reasons
                    sentences={[
                      ...sentences.filter(({ key }) => key !== 'seed:first'),
                      ...(outcome.kind === 'put-by' ? outcome.line.warnings : []),
                    ]}
                  />
                </div>
              )
            })}
        </Passage>
      ))}
      {isAnswered && (
        <Passage>
          <ButtonRow>
            <SideAction href="/plan">{say('shell:plan-title')}</SideAction>
            <SideAction href="/workbench/seed-line">{say('shell:seed-reckon')}</SideAction>
          </ButtonRow>
        </Passage>
      )}
      <Passage title={say('seed:screen-lots')} margin={<MarginNote>{say('seed:screen-lots-margin')}</MarginNote>}>
        {choice.lots.length === 0 ? <p>{say('seed:screen-no-lots')}</p> : <SeedLots today={today} />}
        <Fold title={say('seed:screen-write')}>
          <SeedLotForm today={today} />
        </Fold>
        {choice.lot && (
          <>
            <Fold title={say('seed:screen-test')}>
              <SproutingTestForm choice={choice} today={today} />
            </Fold>
            <Fold title={say('seed:screen-taken')}>
              <TakenForm choice={choice} today={today} />
            </Fold>
            <Fold title={say('seed:screen-store')}>
              <StoreForm choice={choice} today={today} />
            </Fold>
            <Fold title={say('seed:screen-reserve')}>
              <Reserve choice={choice} today={today} />
            </Fold>
            <Fold title={say('seed:screen-grow-out')}>
              <GrowOutAdvice choice={choice} today={today} />
            </Fold>
            <Fold title={say('seed:screen-what-if')}>
              <StoreWhatIf choice={choice} />
            </Fold>
            <Fold title={say('seed:screen-print')}>
              <LotPapers choice={choice} />
            </Fold>
            <ButtonRow>
              <SideAction href={`/seed/off-types/${choice.lot.seedLotId}`}>{say('seed:screen-off-types')}</SideAction>
            </ButtonRow>
          </>
        )}
      </Passage>
    </Sheet>
  )
}
