/** The pages of the papers by the fire. Props: alkaliLotId, or batchId. */
import { useMemo, useState } from 'react'
import { useSearch } from 'wouter'
import { CountField } from '../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { useDose } from '../kettle/dose/use-dose.ts'
import { lyeSheetDocument, rubLogDocument, titrationSheetDocument } from './kettle-papers.ts'
import { Page } from './pages.tsx'
import { SheetChoices } from './sheet-choices.tsx'
import { useDesk } from './use-desk.ts'

interface OfLot {
  readonly alkaliLotId: string
}

export function LyeSheetPage({ alkaliLotId }: OfLot) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const isDosed = new URLSearchParams(useSearch()).has('dose')
  const lot = desk.facts.alkaliLots[alkaliLotId]
  const { pot } = useDose(lot?.alkali ?? 'ash', lot)
  const asked = isDosed && pot?.kind === 'pot' ? JSON.stringify(pot.input) : null
  const made = useMemo(
    () => (lot ? lyeSheetDocument(desk, lot, asked === null ? null : JSON.parse(asked)) : null),
    [desk, lot, asked],
  )
  if (!lot) return <NotHere />
  return (
    <Page title={say('kettle:page-lye')} lead={lot.name} made={made} missing="">
      <SheetChoices hand={hand} />
    </Page>
  )
}

export function TitrationSheetPage({ alkaliLotId }: OfLot) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const lot = desk.facts.alkaliLots[alkaliLotId]
  const made = useMemo(() => (lot ? titrationSheetDocument(desk, lot) : null), [desk, lot])
  if (!lot) return <NotHere />
  return (
    <Page title={say('kettle:page-titration')} lead={lot.name} made={made} missing="">
      <SheetChoices hand={hand} />
    </Page>
  )
}

export function RubLogPage({ batchId }: { readonly batchId: string }) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const [potLoad, setPotLoad] = useState(1)
  const batch = desk.facts.batches[batchId]
  const made = useMemo(() => (batch ? rubLogDocument(desk, batch, potLoad) : null), [desk, batch, potLoad])
  if (!batch) return <NotHere />
  return (
    <Page title={say('kettle:page-rub')} lead={batch.plan.title} made={made} missing="">
      <CountField label={say('kettle:walk-pot-load')} value={potLoad} onValue={setPotLoad} min={1} max={200} />
      <SheetChoices hand={hand} />
    </Page>
  )
}
