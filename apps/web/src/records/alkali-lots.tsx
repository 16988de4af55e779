/**
 * AlkaliLots: ash and other alkali lots, each a link to its page, with how it was last judged. Props: none.
 * AlkaliJudgementForm: how a lot worked on a corn. Props: alkaliLotId? (hidden until there is a lot).
 */
import type { BodyOf } from '@crib/journal'
import { formatDuration, formatNumber } from '@crib/wording'
import { useState } from 'react'
import { Link } from 'wouter'
import { useBook } from '../book/book.tsx'
import { CountField } from '../parts-of-the-sheet/count-field.tsx'
import { ChoiceTags } from '../parts-of-the-sheet/fields.tsx'
import { Ledger } from '../parts-of-the-sheet/figure.tsx'
import { useWords } from '../words.tsx'
import { Form } from './form.tsx'
import { Asked, useRecord } from './use-record.tsx'

export function AlkaliLots() {
  const { facts } = useBook()
  const { say } = useWords()
  const lots = Object.values(facts.alkaliLots)
  if (lots.length === 0) return null
  return (
    <Ledger
      caption={say('shell:alkali-caption')}
      head={[say('shell:alkali-name'), say('shell:alkali-kind'), say('shell:alkali-judged')]}
      rows={lots.map((lot) => {
        const last = lot.judgements.at(-1)
        const parts = [
          say(`shell:alkali-judged-${lot.judged}`),
          last?.cupsPerLiquidQt !== undefined && say('shell:alkali-cups', { cups: formatNumber(last.cupsPerLiquidQt) }),
          last?.slipMin !== undefined && say('shell:alkali-slip', { time: formatDuration(last.slipMin) }),
        ]
        return {
          key: lot.alkaliLotId,
          cells: [
            <Link key="name" href={`~/kettle/alkali/${lot.alkaliLotId}`}>
              {lot.name}
            </Link>,
            say(`shell:alkali-${lot.alkali}`),
            parts.filter(Boolean).join(', '),
          ],
        }
      })}
    />
  )
}

type Judged = BodyOf<'alkali-lot-judged'>['judged']

export function AlkaliJudgementForm({ alkaliLotId: given }: { readonly alkaliLotId?: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const record = useRecord()
  const lots = Object.values(facts.alkaliLots).filter((lot) => given === undefined || lot.alkaliLotId === given)
  const [alkaliLotId, setAlkaliLotId] = useState<string | null>(null)
  const [judged, setJudged] = useState<Judged>('works')
  const [halfCups, setHalfCups] = useState(2)
  const [slipMin, setSlipMin] = useState(60)
  const chosen = alkaliLotId ?? lots.at(-1)?.alkaliLotId
  if (!chosen) return null
  return (
    <Form
      action={say('shell:alkali-judge')}
      onSubmit={() =>
        record.keep('alkali-lot-judged', {
          alkaliLotId: chosen,
          judged,
          ...(judged === 'works' ? { cupsPerLiquidQt: halfCups / 2, slipMin } : {}),
        })
      }
    >
      {given === undefined && (
        <ChoiceTags
          legend={say('shell:alkali-which')}
          options={lots.map((lot) => ({ value: lot.alkaliLotId, label: lot.name }))}
          value={chosen}
          onValue={setAlkaliLotId}
        />
      )}
      <ChoiceTags
        legend={say('shell:alkali-judged')}
        options={(['works', 'weak', 'unknown'] as const).map((value) => ({
          value,
          label: say(`shell:alkali-judged-${value}`),
        }))}
        value={judged}
        onValue={setJudged}
      />
      {judged === 'works' && (
        <>
          <CountField
            label={say('shell:alkali-half-cups')}
            hint={say('shell:alkali-cups', { cups: formatNumber(halfCups / 2) })}
            value={halfCups}
            onValue={setHalfCups}
            min={1}
            max={48}
          />
          <CountField label={say('shell:alkali-slip-min')} value={slipMin} onValue={setSlipMin} min={1} max={1440} />
        </>
      )}
      <Asked record={record} />
    </Form>
  )
}
