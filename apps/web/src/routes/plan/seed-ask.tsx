/** The seed line, asked before any corn is food. "Put by, by eye" is one tap and a full answer. Props: seasonYear. */
import { PLANTINGS_COUNT } from '@crib/planning'
import { convert, type Quantity } from '@crib/science'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import {
  ChoiceTags,
  CountField,
  Fold,
  MarginNote,
  NextAction,
  Passage,
  QuantityField,
  Sheet,
  SideAction,
  TextField,
} from '../../parts-of-the-sheet/index.ts'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'

const LIMIT = { min: 0.001, max: 5000, unit: 'Kg', source: 'project rule' } as const
const ALREADY_OUT = 'already-out'

export function SeedAsk({ seasonYear }: { readonly seasonYear: number }) {
  const { newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [places, setPlaces] = useState('')
  const placesTold = places.split(',').flatMap((place) => (place.trim() ? [place.trim()] : []))
  return (
    <Sheet title={say('seed:first')} drawing="ear" lead={say('shell:plan-seed-lead')}>
      <Passage margin={<MarginNote>{say('shell:plan-seed-margin')}</MarginNote>}>
        <p className="asked">{say('seed:ask')}</p>
        <TextField
          label={say('shell:plan-seed-places')}
          hint={say('shell:plan-seed-places-hint')}
          value={places}
          onValue={setPlaces}
        />
        <NextAction
          onClick={() =>
            record.keep('seed-put-by', {
              seedId: newId(),
              seasonYear,
              how: 'by-eye',
              plantingsCount: PLANTINGS_COUNT,
              places: placesTold,
            })
          }
        >
          {say('seed:ask-by-eye')}
        </NextAction>
        <Asked record={record} />
      </Passage>
      <Passage title={say('shell:plan-seed-otherwise')}>
        <Fold title={say('seed:ask-by-weight')}>
          <ByWeight seasonYear={seasonYear} places={placesTold} />
        </Fold>
        <Fold title={say('seed:ask-not-this-year')}>
          <NotThisYear seasonYear={seasonYear} places={placesTold} />
        </Fold>
      </Passage>
    </Sheet>
  )
}

interface Answer {
  readonly seasonYear: number
  readonly places: readonly string[]
}

function ByWeight({ seasonYear, places }: Answer) {
  const { facts, newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [text, setText] = useState('')
  const [amount, setAmount] = useState<Quantity | null>(null)
  const [outOf, setOutOf] = useState<string>(ALREADY_OUT)
  const [missing, setMissing] = useState(false)
  const lots = Object.values(facts.cornLots)
  return (
    <>
      <QuantityField
        label={say('shell:plan-seed-weight')}
        measures="mass"
        bareNumberUnit="Lb"
        text={text}
        onText={setText}
        onQuantity={setAmount}
        limits={LIMIT}
        required
      />
      {lots.length > 0 && (
        <ChoiceTags
          legend={say('shell:plan-seed-out-of')}
          options={[
            { value: ALREADY_OUT, label: say('shell:plan-seed-already-out') },
            ...lots.map(({ lotId, name }) => ({ value: lotId, label: name })),
          ]}
          value={outOf}
          onValue={setOutOf}
        />
      )}
      {missing && !amount && <p role="alert">{say('shell:quantity-empty')}</p>}
      <SideAction
        onClick={() => {
          if (!amount) return setMissing(true)
          void record.keep('seed-put-by', {
            seedId: newId(),
            seasonYear,
            how: 'by-weight',
            massKg: convert(amount.value, amount.unit, 'Kg'),
            plantingsCount: PLANTINGS_COUNT,
            places,
            ...(outOf !== ALREADY_OUT && { lotId: outOf }),
          })
        }}
      >
        {say('shell:plan-seed-keep')}
      </SideAction>
      <Asked record={record} />
    </>
  )
}

/** Less than two plantings goes on only with a reason written down. */
function NotThisYear({ seasonYear, places }: Answer) {
  const { newId } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const [plantings, setPlantings] = useState(0)
  const [reason, setReason] = useState('')
  return (
    <>
      <CountField
        label={say('shell:plan-seed-plantings')}
        value={plantings}
        onValue={setPlantings}
        max={PLANTINGS_COUNT - 1}
      />
      <TextField
        label={say('shell:plan-seed-reason')}
        hint={say('shell:plan-seed-reason-hint')}
        value={reason}
        onValue={setReason}
      />
      <SideAction
        onClick={() =>
          record.keep('seed-put-by', {
            seedId: newId(),
            seasonYear,
            how: plantings === 0 ? 'not-this-year' : 'by-eye',
            plantingsCount: plantings,
            places,
            ...(reason.trim() && { reason: reason.trim() }),
          })
        }
      >
        {say('shell:plan-seed-keep')}
      </SideAction>
      <Asked record={record} />
    </>
  )
}
