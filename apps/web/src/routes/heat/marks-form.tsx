/** The lines found in the file, to be looked over, set right and written into the run. Nothing is written unasked. */
import type { RunFact } from '@crib/journal'
import { alreadyWritten, dayOfInstant, instantOnDay, type ProposedMark } from '@crib/planning'
import { formatClock } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import {
  ButtonRow,
  ClockField,
  clockMinutes,
  FieldError,
  FlagTag,
  NextAction,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { clockAt } from '../../walk/clock-at.ts'
import { useWords } from '../../words.tsx'
import { eventWords, runNow } from '../canner/run-of.ts'

interface LineAnswer {
  readonly wanted: boolean
  /** HH:MM as typed; empty while the file's own moment stands. */
  readonly clock: string
}

export function MarksForm({
  marks,
  run,
  zone,
  msOf,
}: {
  readonly marks: readonly ProposedMark[]
  readonly run: RunFact | undefined
  readonly zone: string
  readonly msOf: (atMin: number) => number
}) {
  const words = useWords()
  const { say, sentence } = words
  const { write } = useBook()
  const [answers, setAnswers] = useState<Readonly<Record<number, LineAnswer>>>({})
  const [state, setState] = useState<'asking' | 'writing' | 'written'>('asking')
  const [fault, setFault] = useState<string | null>(null)
  if (marks.length === 0) return <p>{say('heat:lines-none')}</p>
  const lines = marks.map((mark, index) => {
    const atMs = msOf(mark.atMin)
    const before = run ? alreadyWritten(mark, atMs, run.events) : null
    const answer = answers[index] ?? { wanted: before === null, clock: '' }
    const typedMin = answer.clock === '' ? null : clockMinutes(answer.clock)
    return {
      mark,
      index,
      before,
      answer,
      setMs: typedMin === null ? atMs : instantOnDay(dayOfInstant(atMs, zone), typedMin, zone),
    }
  })
  const clock = (ms: number) => formatClock(clockAt(ms, zone))
  const held = run ? runNow(run, Date.now()) : null
  const nameOf = (mark: ProposedMark) =>
    held ? eventWords(mark.event, held, words) : sentence({ key: `heat:mark-name-${mark.event.type}` })
  const keep = async () => {
    if (!run) return
    const wanted = lines.filter(({ answer }) => answer.wanted)
    if (wanted.length === 0) return setFault(say('heat:lines-none-wanted'))
    setFault(null)
    setState('writing')
    try {
      for (const { mark, setMs } of wanted.toSorted((a, b) => a.setMs - b.setMs)) {
        await write('run-event', { runId: run.runId, event: mark.event }, { happenedAt: { instant: setMs, zone } })
      }
      setState('written')
    } catch (error) {
      setFault(error instanceof Error ? error.message : String(error))
      setState('asking')
    }
  }
  if (state === 'written' && run) {
    return (
      <>
        <p role="status">{say('heat:lines-written')}</p>
        <NextAction href={`/paper/process-log/${run.runId}`}>{say('heat:to-process-log')}</NextAction>
        <ButtonRow>
          <SideAction href={`/paper/load-heat/${run.runId}`}>
            {say('heat:paper-run-title', { code: run.begun.loadCode })}
          </SideAction>
          <SideAction href={`/canner/run/${run.runId}`}>{say('heat:to-run')}</SideAction>
        </ButtonRow>
      </>
    )
  }
  return (
    <>
      <p>{say(run ? 'heat:lines-lead' : 'heat:lines-look')}</p>
      {lines.map(({ mark, index, before, answer, setMs }) => (
        <div key={`${mark.event.type}-${mark.atMin}`} className="mark-line">
          {run ? (
            <FlagTag
              label={say('heat:line', { clock: clock(setMs), name: nameOf(mark) })}
              value={answer.wanted}
              onValue={(wanted) => setAnswers({ ...answers, [index]: { ...answer, wanted } })}
            />
          ) : (
            <p>{say('heat:line', { clock: clock(setMs), name: nameOf(mark) })}</p>
          )}
          <p className="field-hint">{sentence(mark.why)}</p>
          {before && <p>{say('heat:line-before', { clock: clock(Date.parse(before.instant)) })}</p>}
          {run && answer.wanted && (
            <ClockField
              label={say('heat:line-time')}
              value={answer.clock || clock(setMs)}
              onValue={(typed) => setAnswers({ ...answers, [index]: { ...answer, clock: typed } })}
            />
          )}
        </div>
      ))}
      {fault && (
        <p role="alert">
          <FieldError>{fault}</FieldError>
        </p>
      )}
      {run && (
        <NextAction disabled={state === 'writing'} onClick={() => void keep()}>
          {say('heat:lines-keep')}
        </NextAction>
      )}
    </>
  )
}
