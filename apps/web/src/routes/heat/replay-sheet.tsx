/** Replay: a logger's file told as a run. What each column is, what was found, the lines for the log, the temperatures. */
import type { RunFact } from '@crib/journal'
import { madeUpLikeRun, madeUpRun, practiceLog } from '@crib/planning'
import { convert } from '@crib/science'
import { useMemo, useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import {
  ButtonRow,
  Caution,
  ChoiceTags,
  FieldError,
  NextAction,
  Passage,
  QuantityField,
  Sheet,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { ColumnsForm } from './columns-form.tsx'
import { emptyAnswers, type FileAnswers, headOf, type LoggerHead, settledAnswers } from './file-answers.ts'
import { FileReport } from './file-report.tsx'
import { FoundRun } from './found-run.tsx'
import { useLogger } from './use-logger.ts'

export default function ReplaySheet({ runId }: { readonly runId?: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const run = runId === undefined ? undefined : facts.runs[runId]
  return (
    <Sheet
      title={say('heat:replay-title')}
      drawing="canner"
      lead={run ? say('heat:replay-for', { code: run.begun.loadCode }) : say('heat:replay-lead')}
    >
      <Passage>
        <Caution>{say('heat:replay-caution')}</Caution>
        {!run && <WhichRun />}
      </Passage>
      <File name={runId ?? 'no-run'} run={run} />
    </Sheet>
  )
}

/** A log belongs to a run; without one it is looked at and nothing is written. */
function WhichRun() {
  const { facts } = useBook()
  const { say } = useWords()
  const runs = Object.values(facts.runs).slice(-6).reverse()
  return (
    <>
      <p>{say(runs.length > 0 ? 'heat:replay-which' : 'heat:replay-no-run')}</p>
      <ButtonRow>
        {runs.map(({ runId, begun }) => (
          <SideAction key={runId} href={`/heat/replay/${runId}`}>
            {begun.loadCode}
          </SideAction>
        ))}
        <SideAction href="/canner/run">{say('canner:run-screen-begin')}</SideAction>
      </ButtonRow>
    </>
  )
}

function File({ name, run }: { readonly name: string; readonly run: RunFact | undefined }) {
  const { facts } = useBook()
  const { say, sentence } = useWords()
  const [file, setFile] = useState<{ readonly blob: Blob; readonly name: string; readonly head: LoggerHead } | null>(
    null,
  )
  const [fault, setFault] = useState<string | null>(null)
  const [isOver, setOver] = useState(false)
  const [answers, setAnswers] = useHalfTyped<FileAnswers | null>(`replay:${name}`, null)
  const like = useMemo(() => (run ? madeUpLikeRun(facts, run) : madeUpRun(facts)), [facts, run])
  const [held, setHeld] = useHeld(name, run, like.gaugeKPa)
  const { work, read, stop } = useLogger()

  const take = async (blob: Blob, fileName: string) => {
    stop()
    const head = await headOf(blob)
    if (head === null) {
      setFile(null)
      return setFault(say('heat:file-no-head', { name: fileName }))
    }
    setFault(null)
    setFile({ blob, name: fileName, head })
    // What was said of a file with the same columns still holds.
    if (answers?.head !== head.line) setAnswers(emptyAnswers(head, run?.begun.at))
  }
  const practice = () => {
    const { elevationM, jar, holdMin } = like
    return practiceLog({ elevationM, jar, requiredPsi: held.psi ?? 12, processMin: run ? holdMin : 60 })
  }
  const settled = file && answers ? settledAnswers(answers) : null
  return (
    <>
      <Passage title={say('heat:file-title')}>
        {/* biome-ignore lint/a11y/noStaticElementInteractions: a second way in; the field inside is the first */}
        <div
          className="drop-here"
          data-over={isOver}
          onDragOver={(event) => {
            event.preventDefault()
            setOver(true)
          }}
          onDragLeave={() => setOver(false)}
          onDrop={(event) => {
            event.preventDefault()
            setOver(false)
            const dropped = event.dataTransfer.files[0]
            if (dropped) void take(dropped, dropped.name)
          }}
        >
          <label htmlFor="logger-file">{say('heat:file-drop')}</label>
          <input
            id="logger-file"
            type="file"
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            onChange={(event) => {
              const chosen = event.target.files?.[0]
              if (chosen) void take(chosen, chosen.name)
            }}
          />
        </div>
        <p className="field-hint">{say('heat:file-stays')}</p>
        <ButtonRow>
          <SideAction onClick={() => void take(new Blob([practice()]), say('heat:file-practice-name'))}>
            {say('heat:file-practice')}
          </SideAction>
        </ButtonRow>
        {fault && (
          <p role="alert">
            <FieldError>{fault}</FieldError>
          </p>
        )}
      </Passage>
      {file && answers && (
        <Passage title={say('heat:columns-title')}>
          <p>{say('heat:columns-lead', { name: file.name })}</p>
          <ColumnsForm head={file.head} answers={answers} onAnswers={setAnswers} />
          {!run && <HeldField held={held} onHeld={setHeld} />}
          {settled?.missing.map((still) => (
            <p key={still.key + JSON.stringify(still.params)} className="field-hint">
              {sentence(still)}
            </p>
          ))}
          <NextAction
            disabled={settled?.task === null || work.state === 'reading'}
            onClick={() => settled?.task && read({ file: file.blob, ...settled.task })}
          >
            {say('heat:file-read')}
          </NextAction>
          {work.state === 'reading' && (
            <div className="heat-working" role="status">
              <label>
                {say('heat:file-reading')}
                <progress value={work.shareFraction} max={1} />
              </label>
              <SideAction onClick={stop}>{say('heat:band-stop')}</SideAction>
            </div>
          )}
          {work.state === 'failed' && (
            <p role="alert">
              <FieldError>{say('heat:file-failed', { why: work.message })}</FieldError>
            </p>
          )}
        </Passage>
      )}
      {file && work.state === 'read' && <FileReport outcome={work.traced.outcome} />}
      {file && answers && work.state === 'read' && work.traced.outcome.ok && held.psi !== null && (
        <FoundRun
          traces={work.traced.traces}
          answers={answers}
          run={run}
          requiredPsi={held.psi}
          elevationM={like.elevationM}
          jar={run ? like.jar : held.jar}
          fillC={like.fillC}
        />
      )}
    </>
  )
}

interface Held {
  readonly typed: string
  readonly psi: number | null
  readonly jar: 'pint' | 'quart'
}

/** What had to be held: the run's own number, or what the keeper says. */
function useHeld(name: string, run: RunFact | undefined, tableKPa: number): readonly [Held, (held: Held) => void] {
  const psi = Number(convert(tableKPa, 'KPaGauge', 'PsiGauge').toFixed(2))
  const [typed, setTyped] = useHalfTyped<Held>(`replay-held:${name}`, { typed: `${psi} psi`, psi, jar: 'pint' })
  return [run ? { ...typed, psi: run.begun.requiredReadingPsi } : typed, setTyped]
}

function HeldField({ held, onHeld }: { readonly held: Held; readonly onHeld: (held: Held) => void }) {
  const { say } = useWords()
  return (
    <>
      <QuantityField
        label={say('heat:held')}
        measures="pressure"
        text={held.typed}
        bareNumberUnit="PsiGauge"
        limits={{ min: 1, max: 28, unit: 'PsiGauge', source: say('heat:project-rule') }}
        onText={(typed) => onHeld({ ...held, typed })}
        onQuantity={(quantity) => {
          const psi = quantity === null ? null : convert(quantity.value, quantity.unit, 'PsiGauge')
          if (psi !== held.psi) onHeld({ ...held, psi })
        }}
        required
      />
      <ChoiceTags
        legend={say('heat:slide-jar')}
        options={[
          { value: 'pint', label: say('canner:run-screen-pint') },
          { value: 'quart', label: say('canner:run-screen-quart') },
        ]}
        value={held.jar}
        onValue={(jar) => onHeld({ ...held, jar })}
      />
    </>
  )
}
