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

export function SeedLotForm({ today }: { readonly today: string }) {
  const { facts, newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [name, setName, forgetName] = useHalfTyped('seed-lot:name', '')
  const [tins, setTins, forgetTins] = useHalfTyped<readonly Tin[]>('seed-lot:tins', [NO_TIN, NO_TIN])
  const [harvest, setHarvest] = useState(() => Number(today.slice(0, 4)))
  const [putByOn, setPutByOn] = useState(today)
  const [source, setSource] = useState<(typeof SOURCES)[number]>('own')
  const [lotId, setLotId] = useState(NO_CORN_LOT)
  const [parents, setParents] = useState(0)
  const [known, setKnown] = useState<'count' | 'weight' | 'neither'>('count')
  const [kernels, setKernels] = useState(0)
  const [weightText, setWeightText] = useState('')
  const [weight, setWeight] = useState<Quantity | null>(null)
  const [size, setSize] = useState<'per-oz' | 'hundred' | 'unknown'>('per-oz')
  const [perOz, setPerOz] = useState(0)
  const [hundredText, setHundredText] = useState('')
  const [hundred, setHundred] = useState<Quantity | null>(null)
  const [missing, setMissing] = useState(false)

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
    forgetName()
    forgetTins()
    setKernels(0)
    setParents(0)
    setWeightText('')
    setMissing(false)
  }

  return (
    <Form action={say('seed:screen-keep-lot')} onSubmit={keep}>
      <TextField
        label={say('seed:screen-name')}
        hint={say('seed:screen-name-hint')}
        value={name}
        onValue={setName}
        required
        error={missing && name.trim() === '' ? say('shell:name-missing') : null}
      />
      <CountField label={say('seed:screen-harvest')} value={harvest} onValue={setHarvest} max={9999} />
      <DateField label={say('seed:screen-put-by-on')} value={putByOn} onValue={setPutByOn} max={today} />
      <ChoiceTags
        legend={say('seed:screen-source')}
        options={SOURCES.map((value) => ({ value, label: say(`seed:screen-source-${value}`) }))}
        value={source}
        onValue={setSource}
      />
      {cornLots.length > 0 && (
        <ChoiceTags
          legend={say('seed:screen-corn-lot')}
          options={[
            { value: NO_CORN_LOT, label: say('seed:screen-corn-lot-none') },
            ...cornLots.map((lot) => ({ value: lot.lotId, label: lot.name })),
          ]}
          value={lotId}
          onValue={setLotId}
        />
      )}
      <CountField
        label={say('seed:screen-parents')}
        hint={say('seed:screen-none-counted')}
        value={parents}
        onValue={setParents}
        max={1_000_000}
      />
      <ChoiceTags
        legend={say('seed:screen-how-much')}
        options={(['count', 'weight', 'neither'] as const).map((value) => ({
          value,
          label: say(`seed:screen-by-${value}`),
        }))}
        value={known}
        onValue={setKnown}
      />
      {known === 'count' && (
        <CountField
          label={say('seed:screen-kernels')}
          hint={say('seed:screen-none-counted')}
          value={kernels}
          onValue={setKernels}
          max={5_000_000}
        />
      )}
      {known === 'weight' && (
        <QuantityField
          key={record.keptCount}
          label={say('seed:screen-weight')}
          hint={say('seed:screen-weight-hint')}
          measures="mass"
          text={weightText}
          onText={setWeightText}
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
        onValue={setSize}
      />
      {size === 'per-oz' && (
        <CountField
          label={say('seed:screen-per-oz')}
          hint={say('seed:screen-none-counted')}
          value={perOz}
          onValue={setPerOz}
          max={PER_OZ.max}
        />
      )}
      {size === 'hundred' && (
        <QuantityField
          label={say('seed:screen-hundred')}
          hint={say('seed:screen-hundred-hint')}
          measures="mass"
          text={hundredText}
          onText={setHundredText}
          onQuantity={setHundred}
        />
      )}
      {missing && sizeIsOdd && (
        <p role="alert">
          <FieldError>{say('seed:screen-size-outside', { given: formatNumber(kernelsPerOz, 1) })}</FieldError>
        </p>
      )}
      <Tins tins={tins} onTins={setTins} />
      <ButtonRow>
        <SideAction onClick={() => setTins([...tins, NO_TIN])}>{say('seed:screen-another-tin')}</SideAction>
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

const NO_TIN: Tin = { container: '', place: '' }
