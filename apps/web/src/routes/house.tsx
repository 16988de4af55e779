/** The house: what is so in this kitchen every day. Kept in the book, except the theme, which belongs to the device. */
import type { BodyOf } from '@crib/journal'
import { convert, type Quantity } from '@crib/science'
import { formatNumber, type Nouns, PLAIN_NOUNS } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../book/book.tsx'
import {
  ButtonRow,
  ChoiceTags,
  Fold,
  MarginNote,
  Passage,
  QuantityField,
  Sheet,
  SideAction,
  TextField,
} from '../parts-of-the-sheet/index.ts'
import { Form } from '../records/form.tsx'
import { Asked, useRecord } from '../records/use-record.tsx'
import { rememberedTheme, rememberTheme, type Theme } from '../theme.ts'
import { useWords } from '../words.tsx'
import { CareOfTheBook } from './house-care.tsx'

type Noted = Omit<BodyOf<'kitchen-noted'>, 'kitchenId'>

export default function HouseScreen() {
  const { facts, closeKitchen } = useBook()
  const { say } = useWords()
  return (
    <Sheet title={say('shell:part-house')} drawing="house" lead={say('shell:house-lead')}>
      <Passage title={say('shell:elevation')} margin={<MarginNote>{say('shell:elevation-margin')}</MarginNote>}>
        <ElevationForm />
      </Passage>
      <Passage title={say('shell:habits')}>
        <Habits />
      </Passage>
      <Passage title={say('shell:nouns')} margin={<MarginNote>{say('shell:nouns-margin')}</MarginNote>}>
        <Fold title={say('shell:nouns-change')}>
          <NounsForm />
        </Fold>
      </Passage>
      <Passage title={say('shell:theme')} margin={<MarginNote>{say('shell:theme-margin')}</MarginNote>}>
        <ThemeChoice />
      </Passage>
      <Passage title={say('shell:kitchen-name')}>
        <Fold title={say('shell:kitchen-rename')}>
          <NameForm />
        </Fold>
      </Passage>
      <Passage
        title={say('shell:people-title')}
        margin={<MarginNote>{say('shell:people-from-house-margin')}</MarginNote>}
      >
        <ButtonRow>
          <SideAction href="/people">{say('shell:people-from-house')}</SideAction>
        </ButtonRow>
      </Passage>
      <Passage title={say('shell:care-title')} margin={<MarginNote>{say('shell:care-margin')}</MarginNote>}>
        <CareOfTheBook />
      </Passage>
      <Passage title={say('shell:other-kitchen')}>
        <p>{say('shell:other-kitchen-lead', { count: facts.entryCount })}</p>
        <ButtonRow>
          <SideAction onClick={closeKitchen}>{say('shell:close-kitchen')}</SideAction>
        </ButtonRow>
      </Passage>
    </Sheet>
  )
}

function useNote() {
  const { kitchenId } = useBook()
  const record = useRecord()
  const note = (noted: Noted) => (kitchenId ? record.keep('kitchen-noted', { kitchenId, ...noted }) : false)
  return { record, note }
}

function NameForm() {
  const { facts, kitchenId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [name, setName] = useState(facts.kitchen?.name ?? '')
  const unchanged = name.trim() === '' || name.trim() === facts.kitchen?.name
  return (
    <Form
      action={say('shell:write-down')}
      disabled={unchanged}
      onSubmit={() =>
        kitchenId && record.keep('kitchen-opened', { kitchenId, name: name.trim(), demo: facts.kitchen?.demo ?? false })
      }
    >
      <TextField label={say('shell:kitchen-name')} value={name} onValue={setName} />
      <Asked record={record} />
    </Form>
  )
}

const ELEVATION_LIMIT = { min: -500, max: 6000, unit: 'M', source: 'project rule' } as const
const KNOWN_BY = ['map', 'phone', 'survey'] as const

function ElevationForm() {
  const { facts } = useBook()
  const { say } = useWords()
  const { record, note } = useNote()
  const known = facts.kitchen?.elevationM
  const [text, setText] = useState(
    known === undefined ? '' : `${formatNumber(convert(known, 'M', 'Ft'), 1).replaceAll(',', '')} ft`,
  )
  const [elevation, setElevation] = useState<Quantity | null>(null)
  const [knownBy, setKnownBy] = useState(facts.kitchen?.elevationKnownBy ?? null)
  const [missing, setMissing] = useState(false)
  return (
    <Form
      action={say('shell:write-down')}
      onSubmit={() => {
        if (!elevation || !knownBy) return setMissing(true)
        setMissing(false)
        void note({ elevationM: convert(elevation.value, elevation.unit, 'M'), elevationKnownBy: knownBy })
      }}
    >
      <QuantityField
        label={say('shell:elevation-of-stove')}
        hint={say('shell:elevation-hint')}
        measures="length"
        bareNumberUnit="Ft"
        allowNegative
        text={text}
        onText={setText}
        onQuantity={setElevation}
        limits={ELEVATION_LIMIT}
      />
      <ChoiceTags
        legend={say('shell:elevation-known-by')}
        options={KNOWN_BY.map((value) => ({
          value,
          label: say(`shell:elevation-${value}`),
          note: say(`shell:elevation-${value}-note`),
        }))}
        value={knownBy}
        onValue={setKnownBy}
      />
      {missing && <p role="alert">{say('shell:elevation-missing')}</p>}
      <Asked record={record} />
    </Form>
  )
}

function Habits() {
  const { facts } = useBook()
  const { say } = useWords()
  const { record, note } = useNote()
  const kitchen = facts.kitchen
  return (
    <>
      <ChoiceTags
        legend={say('shell:measure-first')}
        options={(['us', 'metric'] as const).map((value) => ({ value, label: say(`shell:measure-${value}`) }))}
        value={kitchen?.measureFirst ?? 'us'}
        onValue={(measureFirst) => note({ measureFirst })}
      />
      <ChoiceTags
        legend={say('shell:vague-quart')}
        options={(['liquid', 'dry'] as const).map((value) => ({ value, label: say(`shell:vague-${value}`) }))}
        value={kitchen?.vagueQuart ?? 'liquid'}
        onValue={(vagueQuart) => note({ vagueQuart })}
      />
      <ChoiceTags
        legend={say('shell:jar-fill')}
        hint={say('shell:jar-fill-hint')}
        options={(['loose-to-headspace', 'half', 'third'] as const).map((value) => ({
          value,
          label: say(`shell:jar-fill-${value}`),
        }))}
        value={kitchen?.jarFill ?? null}
        onValue={(jarFill) => note({ jarFill })}
      />
      <Asked record={record} />
    </>
  )
}

const NOUNS = ['hull', 'hulls', 'jar', 'jars', 'corn'] as const

function NounsForm() {
  const { facts } = useBook()
  const { say } = useWords()
  const { record, note } = useNote()
  const [nouns, setNouns] = useState<Nouns>({ ...PLAIN_NOUNS, ...facts.kitchen?.nouns })
  return (
    <Form
      action={say('shell:write-down')}
      disabled={NOUNS.some((noun) => nouns[noun].trim() === '')}
      onSubmit={() => note({ nouns })}
    >
      {NOUNS.map((noun) => (
        <TextField
          key={noun}
          label={say(`shell:noun-${noun}`)}
          value={nouns[noun]}
          onValue={(text) => setNouns({ ...nouns, [noun]: text })}
        />
      ))}
      <p className="field-hint">{say('common:nouns-preview', { ...nouns })}</p>
      <Asked record={record} />
    </Form>
  )
}

function ThemeChoice() {
  const { say } = useWords()
  const [theme, setTheme] = useState<Theme>(rememberedTheme)
  return (
    <ChoiceTags
      legend={say('shell:theme-legend')}
      options={(['device', 'light', 'dark', 'contrast'] as const).map((value) => ({
        value,
        label: say(`shell:theme-${value}`),
      }))}
      value={theme}
      onValue={(value) => {
        rememberTheme(value)
        setTheme(value)
      }}
    />
  )
}
