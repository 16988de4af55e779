/** ShellingSheet: ears of the crib shelled by hand: how long so many hands take, and what it gave. Props: none. */
import { earsLeftKg, ownShellingRate, shellingTime } from '@crib/planning'
import { convert, type Quantity } from '@crib/science'
import { formatWeight } from '@crib/wording'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { useHalfTyped } from '../../half-typed.ts'
import {
  BigNumber,
  ChoiceTags,
  CountField,
  Empty,
  MarginNote,
  NextAction,
  NumberRow,
  Passage,
  QuantityField,
  Reasons,
  Sheet,
} from '../../parts-of-the-sheet/index.ts'
import { Form } from '../../records/form.tsx'
import { Asked, useRecord } from '../../records/use-record.tsx'
import { useWords } from '../../words.tsx'

const WEIGHT_LIMIT = { min: 0, max: 5000, unit: 'Kg', source: 'project rule' } as const

export default function ShellingSheet() {
  const { facts } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const lots = Object.values(facts.cornLots).filter((each) => earsLeftKg(each) > 0)
  const [chosen, choose] = useState<string | null>(null)
  const lot = lots.find(({ lotId }) => lotId === chosen) ?? lots.at(-1)
  const [typed, setTyped, forget] = useHalfTyped(`shelling:${lot?.lotId}`, {
    people: facts.kitchen?.helpersCount ?? 1,
    text: '',
    minutes: 0,
    partText: '',
  })
  const change = (more: Partial<typeof typed>) => setTyped({ ...typed, ...more })
  const { people, text, minutes, partText } = typed
  const [shelled, setShelled] = useState<Quantity | null>(null)
  const [part, setPart] = useState<Quantity | null>(null)
  const taken = part && { massKg: convert(part.value, part.unit, 'Kg') }
  const own = ownShellingRate(facts)
  const keep = async () => {
    if (!lot || !shelled) return
    const kept = await record.keep('corn-shelled', {
      lotId: lot.lotId,
      shelledKg: convert(shelled.value, shelled.unit, 'Kg'),
      ...(taken && { earsKg: taken.massKg }),
      ...(people > 0 && { helpersCount: people }),
      ...(minutes > 0 && { minutes }),
    })
    if (kept) forget(typed)
  }
  const time =
    lot && people > 0
      ? shellingTime({
          earCornKg: taken?.massKg ?? earsLeftKg(lot),
          helpersCount: people,
          ...(own && { lbPerHour: own.value }),
        })
      : null
  return (
    <Sheet title={say('field:screen-shell')} drawing="ear">
      <Passage margin={<MarginNote>{say('field:screen-shell-dry')}</MarginNote>}>
        {!lot ? (
          <Empty drawing="ear" action={<NextAction href="/crib">{say('shell:part-crib')}</NextAction>}>
            <p>{say('field:screen-shell-none')}</p>
          </Empty>
        ) : (
          <Form
            action={say('field:screen-shell-keep')}
            onSubmit={keep}
            disabled={!shelled || (partText.trim() !== '' && !part)}
          >
            <ChoiceTags
              legend={say('field:screen-shell-lot')}
              options={lots.map((each) => ({
                value: each.lotId,
                label: `${each.name}, ${formatWeight(earsLeftKg(each))}`,
              }))}
              value={lot.lotId}
              onValue={choose}
            />
            <QuantityField
              key={`part ${record.keptCount}`}
              label={say('field:screen-shell-part')}
              hint={say('field:screen-shell-part-hint')}
              measures="mass"
              text={partText}
              onText={(now) => change({ partText: now })}
              onQuantity={setPart}
              limits={WEIGHT_LIMIT}
            />
            <CountField
              label={say('field:screen-shell-people')}
              value={people}
              onValue={(now) => change({ people: now })}
              max={500}
            />
            {time && (
              <div aria-live="polite" className="passage-body" id="shelling">
                <NumberRow>
                  <BigNumber label={say('field:screen-shell-expect')} reckoned={time.values[0]!} size="small" />
                  <BigNumber label={say('field:screen-shell-hours')} reckoned={time.values[1]!} size="small" />
                </NumberRow>
                <Reasons sentences={time.reasons} />
              </div>
            )}
            <QuantityField
              key={record.keptCount}
              label={say('field:screen-shell-weight')}
              hint={say('field:screen-harvest-weight-hint')}
              measures="mass"
              text={text}
              onText={(now) => change({ text: now })}
              onQuantity={setShelled}
              limits={WEIGHT_LIMIT}
            />
            <CountField
              label={say('field:screen-shell-minutes')}
              hint={say('field:screen-none-counted')}
              value={minutes}
              onValue={(now) => change({ minutes: now })}
              max={1440}
            />
            <Asked record={record} onKept={() => forget()} />
          </Form>
        )}
      </Passage>
    </Sheet>
  )
}
