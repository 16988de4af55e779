/** HarvestSheet: corn of a planting brought into the crib: the field's word and the crib's lot, from one form. Props: plantingId. */
import { type BodyOf, checkBody } from '@crib/journal'
import { cribLotOfHarvest } from '@crib/planning'
import { convert, type Quantity } from '@crib/science'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import { localDay } from '../../local-day.ts'
import {
  ButtonRow,
  ChoiceTags,
  CountField,
  DateField,
  Fold,
  NextAction,
  Passage,
  PercentField,
  QuantityField,
  Sheet,
  SideAction,
} from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { dayText } from '../pantry/day-text.ts'
import { EarsWhenDry } from './ears-when-dry.tsx'

const WEIGHT_LIMIT = { min: 0, max: 5000, unit: 'Kg', source: 'project rule' } as const
const FORMS = ['ears', 'shelled'] as const
const TYPES = ['flint', 'flour', 'dent', 'popcorn', 'unknown'] as const

interface Typed {
  readonly form: (typeof FORMS)[number]
  readonly weightText: string
  readonly ears: number
  readonly plants: number
  readonly moisturePercent: number
  readonly cornType: (typeof TYPES)[number]
}

const FRESH: Typed = { form: 'ears', weightText: '', ears: 0, plants: 0, moisturePercent: 0, cornType: 'flint' }

export default function HarvestSheet({ plantingId }: { readonly plantingId: string }) {
  const { facts, newId, write } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const today = localDay()
  const [typed, setTyped, forget] = useHalfTyped<Typed>(`harvest:${plantingId}`, FRESH)
  const [harvestedOn, setHarvestedOn] = useState(today)
  const [mass, setMass] = useState<Quantity | null>(null)
  const [missing, setMissing] = useState(false)
  const [toBring, setToBring] = useState<BodyOf<'corn-lot-brought-in'> | null>(null)
  const [isKept, setKept] = useState(false)
  const planting = facts.plantings[plantingId]
  if (!planting) return <NotHere />
  const { form: comesAs, weightText, ears, plants, moisturePercent, cornType } = typed
  const change = (part: Partial<Typed>) => setTyped({ ...typed, ...part })
  const bring = async (lot: BodyOf<'corn-lot-brought-in'>) => {
    await write('corn-lot-brought-in', lot)
    forget()
    setMissing(false)
    setToBring(null)
    setKept(true)
  }
  const keep = async () => {
    if (!mass) return setMissing(true)
    const lotId = newId()
    const massKg = convert(mass.value, mass.unit, 'Kg')
    const lot = cribLotOfHarvest({ form: comesAs, massKg }, planting, { lotId, cornType, asTyped: weightText.trim() })
    if (!checkBody('corn-lot-brought-in', lot).ok) return void record.keep('corn-lot-brought-in', lot)
    setToBring(lot)
    const kept = await record.keep('harvest-brought-in', {
      plantingId,
      harvestedOn,
      lotId,
      form: comesAs,
      massKg,
      ...(ears > 0 && { earsCount: ears }),
      ...(moisturePercent > 0 && { kernelWetFraction: moisturePercent / 100 }),
      ...(plants > 0 && { plantsHarvestedCount: plants }),
    })
    if (kept) await bring(lot)
  }
  const form = (
    <Form action={say('field:screen-harvest-keep')} onSubmit={keep}>
      <DateField label={say('field:screen-on-day')} value={harvestedOn} onValue={setHarvestedOn} max={today} />
      <ChoiceTags
        legend={say('field:screen-harvest-form')}
        options={FORMS.map((value) => ({ value, label: say(`field:screen-harvest-${value}`) }))}
        value={comesAs}
        onValue={(value) => change({ form: value })}
      />
      <QuantityField
        key={record.keptCount}
        label={say('field:screen-harvest-weight')}
        hint={say('field:screen-harvest-weight-hint')}
        measures="mass"
        text={weightText}
        onText={(text) => change({ weightText: text })}
        onQuantity={setMass}
        limits={WEIGHT_LIMIT}
        required
      />
      {missing && !mass && <p role="alert">{say('field:screen-harvest-weigh')}</p>}
      <PercentField
        label={say('field:screen-harvest-moisture')}
        hint={say('field:screen-harvest-moisture-hint')}
        value={moisturePercent}
        onValue={(value) => change({ moisturePercent: value })}
        max={60}
      />
      {comesAs === 'ears' && mass && moisturePercent > 0 && (
        <EarsWhenDry earCornKg={convert(mass.value, mass.unit, 'Kg')} kernelMoistureFraction={moisturePercent / 100} />
      )}
      {comesAs === 'ears' && (
        <CountField
          label={say('field:screen-harvest-ears-count')}
          hint={say('field:screen-none-counted')}
          value={ears}
          onValue={(value) => change({ ears: value })}
          max={1_000_000}
        />
      )}
      <CountField
        label={say('field:screen-harvest-plants')}
        hint={say('field:screen-none-counted')}
        value={plants}
        onValue={(value) => change({ plants: value })}
        max={5_000_000}
      />
      <ChoiceTags
        legend={say('field:screen-harvest-type')}
        options={TYPES.map((value) => ({ value, label: say(`shell:corn-type-${value}`) }))}
        value={cornType}
        onValue={(value) => change({ cornType: value })}
      />
      <Asked record={record} onKept={() => void (toBring && bring(toBring))} />
    </Form>
  )
  return (
    <Sheet
      title={say('field:screen-step-harvest')}
      drawing="braid"
      lead={say('field:screen-sown-on', { corn: planting.cornName, day: dayText(planting.plantedOn) })}
    >
      {isKept && (
        <Passage>
          <p role="status">{say('field:screen-harvest-kept', { corn: planting.cornName })}</p>
          <NextAction href="/seed">{say('field:screen-harvest-seed-next')}</NextAction>
          <ButtonRow>
            <SideAction href="/field/shelling">{say('field:screen-shell')}</SideAction>
            <SideAction href="/crib">{say('shell:part-crib')}</SideAction>
          </ButtonRow>
        </Passage>
      )}
      <Passage>{isKept ? <Fold title={say('field:screen-harvest-more')}>{form}</Fold> : form}</Passage>
    </Sheet>
  )
}
