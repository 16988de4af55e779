/** The pages of a seed lot's papers. Props of each: seedLotId. */
import { type SeedLotFact, seedOnPaper } from '@crib/journal'
import { useMemo, useState } from 'react'
import { ChoiceTags } from '../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../shell/not-here.tsx'
import { useWords } from '../../words.tsx'
import { Page } from './pages.tsx'
import { germinationSheetDocument, reserveTagsDocument, seedEnvelopeDocument } from './seed-papers.ts'
import { AudienceChoice, SheetChoices } from './sheet-choices.tsx'
import { type DeskInHand, useDesk } from './use-desk.ts'

interface OfLot {
  readonly seedLotId: string
}

function SeedChoices({ hand, lot }: { readonly hand: DeskInHand; readonly lot: SeedLotFact }) {
  const { facts, audience } = hand.desk
  return (
    <>
      <AudienceChoice hand={hand} hidesName={seedOnPaper(lot, facts, audience).name === undefined} />
      <SheetChoices hand={hand} />
    </>
  )
}

export function SeedEnvelopePage({ seedLotId }: OfLot) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const lot = desk.facts.seedLots[seedLotId]
  const made = useMemo(() => (lot ? seedEnvelopeDocument(desk, lot) : null), [desk, lot])
  if (!lot) return <NotHere />
  return (
    <Page title={say('seed:screen-print-envelope')} lead={lot.name} made={made} missing="">
      <SeedChoices hand={hand} lot={lot} />
    </Page>
  )
}

export function SproutingTestPage({ seedLotId }: OfLot) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const [rolls, setRolls] = useState<'2' | '4'>('2')
  const lot = desk.facts.seedLots[seedLotId]
  const made = useMemo(() => (lot ? germinationSheetDocument(desk, lot, Number(rolls)) : null), [desk, lot, rolls])
  if (!lot) return <NotHere />
  return (
    <Page title={say('seed:screen-print-test')} lead={lot.name} made={made} missing="">
      <ChoiceTags
        legend={say('seed:screen-print-rolls')}
        options={(['2', '4'] as const).map((value) => ({ value, label: value }))}
        value={rolls}
        onValue={setRolls}
      />
      <SeedChoices hand={hand} lot={lot} />
    </Page>
  )
}

export function ReserveTagsPage({ seedLotId }: OfLot) {
  const { say } = useWords()
  const hand = useDesk()
  const { desk } = hand
  const lot = desk.facts.seedLots[seedLotId]
  const made = useMemo(() => (lot ? reserveTagsDocument(desk, lot) : null), [desk, lot])
  if (!lot) return <NotHere />
  return (
    <Page title={say('seed:screen-print-tags')} lead={lot.name} made={made} missing={say('seed:screen-print-no-tins')}>
      <SeedChoices hand={hand} lot={lot} />
    </Page>
  )
}
