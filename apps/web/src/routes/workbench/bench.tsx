/** One calculation on the bench: its question, the form made from its inputs, and what comes out. All of it on this device. */
import { fieldLabel, type Reckoning, reckonCalc } from '@crib/catalogue'
import type { Calc, Fields } from '@crib/science'
import type { Words } from '@crib/wording'
import { useEffect, useMemo, useRef, useState } from 'react'
import {
  ButtonRow,
  FieldError,
  MarginNote,
  NextAction,
  Passage,
  Sheet,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { usePreferences } from '../../preferences.tsx'
import { useWords } from '../../words.tsx'
import { FieldsOf } from './fields-of.tsx'
import { FormContext, type FormOf, fieldId } from './form-of.tsx'
import { HandOn } from './hand-on.tsx'
import { fromHash, toHash } from './link.ts'
import { AsJson, Outcome, Sources } from './outcome.tsx'
import { isTyped, type Path, pathText, settle, type Typed, valueAt, withValueAt } from './typed.ts'

interface Opened {
  readonly inputs: Typed
  readonly from: 'example' | 'link' | 'broken-link'
}

function openedFrom(hash: string, calc: Calc): Opened {
  const linked = fromHash(hash)
  if (linked === null) return { inputs: calc.example, from: 'example' }
  if (linked === 'unreadable') return { inputs: calc.example, from: 'broken-link' }
  return { inputs: linked, from: 'link' }
}

export function Bench({ calc }: { readonly calc: Calc }) {
  const words = useWords()
  const { say } = words
  const { vagueQuart } = usePreferences()
  const [opened, setOpened] = useState(() => openedFrom(location.hash, calc))
  const [typed, setTyped] = useState<Typed>(opened.inputs)
  /** What the numbers below were reckoned from. */
  const [asked, setAsked] = useState<Typed>(opened.inputs)
  const outcome = useRef<HTMLDivElement>(null)

  useEffect(() => {
    const reopen = () => {
      if (fromHash(location.hash) === null) return
      const again = openedFrom(location.hash, calc)
      setOpened(again)
      setTyped(again.inputs)
      setAsked(again.inputs)
    }
    window.addEventListener('hashchange', reopen)
    return () => window.removeEventListener('hashchange', reopen)
  }, [calc])

  const settled = useMemo(() => settle(calc.inputs, asked, vagueQuart), [calc, asked, vagueQuart])
  const answer = useMemo(() => reckonKindly(calc, settled, words), [calc, settled, words])
  const form = useMemo<FormOf>(() => {
    const faults = answer !== null && answer.kind === 'bad-input' ? answer.faults : []
    return {
      typed,
      set: (path, value) => setTyped((now) => withTyped(now, path, value)),
      faultsAt: (path) =>
        valueAt(typed, path) === valueAt(asked, path)
          ? faults.filter(({ field }) => field === pathText(path)).map(({ text }) => text)
          : [],
    }
  }, [answer, typed, asked])

  const reckon = () => {
    const now = settle(calc.inputs, typed, vagueQuart)
    const answered = reckonKindly(calc, now, words)
    setAsked(typed)
    history.replaceState(history.state, '', toHash(now))
    const firstFault = answered?.kind === 'bad-input' ? answered.faults[0]?.field : undefined
    const field = firstFault === undefined ? null : document.getElementById(fieldId(firstFault))
    field?.closest('details')?.setAttribute('open', '')
    const goTo = field ?? outcome.current
    goTo?.focus({ preventScroll: true })
    goTo?.scrollIntoView({ block: field ? 'center' : 'start' })
  }

  const isChanged = asked !== typed
  const { first, more } = partedFields(calc.inputs, opened.inputs)
  return (
    <Sheet title={calc.title} drawing="scale" lead={calc.question}>
      <FormContext value={form}>
        <Passage
          title={say('workbench:inputs')}
          margin={
            <>
              <MarginNote>{say(opened.from === 'link' ? 'workbench:linked' : 'workbench:example')}</MarginNote>
              <MarginNote>{say('workbench:own-unit')}</MarginNote>
            </>
          }
        >
          {opened.from === 'broken-link' && <FieldError>{say('workbench:broken-link')}</FieldError>}
          <form
            className="passage-body"
            noValidate
            onSubmit={(event) => {
              event.preventDefault()
              reckon()
            }}
          >
            <FieldsOf fields={first} />
            {Object.keys(more).length > 0 && (
              <details className="fold">
                <summary>{say('workbench:more', { count: Object.keys(more).length })}</summary>
                <div className="fold-body">
                  <FieldsOf fields={more} />
                </div>
              </details>
            )}
            <NextAction>{say('workbench:reckon')}</NextAction>
          </form>
        </Passage>
        <div ref={outcome} tabIndex={-1} id="outcome" className="bench-outcome">
          <Passage title={say('workbench:values')}>
            {isChanged && <p role="status">{say('workbench:changed')}</p>}
            {answer ? <Outcome reckoning={answer} /> : <p role="alert">{say('workbench:trouble')}</p>}
          </Passage>
        </div>
      </FormContext>
      <Passage title={say('workbench:sources')}>
        <Sources reckoning={answer} cited={calc.sourceKeys} />
      </Passage>
      <Passage title={say('workbench:hand-on')}>
        <HandOn hash={toHash(settled)} />
        {answer && <AsJson reckoning={answer} />}
        <ButtonRow>
          <SideAction href="/workbench">{say('workbench:back')}</SideAction>
        </ButtonRow>
      </Passage>
    </Sheet>
  )
}

/** Null when the calculation itself broke: the form must stay, with everything in it. */
function reckonKindly(calc: Calc, inputs: Typed, words: Words): Reckoning | null {
  try {
    return reckonCalc(calc, inputs, words, (path) => fieldLabel(calc.inputs, path, words))
  } catch (error) {
    console.error(error)
    return null
  }
}

function withTyped(typed: Typed, path: Path, value: Parameters<typeof withValueAt>[2]): Typed {
  const next = withValueAt(typed as never, path, value)
  return isTyped(next) ? next : typed
}

/** What must be said, and what was said, stands open; the rest is one tap away. */
function partedFields(fields: Fields, given: Typed): { readonly first: Fields; readonly more: Fields } {
  const isFirst = (name: string) => !fields[name]?.optional || given[name] !== undefined
  const part = (wanted: boolean) =>
    Object.fromEntries(Object.entries(fields).filter(([name]) => isFirst(name) === wanted))
  // Two or three more are no burden; a fold for them would be.
  const more = part(false)
  return Object.keys(more).length > 3 ? { first: part(true), more } : { first: fields, more: {} }
}
