/** SeedLotForm: writes a seed lot down, counted or weighed or neither, with its containers and their places. Props: none. */
import { kernelsPerOzOfHundred } from '@crib/planning'
import { convert, type Quantity } from '@crib/science'
import { formatNumber } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import {
  ButtonRow,
  ChoiceTags,
  CountField,
  DateField,
  FieldError,
  QuantityField,
  SideAction,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'
import { type Tin, Tins } from './tins.tsx'

const SOURCES = ['own', 'given', 'swapped', 'bought'] as const
const NO_CORN_LOT = ''
const WEIGHT_LIMIT = { min: 0, max: 5000, unit: 'Kg', source: 'project rule' } as const
/** What the book keeps. [kernels/oz]  Project rule. */
const PER_OZ = { min: 20, max: 500 } as const

interface Typed {
  readonly name: string
  readonly tins: readonly Tin[]
  readonly harvest: number
  readonly putByOn: string
  readonly source: (typeof SOURCES)[number]
  readonly lotId: string
  readonly parents: number
  readonly known: 'count' | 'weight' | 'neither'
  readonly kernels: number
  readonly weightText: string
  readonly size: 'per-oz' | 'hundred' | 'unknown'
  readonly perOz: number
  readonly hundredText: string
}

const NO_TIN: Tin = { container: '', place: '' }

const freshLot = (today: string): Typed => ({
  name: '',
  tins: [NO_TIN, NO_TIN],
  harvest: Number(today.slice(0, 4)),
  putByOn: today,
  source: 'own',
  lotId: NO_CORN_LOT,
  parents: 0,
  known: 'count',
  kernels: 0,
  weightText: '',
  size: 'per-oz',
  perOz: 0,
  hundredText: '',
})

export function SeedLotForm({ today }: { readonly today: string }) {
  const { facts, newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [typed, setTyped, forget] = useHalfTyped<Typed>('seed-lot', freshLot(today))
  const change = (more: Partial<Typed>) => setTyped({ ...typed, ...more })
  const [weight, setWeight] = useState<Quantity | null>(null)
  const [hundred, setHundred] = useState<Quantity | null>(null)
  const [missing, setMissing] = useState(false)
  const { name, tins, harvest, putByOn, source, lotId, parents, known, kernels, size, perOz } = typed

  const cornLots = Object.values(facts.cornLots)
  const hundredKg = hundred ? convert(hundred.value, hundred.unit, 'Kg') : 0
  const kernelsPerOz =
    size === 'per-oz' ? perOz : size === 'hundred' && hundredKg > 0 ? kernelsPerOzOfHundred(hundredKg) : 0
  const sizeIsOdd = kernelsPerOz !== 0 && !(kernelsPerOz >= PER_OZ.min && kernelsPerOz <= PER_OZ.max)
  const filled = tins.filter(({ container, place }) => container.trim() !== '' || place.trim() !== '')
  const tinIsHalf = filled.some(({ container, place }) => container.trim() === '' || place.trim() === '')
  const weightIsMissing = known === 'weight' && !(weight && weight.value > 0)

  const keep = async () => {
    if (name.trim() === '' || tinIsHalf || weightIsMissing || sizeIsOdd) return setMissing(true)
    const kept = await record.keep('seed-lot-recorded', {
      seedLotId: newId(),
      name: name.trim(),
      seasonYear: harvest,
      putByOn,
      source,
      ...(lotId !== NO_CORN_LOT && { lotId }),
      ...(parents > 0 && { parentEarsCount: parents }),
      ...(known === 'count' && kernels > 0 && { kernelsCount: kernels }),
      ...(known === 'weight' && weight && { massKg: convert(weight.value, weight.unit, 'Kg') }),
      ...(kernelsPerOz > 0 && { kernelsPerOz }),
      containers: filled.map(({ container, place }) => ({ container: container.trim(), place: place.trim() })),
    })
    if (!kept) return
    forget(typed)
    setMissing(false)
  }

  return (
    <Form action={say('seed:screen-keep-lot')} onSubmit={keep}>
      <TextField
        label={say('seed:screen-name')}
        hint={say('seed:screen-name-hint')}
        value={name}
        onValue={(name) => change({ name })}
        required
        error={missing && name.trim() === '' ? say('shell:name-missing') : null}
      />
      <CountField
        label={say('seed:screen-harvest')}
        value={harvest}
        onValue={(harvest) => change({ harvest })}
        max={9999}
      />
      <DateField
        label={say('seed:screen-put-by-on')}
        value={putByOn}
        onValue={(putByOn) => change({ putByOn })}
        max={today}
      />
      <ChoiceTags
        legend={say('seed:screen-source')}
        options={SOURCES.map((value) => ({ value, label: say(`seed:screen-source-${value}`) }))}
        value={source}
        onValue={(source) => change({ source })}
      />
      {cornLots.length > 0 && (
        <ChoiceTags
          legend={say('seed:screen-corn-lot')}
          options={[
            { value: NO_CORN_LOT, label: say('seed:screen-corn-lot-none') },
            ...cornLots.map((lot) => ({ value: lot.lotId, label: lot.name })),
          ]}
          value={lotId}
          onValue={(lotId) => change({ lotId })}
        />
      )}
      <CountField
        label={say('seed:screen-parents')}
        hint={say('seed:screen-none-counted')}
        value={parents}
        onValue={(parents) => change({ parents })}
        max={1_000_000}
      />
      <ChoiceTags
        legend={say('seed:screen-how-much')}
        options={(['count', 'weight', 'neither'] as const).map((value) => ({
          value,
          label: say(`seed:screen-by-${value}`),
        }))}
        value={known}
        onValue={(known) => change({ known })}
      />
      {known === 'count' && (
        <CountField
          label={say('seed:screen-kernels')}
          hint={say('seed:screen-none-counted')}
          value={kernels}
          onValue={(kernels) => change({ kernels })}
          max={5_000_000}
        />
      )}
      {known === 'weight' && (
        <QuantityField
          key={record.keptCount}
          label={say('seed:screen-weight')}
          hint={say('seed:screen-weight-hint')}
          measures="mass"
          text={typed.weightText}
          onText={(weightText) => change({ weightText })}
          onQuantity={setWeight}
          limits={WEIGHT_LIMIT}
          required
        />
      )}
      <ChoiceTags
        legend={say('seed:screen-size-how')}
        options={(['per-oz', 'hundred', 'unknown'] as const).map((value) => ({
          value,
          label: say(`seed:screen-size-${value}`),
        }))}
        value={size}
        onValue={(size) => change({ size })}
      />
      {size === 'per-oz' && (
        <CountField
          label={say('seed:screen-per-oz')}
          hint={say('seed:screen-none-counted')}
          value={perOz}
          onValue={(perOz) => change({ perOz })}
          max={PER_OZ.max}
        />
      )}
      {size === 'hundred' && (
        <QuantityField
          label={say('seed:screen-hundred')}
          hint={say('seed:screen-hundred-hint')}
          measures="mass"
          text={typed.hundredText}
          onText={(hundredText) => change({ hundredText })}
          onQuantity={setHundred}
        />
      )}
      {missing && sizeIsOdd && (
        <p role="alert">
          <FieldError>{say('seed:screen-size-outside', { given: formatNumber(kernelsPerOz, 1) })}</FieldError>
        </p>
      )}
      <Tins tins={tins} onTins={(next) => change({ tins: next })} />
      <ButtonRow>
        <SideAction onClick={() => change({ tins: [...tins, NO_TIN] })}>{say('seed:screen-another-tin')}</SideAction>
      </ButtonRow>
      {missing && tinIsHalf && (
        <p role="alert">
          <FieldError>{say('seed:screen-tin-half')}</FieldError>
        </p>
      )}
      {missing && weightIsMissing && <p role="alert">{say('shell:quantity-empty')}</p>}
      <Asked record={record} />
    </Form>
  )
}
