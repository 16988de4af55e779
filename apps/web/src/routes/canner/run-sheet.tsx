/** One run of one canner: what is due as a clock time, what to do next, what happened, and what follows from it. */
import { cautionsFor, type Moment } from '@crib/guidance'
import type { RunFact } from '@crib/journal'
import { dayOfInstant, type RunPhase } from '@crib/planning'
import type { Sentence } from '@crib/science'
import { formatReckoned } from '@crib/wording'
import { useMemo } from 'react'
import { useBook } from '../../book/book.tsx'
import {
  BigNumber,
  ButtonRow,
  Caution,
  Empty,
  FlagTag,
  Fold,
  Passage,
  Reasons,
  Sheet,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { useTaps } from '../../walk/taps.tsx'
import { useNow } from '../../walk/use-now.ts'
import { Say, useWords } from '../../words.tsx'
import '../../walk/walk.css'
import { ClockAsked } from './clock-asked.tsx'
import { type Due, useDueCall } from './due-call.ts'
import { HeatOffAsked } from './heat-off-asked.tsx'
import { LidChecks, Loading } from './loading.tsx'
import { OnTheFire } from './on-the-fire.tsx'
import { RunLog } from './run-log.tsx'
import { dueOf, type RunNow, runNow } from './run-of.ts'
import { RunTaps } from './run-taps.tsx'
import { PutUp, SealsForm } from './seals.tsx'
import { TraceFigure } from './trace-figure.tsx'
import { type TypedLine, TypedLog } from './typed-log.tsx'
import { useWakeLock } from './wake-lock.ts'

export default function RunScreen({ runId }: { readonly runId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const run = facts.runs[runId]
  if (!run) {
    return (
      <Sheet title={say('canner:run-screen-begin-title')} drawing="canner">
        <Passage>
          <Empty drawing="canner">
            <p>{say('canner:run-screen-not-in-book')}</p>
          </Empty>
        </Passage>
      </Sheet>
    )
  }
  return <RunSheet key={runId} run={run} />
}

/** The cautions of the moment the hand is about to act in. */
const MOMENT: Partial<Record<RunPhase, Moment>> = {
  'before-load': 'pack',
  loaded: 'load',
  venting: 'vent',
  'come-up': 'pressure',
  cooling: 'cool',
  'time-up': 'cool',
  'lid-free': 'lid',
  unloading: 'lid',
  resting: 'seals',
  'seal-look': 'seals',
  'seals-seen': 'store',
}

const BEFORE_FIRE: ReadonlySet<RunPhase> = new Set(['before-load', 'loaded'])
const UNDER_WATCH: ReadonlySet<RunPhase> = new Set(['heating', 'venting', 'come-up', 'holding', 'dipped', 'time-up'])

function RunSheet({ run }: { readonly run: RunFact }) {
  const { say } = useWords()
  const nowMs = useNow()
  const at = runNow(run, nowMs)
  const taps = useTaps(at.zone)
  const { state } = at
  const { begun } = run
  const { phase } = state
  const isAwake = useWakeLock(UNDER_WATCH.has(phase))
  const dues = useDues(at)
  const call = useDueCall(dues, nowMs)
  const moment = MOMENT[phase]
  const isSealTime = phase === 'resting' || phase === 'seal-look'
  return (
    <Sheet
      title={begun.cannerName}
      drawing="canner"
      lead={say('canner:run-screen-lead', {
        code: begun.loadCode,
        count: begun.jarCount,
        size: say(`canner:run-screen-${begun.jarSize}`).toLowerCase(),
      })}
    >
      <Passage>
        <ClockAsked at={at} taps={taps} />
        <FarNumber at={at} />
        {phase !== 'dipped' && <Care moment={moment} />}
        <p className="next-words" role="status">
          <Say sentence={state.next} />
        </p>
        {phase === 'before-load' ? (
          <Loading at={at} taps={taps} />
        ) : (
          <RunTaps at={at} taps={taps}>
            {phase === 'loaded' && <LidChecks />}
          </RunTaps>
        )}
        <Reasons sentences={state.whatNow} title={say('canner:run-screen-now-what')} />
      </Passage>
      {isSealTime && <SealsForm at={at} taps={taps} />}
      {(isSealTime || phase === 'seals-seen') && (phase === 'seals-seen' || state.outcome !== 'time-ran') && (
        <PutUp at={at} />
      )}
      <HeatOffAsked at={at} />
      {state.questions.length > 0 && (
        <Passage title={say('canner:run-screen-asks-title')}>
          <Reasons sentences={state.questions} />
        </Passage>
      )}
      <Stands at={at} />
      {!BEFORE_FIRE.has(phase) && (
        <Passage>
          <TraceFigure at={at} />
        </Passage>
      )}
      <Passage title={say('canner:run-screen-log-title')}>
        <RunLog at={at} />
        <Fold title={say('canner:run-screen-typed-fold')}>
          <TypeMore at={at} />
        </Fold>
        <ButtonRow>
          <SideAction href={`/heat/replay/${run.runId}`}>{say('heat:to-replay')}</SideAction>
          <SideAction href={`/heat/run/${run.runId}`}>{say('heat:title')}</SideAction>
          {phase === 'seals-seen' && (
            <SideAction href={`/paper/process-log/${run.runId}`}>{say('heat:to-process-log')}</SideAction>
          )}
        </ButtonRow>
      </Passage>
      <OnTheFire title={say('canner:run-screen-also')} except={run.runId} />
      {UNDER_WATCH.has(phase) && (
        <Passage title={say('canner:run-screen-more-title')}>
          <FlagTag label={say('canner:run-screen-call')} value={call.wanted} onValue={call.want} />
          <p className="field-hint">{say('canner:run-screen-call-note')}</p>
          <p className="field-hint">{say(isAwake ? 'canner:run-screen-awake' : 'canner:run-screen-may-sleep')}</p>
        </Passage>
      )}
    </Sheet>
  )
}

function Care({ moment }: { readonly moment: Moment | undefined }) {
  const first = moment && cautionsFor(moment)[0]
  return first ? <Caution sentence={first} /> : null
}

const FAR_NAME = {
  vent: 'canner:run-screen-vent-until',
  done: 'canner:run-screen-done-at',
  lid: 'canner:run-screen-lid-from',
  seals: 'canner:run-screen-seals-from',
} as const

/** The one number to be read across the yard: a clock time where one is due, else the number to hold. */
function FarNumber({ at }: { readonly at: RunNow }) {
  const { say } = useWords()
  const { state, number } = at
  const due = dueOf(at)
  if (due) {
    return (
      <div className="far">
        <BigNumber label={say(FAR_NAME[due.key])} reckoned={due.reckoned} size="huge" note={<DueNote at={at} />} />
      </div>
    )
  }
  if (state.phase !== 'come-up' && state.phase !== 'dipped') return null
  const countFrom = number('restarts')
  if (!countFrom) return null
  return (
    <div className="far">
      <BigNumber
        label={say(at.setup.gauge === 'dial' ? 'canner:run-screen-hold' : 'canner:run-screen-use-weight')}
        reckoned={{
          ...countFrom,
          id: 'held',
          value: at.pressure.value,
          unit: at.pressure.unit,
          rounding: { mode: 'up', step: 0.01 },
        }}
        size="huge"
        bare
      />
    </div>
  )
}

function DueNote({ at }: { readonly at: RunNow }) {
  const { say } = useWords()
  const { state, number, clock, setup } = at
  if (state.phase === 'holding' || state.phase === 'time-up') {
    const first = number('firstDue')
    const later = number('laterMin')
    return (
      <>
        {state.countFromMs !== undefined &&
          say('canner:run-screen-count-from', {
            process: { value: setup.processMin, unit: 'Min' },
            from: clock.clock(state.countFromMs),
          })}{' '}
        {first && later && later.value > 0 && (
          <span>
            {say('canner:run-screen-later', {
              first: formatReckoned(first, 'alone'),
              later: formatReckoned(later, 'alone'),
            })}
          </span>
        )}
      </>
    )
  }
  const to = number('sealsTo')
  if (
    !to ||
    !state.sealWindow ||
    (state.phase !== 'resting' && state.phase !== 'seal-look' && state.phase !== 'unloading')
  ) {
    return null
  }
  return say(state.sealWindow.assumed ? 'canner:run-screen-seals-to-assumed' : 'canner:run-screen-seals-to', {
    clock: formatReckoned(to, 'alone'),
  })
}

/** Restarts, high spells and departures in plain sentences, each departure with how it can still be put right. */
function Stands({ at }: { readonly at: RunNow }) {
  const { say } = useWords()
  const { notes, departures, sealWindow, phase } = at.state
  const lines: Sentence[] = [
    ...departures.flatMap(({ sentence, remedy }) => (remedy ? [sentence, remedy] : [sentence])),
    ...notes,
  ]
  const from = at.number('sealsFrom')
  const to = at.number('sealsTo')
  const isBeforeOut = sealWindow && (phase === 'at-zero' || phase === 'lid-wait' || phase === 'lid-free')
  if (lines.length === 0 && !isBeforeOut) return null
  return (
    <Passage title={say('canner:run-screen-stands-title')}>
      <Reasons sentences={distinct(lines)} />
      {isBeforeOut && from && to && at.state.outcome === 'time-ran' && (
        <p>
          {say('canner:run-screen-seals-from')} {formatReckoned(from, 'alone')}{' '}
          {say(sealWindow.assumed ? 'canner:run-screen-seals-to-assumed' : 'canner:run-screen-seals-to', {
            clock: formatReckoned(to, 'alone'),
          })}
        </p>
      )}
    </Passage>
  )
}

/** A remedy that two departures share is said once. */
function distinct(sentences: readonly Sentence[]): Sentence[] {
  const seen = new Set<string>()
  return sentences.filter((sentence) => {
    const text = JSON.stringify(sentence)
    return !seen.has(text) && seen.add(text)
  })
}

function useDues({ state, run }: RunNow): readonly Due[] {
  const { say } = useWords()
  const { ventDueAtMs, dueAtMs, lidOffFromMs, sealWindow, marks } = state
  const canner = run.begun.cannerName
  const ventMs = marks.ventClosedAtMs === undefined ? ventDueAtMs : undefined
  const sealsMs = sealWindow?.fromMs
  return useMemo(() => {
    const due = (id: string, atMs: number | undefined, words: string): Due[] =>
      atMs === undefined ? [] : [{ id: `${run.runId}:${id}`, atMs, words }]
    return [
      ...due('vent', ventMs, say('canner:run-screen-call-vent', { canner })),
      ...due('finish', dueAtMs, say('canner:run-screen-call-finish', { canner })),
      ...due('lid', lidOffFromMs, say('canner:run-screen-call-lid', { canner })),
      ...due('seals', sealsMs, say('canner:run-screen-call-seals', { canner })),
    ]
  }, [ventMs, dueAtMs, lidOffFromMs, sealsMs, canner, run.runId, say])
}

function TypeMore({ at }: { readonly at: RunNow }) {
  const { write } = useBook()
  const { runId, begun } = at.run
  const keep = async (lines: readonly TypedLine[]) => {
    for (const { atMs, event } of lines) {
      await write('run-event', { runId, event }, { happenedAt: { instant: atMs, zone: at.zone } })
    }
  }
  const today = dayOfInstant(Date.parse(begun.at.instant), at.zone)
  return <TypedLog name={runId} held={at} zone={at.zone} today={today} onKeep={keep} />
}
