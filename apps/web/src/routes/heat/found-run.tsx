/** What the file says of the run: temperatures measured and modelled, dips, and the lines for the log. */
import type { RunFact } from '@crib/journal'
import { heatingTrial, instantOfReading, type LoggerTrace, type Replay, replayRun } from '@crib/planning'
import { formatClock } from '@crib/wording'
import { useEffect, useMemo } from 'react'
import { ButtonRow, Passage, Reasons, Refusal, SideAction } from '../../parts-of-the-sheet/index.ts'
import { clockAt } from '../../walk/clock-at.ts'
import { useWords } from '../../words.tsx'
import { toHash } from '../workbench/link.ts'
import { clockOfAnswers, type FileAnswers } from './file-answers.ts'
import { keepLogged } from './logged-runs.ts'
import { MarksForm } from './marks-form.tsx'
import { ReplayFigure } from './replay-figure.tsx'

export function FoundRun({
  traces,
  answers,
  run,
  requiredPsi,
  elevationM,
  jar,
  fillC,
}: {
  readonly traces: readonly LoggerTrace[]
  readonly answers: FileAnswers
  readonly run: RunFact | undefined
  readonly requiredPsi: number
  readonly elevationM: number
  readonly jar: 'pint' | 'quart'
  readonly fillC: number
}) {
  const { say } = useWords()
  const replay = useMemo<Replay>(
    () => replayRun({ traces, requiredPsi, elevationM, jar, foodC: fillC }),
    [traces, requiredPsi, elevationM, jar, fillC],
  )
  const clock = clockOfAnswers(answers)
  useEffect(() => {
    if (run) keepLogged(run.runId, traces, clockOfAnswers(answers))
  }, [run, traces, answers])
  const msOf = (atMin: number) => instantOfReading(atMin, clock)
  if (!replay.ok) {
    return (
      <Passage>
        <Refusal title={say('heat:found-none')} why={[replay.why]} />
      </Passage>
    )
  }
  const { dips, beside, unseen, assumed } = replay
  const trial = heatingTrial(traces, replay.marks)
  return (
    <>
      <Passage title={say('heat:found-title')} id="found">
        <ReplayFigure traces={traces} replay={replay} msOf={msOf} zone={answers.zone} />
        <Reasons sentences={assumed} title={say('heat:found-assumed')} />
        {dips.length > 0 && (
          <>
            <Reasons
              title={say('heat:found-dips')}
              sentences={[
                ...dips.map(({ fromMin, toMin, lowestPsi }) => ({
                  key: toMin === null ? 'heat:found-dip-open' : 'heat:found-dip',
                  params: {
                    from: formatClock(clockAt(msOf(fromMin), answers.zone)),
                    to: toMin === null ? '' : formatClock(clockAt(msOf(toMin), answers.zone)),
                    lowest: { value: Number(lowestPsi.toFixed(1)), unit: 'PsiGauge' as const },
                  },
                })),
                { key: 'guidance:restart-rule' },
              ]}
            />
            {beside && (
              <p>
                {say('heat:found-beside', {
                  loose: percent(beside.freeBrineFraction),
                  solid: percent(beside.packedSolidFraction),
                })}
              </p>
            )}
          </>
        )}
        {trial && (
          <ButtonRow>
            <SideAction href={`/workbench/heating-fit${toHash({ ...trial })}`}>{say('heat:found-fit')}</SideAction>
          </ButtonRow>
        )}
        <p>{say('heat:no-total')}</p>
        <p>{say('heat:does-not-change-directions')}</p>
      </Passage>
      <Passage title={say('heat:lines-title')} id="lines">
        <Reasons sentences={unseen} />
        <MarksForm marks={replay.marks} run={run} zone={answers.zone} msOf={msOf} />
      </Passage>
    </>
  )
}

const percent = (share: number) => ({ value: Number(share.toFixed(2)), unit: 'Fraction' }) as const
