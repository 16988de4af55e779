/**
 * DayStrip: the day hung up like a braid, time running down: one strand for the hands, one for each pot and canner.
 * Props: day, title. Solid strands want hands the whole time; a dashed edge wants a look now and then. The table says it all in words.
 */
import type { Day, DayStep } from '@crib/planning'
import { useWords } from '../../words.tsx'
import { clock } from './clock-text.ts'

/** Height of a minute on the sheet; twenty minutes are one line of small words. [rem] */
const REM_PER_MIN = 0.065
/** One line of small words. [rem] */
const LINE_REM = 1.15
/** A step shorter than this has no room for its name; the table names it. [min] */
const NAMED_FROM_MIN = 24

export function DayStrip({ day, title }: { readonly day: Day; readonly title: string }) {
  const { say } = useWords()
  const places = [...new Set(day.steps.flatMap(({ where }) => (where === null ? [] : [where])))]
  const top = (clockMin: number) => `${((clockMin - day.startMin) * REM_PER_MIN).toFixed(2)}rem`
  const hours = wholeHours(day.startMin, day.finishMin)
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a strip that scrolls must be reachable by keyboard
    <section className="day-strip" tabIndex={0} aria-label={`${title}. ${say('shell:plan-strip-label')}`}>
      <div
        className="day-strands"
        aria-hidden="true"
        style={{
          height: top(day.finishMin),
          gridTemplateColumns: `3.2rem 3.7rem repeat(${places.length}, minmax(6rem, 1fr))`,
        }}
      >
        <div className="day-hours">
          {hours.map((hour) => (
            <span key={hour} style={{ top: top(hour) }}>
              {clock(hour).replace(/ .*|,.*/, '')}
            </span>
          ))}
        </div>
        <div className="day-strand">
          <p className="day-strand-name">{say('shell:plan-strand-hands')}</p>
          {handsOf(day.steps).map(([startMin, endMin]) => (
            <i key={startMin} className="day-hands" style={{ top: top(startMin), height: span(startMin, endMin) }} />
          ))}
        </div>
        {places.map((place) => (
          <div key={place} className="day-strand">
            <p className="day-strand-name">{place}</p>
            {runsOf(day.steps.filter(({ where }) => where === place)).map((run) => (
              <Block key={run.key} run={run} top={top(run.startMin)} />
            ))}
          </div>
        ))}
        {hours.map((hour) => (
          <hr key={hour} style={{ top: top(hour) }} />
        ))}
      </div>
    </section>
  )
}

interface Run {
  readonly key: string
  readonly step: DayStep
  readonly startMin: number
  readonly endMin: number
}

function Block({ run, top }: { readonly run: Run; readonly top: string }) {
  const { sentence } = useWords()
  const { step, startMin, endMin } = run
  const tag = step.potLoad ?? step.load
  return (
    <div
      className={`day-block ${step.needsHands ? 'day-block-hands' : ''}`}
      style={{ top, height: span(startMin, endMin) }}
    >
      {endMin - startMin >= NAMED_FROM_MIN && (
        <span style={{ WebkitLineClamp: Math.max(1, Math.floor(((endMin - startMin) * REM_PER_MIN) / LINE_REM)) }}>
          {tag !== undefined && <b>{tag} </b>}
          {sentence(step.title)}
        </span>
      )}
    </div>
  )
}

function span(startMin: number, endMin: number): string {
  return `${((endMin - startMin) * REM_PER_MIN).toFixed(2)}rem`
}

function runsOf(steps: readonly DayStep[]): readonly Run[] {
  return steps.map((step, index) => ({
    key: `${index}:${step.id}`,
    step,
    startMin: step.startMin,
    endMin: step.endMin,
  }))
}

/** When anybody's hands are needed, joined where times touch. */
function handsOf(steps: readonly DayStep[]): readonly (readonly [number, number])[] {
  const spans: [number, number][] = []
  for (const { startMin, endMin, needsHands } of [...steps].sort((a, b) => a.startMin - b.startMin)) {
    if (!needsHands) continue
    const last = spans.at(-1)
    if (last && startMin <= last[1]) last[1] = Math.max(last[1], endMin)
    else spans.push([startMin, endMin])
  }
  return spans
}

function wholeHours(startMin: number, finishMin: number): readonly number[] {
  const hours: number[] = []
  for (let at = Math.ceil(startMin / 60) * 60; at <= finishMin; at += 60) hours.push(at)
  return hours
}
