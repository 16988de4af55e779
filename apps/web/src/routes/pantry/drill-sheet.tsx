/** A drill: one load is picked, the people look for its jars, and the book times them and says what was missed. */
import { type DrillOutcome, drillOf, drillOutcome, findableCount, recallDrill } from '@crib/planning'
import { useMemo } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  ButtonRow,
  Empty,
  FlagTag,
  NextAction,
  NumberRow,
  Passage,
  Sheet,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useNow } from '../../walk/use-now.ts'
import { useWords } from '../../words.tsx'

/** Kept on this device: a drill goes on through a reload. */
interface Held {
  readonly loadCode: string
  readonly beganAtMs: number
  readonly endedAtMs: number | null
  readonly foundLotIds: readonly string[]
}

export function DrillSheet() {
  const { facts, newId } = useBook()
  const { say, sentence } = useWords()
  const record = useRecord()
  const [held, setHeld, forget] = useHalfTyped<Held | null>('drill', null)
  const loadCode = held?.loadCode
  const drill = useMemo(() => (loadCode === undefined ? null : drillOf(facts, loadCode)), [facts, loadCode])
  const begin = () => {
    const picked = recallDrill(facts, Math.random())
    if (picked) setHeld({ loadCode: picked.loadCode, beganAtMs: Date.now(), endedAtMs: null, foundLotIds: [] })
  }
  const hasFood = Object.keys(facts.foodLots).length > 0
  if (!held || !drill) {
    return (
      <Sheet title={say('pantry:drill-title')} drawing="clock" lead={say('pantry:drill-lead')}>
        <Passage>
          {hasFood ? (
            <NextAction onClick={begin}>{say('pantry:drill-begin')}</NextAction>
          ) : (
            <Empty drawing="flag" action={<NextAction href="/pantry">{say('pantry:back')}</NextAction>}>
              <p>{say('pantry:recall-no-food')}</p>
            </Empty>
          )}
          <Asked record={record} />
        </Passage>
      </Sheet>
    )
  }
  const { beganAtMs, endedAtMs, foundLotIds } = held
  const outcome =
    endedAtMs === null
      ? null
      : drillOutcome({ drill, foundLotIds, beganAtMs, endedAtMs: Math.max(beganAtMs, endedAtMs) })
  const keep = async () => {
    if (!outcome) return
    const kept = await record.keep('recall-noted', {
      recallId: newId(),
      drill: true,
      by: 'load',
      about: held.loadCode,
      loadCodes: drill.answer.loadCodes,
      jarsCount: outcome.values[1]!.value + outcome.values[2]!.value,
      tookMin: outcome.values[0]!.value,
    })
    if (kept) forget()
  }
  return (
    <Sheet title={say('pantry:drill-title')} drawing="clock" lead={sentence(drill.task)}>
      {endedAtMs === null ? (
        <Passage>
          <Running beganAtMs={beganAtMs} />
          <NextAction onClick={() => setHeld({ ...held, endedAtMs: Date.now() })}>
            {say('pantry:drill-done')}
          </NextAction>
          <ButtonRow>
            <SideAction onClick={forget}>{say('pantry:drill-call-off')}</SideAction>
          </ButtonRow>
        </Passage>
      ) : (
        <Passage title={say('pantry:drill-tick')}>
          <div className="tags">
            {drill.answer.lots.map((lot) =>
              lot.lotId === null ? null : (
                <FlagTag
                  key={lot.lotId}
                  label={[
                    lot.loadCode,
                    lot.household,
                    lot.place,
                    say('pantry:drill-jars', {
                      count: findableCount(lot),
                    }),
                  ]
                    .filter(Boolean)
                    .join(', ')}
                  value={foundLotIds.includes(lot.lotId)}
                  onValue={(isFound) =>
                    setHeld({
                      ...held,
                      foundLotIds: isFound
                        ? [...foundLotIds, lot.lotId!]
                        : foundLotIds.filter((each) => each !== lot.lotId),
                    })
                  }
                />
              ),
            )}
          </div>
          {outcome && <Outcome outcome={outcome} />}
          <NextAction onClick={keep}>{say('pantry:drill-keep')}</NextAction>
          <Asked record={record} onKept={forget} />
        </Passage>
      )}
    </Sheet>
  )
}

function Outcome({ outcome }: { readonly outcome: DrillOutcome }) {
  const { say, sentence } = useWords()
  const [took, found, missed] = outcome.values
  return (
    <div aria-live="polite" className="passage-body">
      <NumberRow>
        <BigNumber label={say('pantry:drill-took')} reckoned={took!} bare />
        <BigNumber label={say('pantry:drill-found')} reckoned={found!} size="small" bare />
        <BigNumber label={say('pantry:drill-missed')} reckoned={missed!} size="small" bare />
      </NumberRow>
      <p>{sentence(outcome.say)}</p>
    </div>
  )
}

/** How long the people have been looking, in whole minutes: nobody is hurried by running seconds. */
function Running({ beganAtMs }: { readonly beganAtMs: number }) {
  const { say } = useWords()
  const minutes = Math.max(0, Math.floor((useNow() - beganAtMs) / 60_000))
  return <p>{say('pantry:drill-running', { count: minutes })}</p>
}
