/** What may be tapped in a run now: the next thing as the handle, the likely ones beside it, the rest behind one fold. */
import type { RunEvent } from '@crib/journal'
import { type RunEventType, type RunPhase, ventAdvice } from '@crib/planning'
import { type ReactNode, useState } from 'react'
import { ButtonRow, FieldError, Fold, Reasons, SideAction, TextField } from '../../parts-of-the-sheet/index.ts'
import { Earlier, LastTap, TapButton, TapGroup, type Taps } from '../../walk/taps.tsx'
import { useWords } from '../../words.tsx'
import { eventWords, type RunNow, tapSentence } from './run-of.ts'

/** The step that moves the run on. Loading and the seals have forms of their own. */
function nextStep({ state }: RunNow): RunEventType | null {
  const { phase, marks } = state
  const isAirIn = state.departures.some(({ id }) => id === 'vent-short' || id === 'vent-unknown')
  const steps: Partial<Record<RunPhase, RunEventType>> = {
    loaded: 'lid-seated',
    heating: 'steam-steady',
    venting: 'vent-closed',
    'come-up': isAirIn ? 'vent-opened' : 'at-pressure',
    dipped:
      marks.ventClosedAtMs !== undefined ? 'regained' : marks.steamAtMs === undefined ? 'steam-steady' : 'vent-closed',
    'time-up': 'heat-off',
    cooling: 'zero',
    'at-zero': 'weight-off',
    'lid-free': 'lid-off',
    unloading: 'jars-out',
  }
  return steps[phase] ?? null
}

/** Rarer than the rest, or an end: one tap further away, so that no wet finger ends a run. */
const FURTHER: ReadonlySet<RunEventType> = new Set([
  'relief-plug-blown',
  'boiled-dry',
  'abandoned',
  'forced-cooling',
  'vent-opened',
  'heat-off',
  'weight-off',
  'lid-off',
])
const OWN_FORM: ReadonlySet<RunEventType> = new Set(['canner-loaded', 'seal-seen', 'clock-questioned'])

export function RunTaps({
  at,
  taps,
  children,
}: {
  readonly at: RunNow
  readonly taps: Taps
  readonly children?: ReactNode
}) {
  const words = useWords()
  const { say } = words
  const { state } = at
  const [asksVent, setAsksVent] = useState(false)
  const [reads, setReads] = useState(false)
  const tap = (event: RunEvent) => {
    setAsksVent(false)
    return taps.keep(eventWords(event, at, words), [['run-event', { runId: at.run.runId, event }]])
  }
  const next = nextStep(at)
  const isVentEarly = state.phase === 'venting' && state.asOfMs < (state.ventDueAtMs ?? 0)
  const open = (type: RunEventType) => {
    if (type === 'reading') return setReads(!reads)
    // A time told for earlier is nobody asking now.
    if (type === 'vent-closed' && isVentEarly && taps.clock === '') return setAsksVent(true)
    void tap({ type } as RunEvent)
  }
  const others = state.allowed.filter((type) => type !== next && !OWN_FORM.has(type))
  // With the vent still shut after a dip, steam and vent are not what comes next.
  const isFar = (type: RunEventType) =>
    FURTHER.has(type) || (next === 'regained' && (type === 'steam-steady' || type === 'vent-closed' || type === 'zero'))
  const near = others.filter((type) => !isFar(type))
  const far = others.filter(isFar)
  const button = (type: RunEventType, isNext = false) => (
    <TapButton key={type} isNext={isNext} disabled={taps.busy} onClick={() => open(type)}>
      {type === 'reading' ? say('canner:run-screen-reading-open') : words.sentence(tapSentence(type, at))}
    </TapButton>
  )
  return (
    <>
      {children}
      <TapGroup label={say('canner:run-screen-taps')}>
        {next && button(next, !isVentEarly)}
        {near.map((type) => button(type))}
      </TapGroup>
      {asksVent && isVentEarly && (
        <VentAsked at={at} onAnyway={() => void tap({ type: 'vent-closed' })} onLetRun={() => setAsksVent(false)} />
      )}
      {reads && state.allowed.includes('reading') && (
        <Reading
          onRead={async (psi) => {
            if (await tap({ type: 'reading', psi })) setReads(false)
          }}
        />
      )}
      <LastTap taps={taps} />
      <Earlier taps={taps} />
      {far.length > 0 && (
        <Fold title={say('canner:run-screen-something-else')}>
          <TapGroup>{far.map((type) => button(type))}</TapGroup>
        </Fold>
      )}
    </>
  )
}

/** Somebody wants to close the vent early: no, why not, and one tap that writes it down all the same. */
function VentAsked({
  at,
  onAnyway,
  onLetRun,
}: {
  readonly at: RunNow
  readonly onAnyway: () => void
  readonly onLetRun: () => void
}) {
  const { say } = useWords()
  const { state, setup, clock } = at
  // The moment of asking, so that the answer does not change while it is read.
  const [wantsToCloseAtMs] = useState(state.asOfMs)
  const steamAtMs = state.marks.steamAtMs ?? wantsToCloseAtMs
  const { sentences } = ventAdvice({ steamAtMs, wantsToCloseAtMs, rules: setup.rules, clock })
  return (
    <section className="refusal" role="alert" aria-label={say('canner:run-screen-vent-asked')}>
      <h3>{say('canner:run-screen-vent-asked')}</h3>
      <Reasons sentences={sentences} />
      <ButtonRow>
        <SideAction onClick={onLetRun}>{say('canner:run-screen-vent-let-run')}</SideAction>
        <SideAction onClick={onAnyway}>{say('canner:run-screen-vent-anyway')}</SideAction>
      </ButtonRow>
    </section>
  )
}

/** A figure between 0 and 30 psi, the book's own limit; null otherwise. */
export function readPsi(text: string): number | null {
  const trimmed = text.trim()
  return /^\d+(\.\d+)?$/.test(trimmed) && Number(trimmed) <= 30 ? Number(trimmed) : null
}

function Reading({ onRead }: { readonly onRead: (psi: number) => void }) {
  const { say } = useWords()
  const [text, setText] = useState('')
  const [wrong, setWrong] = useState(false)
  return (
    <form
      className="passage-body"
      noValidate
      onSubmit={(event) => {
        event.preventDefault()
        const psi = readPsi(text)
        setWrong(psi === null)
        if (psi !== null) onRead(psi)
      }}
    >
      <TextField
        label={say('canner:run-screen-needle-shows')}
        value={text}
        onValue={setText}
        error={wrong && readPsi(text) === null ? say('canner:run-screen-reading-limits') : null}
      />
      <button type="submit" className="tap">
        {say('canner:run-screen-reading-keep')}
      </button>
      {wrong && readPsi(text) === null && <FieldError>{say('canner:run-screen-reading-limits')}</FieldError>}
    </form>
  )
}
