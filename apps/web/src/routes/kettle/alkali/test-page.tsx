/** How strong is this lot? Four ways, the surest first; written down as a test of the lot. Props: alkaliLotId. */
import { useState } from 'react'
import { useLocation, useSearch } from 'wouter'
import { useBook } from '../../../book/book.tsx'
import { ButtonRow, ChoiceTags, MarginNote, Passage, Sheet, SideAction } from '../../../parts-of-the-sheet/index.ts'
import { NotHere } from '../../../shell/not-here.tsx'
import { useWords } from '../../../words.tsx'
import { StripTest, TrialCup } from './other-ways.tsx'
import { Titration } from './titration.tsx'
import { Unmeasured } from './unmeasured.tsx'

const WAYS = ['vinegar', 'strip', 'trial-cup', 'nothing'] as const

export default function TestPage({ alkaliLotId }: { readonly alkaliLotId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const [, go] = useLocation()
  const batchId = new URLSearchParams(useSearch()).get('batch')
  const [way, setWay] = useState<(typeof WAYS)[number]>('vinegar')
  const lot = facts.alkaliLots[alkaliLotId]
  if (!lot) return <NotHere />
  // A lot tested while its pot boils is on the way back to that pot.
  const batch = batchId === null ? undefined : facts.batches[batchId]
  const onKept = () => go(batch ? `~/kettle/${batch.batchId}` : `~/kettle/alkali/${alkaliLotId}`)
  return (
    <Sheet title={say('kettle:test-title', { lot: lot.name })} drawing="scale" lead={say('kettle:test-lead')}>
      <Passage margin={<MarginNote>{say('kettle:test-margin')}</MarginNote>}>
        <ChoiceTags
          legend={say('kettle:test-way')}
          options={WAYS.map((value) => ({
            value,
            label: say(`kettle:test-way-${value}`),
            note: say(`kettle:test-way-${value}-note`),
          }))}
          value={way}
          onValue={setWay}
        />
      </Passage>
      {way === 'vinegar' && <Titration lot={lot} onKept={onKept} />}
      {way === 'strip' && <StripTest lot={lot} onKept={onKept} />}
      {way === 'trial-cup' && <TrialCup lot={lot} onKept={onKept} />}
      {way === 'nothing' && (
        <Passage title={say('kettle:test-way-nothing')}>
          <Unmeasured lot={lot} />
        </Passage>
      )}
      <Passage>
        <ButtonRow>
          <SideAction href={`/paper/titration/${alkaliLotId}`}>{say('kettle:page-titration')}</SideAction>
          <SideAction href={`/kettle/alkali/${alkaliLotId}`}>{say('kettle:lot-go', { lot: lot.name })}</SideAction>
        </ButtonRow>
      </Passage>
    </Sheet>
  )
}
