/** Seed: what is put by, season by season, the latest first. The question itself is asked before a day is planned. */
import { seedLine } from '@crib/planning'
import { useBook } from '../book/book.tsx'
import { Empty, MarginNote, NextAction, Passage, Reasons, Sheet } from '../parts-of-the-sheet/index.ts'
import { weight } from '../records/corn-lots.tsx'
import { useWords } from '../words.tsx'
import { SeedWords } from './plan/seed-line.tsx'

export default function SeedScreen() {
  const { facts } = useBook()
  const { say } = useWords()
  const seed = Object.values(facts.seed).sort((a, b) => b.seasonYear - a.seasonYear)
  return (
    <Sheet title={say('shell:part-seed')} drawing="ear" lead={say('shell:seed-lead')}>
      {seed.length === 0 && (
        <Passage>
          <Empty drawing="kernel" action={<NextAction href="/plan">{say('shell:next-seed')}</NextAction>}>
            <p>{say('shell:seed-empty')}</p>
          </Empty>
        </Passage>
      )}
      {seed.map((put) => {
        const outcome = seedLine(put)
        const lotName = put.lotId === undefined ? undefined : facts.cornLots[put.lotId]?.name
        return (
          <Passage
            key={put.seedId}
            title={say('shell:seed-season', { year: String(put.seasonYear) })}
            margin={
              lotName && (
                <MarginNote>
                  {put.massKg === undefined
                    ? say('shell:seed-from', { name: lotName })
                    : say('shell:seed-from-weight', { name: lotName, weight: weight(put.massKg) })}
                </MarginNote>
              )
            }
          >
            {outcome.kind === 'put-by' ? <SeedWords line={outcome.line} /> : <Reasons sentences={outcome.why} />}
          </Passage>
        )
      })}
    </Sheet>
  )
}
