/**
 * AlkaliLotForm: a lot of ash or other alkali written down, with what never goes in and the cautions of the ash pail.
 * Props: lot? (its details put right: the last telling stands).
 */
import type { AlkaliLotFact, BodyOf } from '@crib/journal'
import { type NeverIn, neverGoesIn, stoppedBy } from '@crib/planning'
import { useState } from 'react'
import { useBook } from '../book/book.tsx'
import { useHalfTyped } from '../half-typed.ts'
import { ChoiceTags, DateField, FlagTag, TextField } from '../parts-of-the-sheet/fields.tsx'
import { Caution, Refusal } from '../parts-of-the-sheet/lines.tsx'
import { useWords } from '../words.tsx'
import { Form } from './form.tsx'
import { Asked, useRecord } from './use-record.tsx'

type Body = BodyOf<'alkali-lot-recorded'>

const ALKALIS = [
  ...(['ash', 'calcium-hydroxide', 'sodium-hydroxide', 'potassium-hydroxide'] as const),
  ...(['baking-soda', 'sodium-carbonate'] as const),
]
const READY = ['burntClean', 'cold', 'sifted', 'lidded', 'onlyCleanWood'] as const
type Ready = Partial<Record<(typeof READY)[number] | 'damp', boolean>>

interface Typed {
  readonly name: string
  readonly alkali: Body['alkali']
  readonly woods: string
  readonly stove: string
  readonly alsoBurnt: string
  readonly container: string
  readonly grade: string
  readonly gatheredOn: string
  readonly ready: Ready
  readonly never: readonly NeverIn[]
}

const FRESH: Typed = {
  name: '',
  alkali: 'ash',
  woods: '',
  stove: '',
  alsoBurnt: '',
  container: '',
  grade: '',
  gatheredOn: '',
  ready: {},
  never: [],
}

export function AlkaliLotForm({ lot }: { readonly lot?: AlkaliLotFact }) {
  const { newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [typed, setTyped, forget] = useHalfTyped<Typed>(`alkali-lot:${lot?.alkaliLotId ?? 'new'}`, typedOf(lot))
  const [missing, setMissing] = useState(false)
  const change = (part: Partial<Typed>) => setTyped({ ...typed, ...part })
  const { name, alkali, gatheredOn } = typed
  const isAsh = alkali === 'ash'
  const asked = neverGoesIn(alkali)
  const stopped = stoppedBy(alkali, typed.never)
  const isStopped = stopped.length > 0

  const keep = async () => {
    if (name.trim() === '') return setMissing(true)
    const kept = await record.keep('alkali-lot-recorded', {
      alkaliLotId: lot?.alkaliLotId ?? newId(),
      name: name.trim(),
      alkali,
      ...(isAsh && typed.ready),
      // Kept in the book as what it is, so that no pot is offered it.
      ...(isAsh && isStopped && { onlyCleanWood: false }),
      ...written(typed, isAsh ? ['woods', 'stove', 'alsoBurnt', 'container'] : ['grade', 'container']),
      ...(gatheredOn && { gatheredOn }),
      ...(lot?.note !== undefined && { note: lot.note }),
    })
    if (!kept) return
    forget()
    setMissing(false)
  }
  const flag = (each: keyof Ready, label: string) => (
    <FlagTag
      key={each}
      label={label}
      value={typed.ready[each] ?? false}
      onValue={(value) => change({ ready: { ...typed.ready, [each]: value } })}
    />
  )
  return (
    <Form
      action={say(isStopped ? 'kettle:never-keep' : lot ? 'kettle:lot-put-right' : 'shell:alkali-keep')}
      onSubmit={keep}
      disabled={isStopped && !isAsh}
    >
      {!lot && (
        <ChoiceTags
          legend={say('shell:alkali-kind')}
          options={ALKALIS.map((value) => ({ value, label: say(`shell:alkali-${value}`) }))}
          value={alkali}
          onValue={(kind) => change({ alkali: kind })}
        />
      )}
      <TextField
        label={say('shell:alkali-name')}
        hint={say('shell:alkali-name-hint')}
        value={name}
        onValue={(text) => change({ name: text })}
        required
        error={missing && name.trim() === '' ? say('shell:name-missing') : null}
      />
      {asked.length > 0 && (
        <fieldset className="field" style={{ maxWidth: 'none' }}>
          <legend>{say(isAsh ? 'kettle:never-legend-ash' : 'kettle:never-legend-bought')}</legend>
          <p className="field-hint">{say('kettle:never-hint')}</p>
          <div className="tags">
            {asked.map((each) => (
              <FlagTag
                key={each}
                label={say(`kettle:never-${each}`)}
                value={typed.never.includes(each)}
                onValue={(isFound) =>
                  change({ never: isFound ? [...typed.never, each] : typed.never.filter((other) => other !== each) })
                }
              />
            ))}
          </div>
        </fieldset>
      )}
      {isStopped && <Refusal title={say('kettle:never-title')} why={stopped} />}
      {isAsh ? (
        <>
          <TextField label={say('shell:alkali-woods')} value={typed.woods} onValue={(woods) => change({ woods })} />
          <TextField label={say('kettle:lot-stove')} value={typed.stove} onValue={(stove) => change({ stove })} />
          <TextField
            label={say('kettle:lot-also-burnt')}
            hint={say('kettle:lot-also-burnt-hint')}
            value={typed.alsoBurnt}
            onValue={(alsoBurnt) => change({ alsoBurnt })}
          />
          <fieldset className="field">
            <legend>{say('shell:alkali-ready')}</legend>
            <div className="tags">
              {READY.map((each) => flag(each, say(`shell:alkali-${each}`)))}
              {flag('damp', say('kettle:lot-damp'))}
            </div>
          </fieldset>
          <Caution>{say('shell:ash-embers-care')}</Caution>
          <Caution>{say('shell:ash-fire-care')}</Caution>
        </>
      ) : (
        <>
          {alkali === 'sodium-carbonate' && <p className="field-hint">{say('kettle:lot-bake')}</p>}
          <TextField
            label={say('kettle:lot-grade')}
            hint={say('kettle:lot-grade-hint')}
            value={typed.grade}
            onValue={(grade) => change({ grade })}
          />
          <Caution>{say('shell:alkali-eyes-care')}</Caution>
        </>
      )}
      <TextField
        label={say('kettle:lot-container')}
        value={typed.container}
        onValue={(container) => change({ container })}
      />
      <DateField
        label={say('shell:alkali-gathered')}
        value={gatheredOn}
        onValue={(day) => change({ gatheredOn: day })}
      />
      <Asked record={record} />
    </Form>
  )
}

function typedOf(lot: AlkaliLotFact | undefined): Typed {
  if (!lot) return FRESH
  const { name, alkali, woods = '', stove = '', alsoBurnt = '', container = '', grade = '', gatheredOn = '' } = lot
  const told = ([...READY, 'damp'] as const).filter((each) => lot[each] !== undefined)
  const ready: Ready = Object.fromEntries(told.map((each) => [each, lot[each]]))
  return { name, alkali, woods, stove, alsoBurnt, container, grade, gatheredOn, ready, never: [] }
}

type Text = 'woods' | 'stove' | 'alsoBurnt' | 'container' | 'grade'

/** Only what was written: an empty line is not told. */
function written(typed: Typed, names: readonly Text[]): Partial<Pick<Body, Text>> {
  return Object.fromEntries(names.map((each) => [each, typed[each].trim()]).filter(([, text]) => text !== ''))
}
