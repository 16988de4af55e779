/** One lot of ash or other alkali: what is known of it, how strong it was found over time, how it worked. Props: alkaliLotId. */
import type { AlkaliLotFact } from '@crib/journal'
import { lotOverTime } from '@crib/planning'
import { formatDuration } from '@crib/wording'
import { useBook } from '../../../book/book.tsx'
import {
  BigNumber,
  ButtonRow,
  Caution,
  Fold,
  MarginNote,
  NextAction,
  NumberRow,
  Passage,
  Sheet,
  SideAction,
} from '../../../parts-of-the-sheet/index.ts'
import { AlkaliLotForm } from '../../../records/alkali-lot-form.tsx'
import { AlkaliJudgementForm } from '../../../records/alkali-lots.tsx'
import { NotHere } from '../../../shell/not-here.tsx'
import { useWords } from '../../../words.tsx'
import { dayText } from '../../pantry/day-text.ts'
import { StrengthOverTime } from './strength-over-time.tsx'
import { Unmeasured } from './unmeasured.tsx'

export default function LotPage({ alkaliLotId }: { readonly alkaliLotId: string }) {
  const { facts } = useBook()
  const { say } = useWords()
  const lot = facts.alkaliLots[alkaliLotId]
  if (!lot) return <NotHere />
  const tests = lotOverTime(lot)
  const last = tests.findLast(({ alkali }) => alkali !== undefined)
  return (
    <Sheet title={lot.name} drawing="tin" lead={say(`shell:alkali-${lot.alkali}`)}>
      <Passage title={say('kettle:lot-strength')} margin={<MarginNote>{say('kettle:lot-strength-margin')}</MarginNote>}>
        {last?.alkali && (
          <NumberRow>
            <BigNumber label={say('kettle:test-value-lotEqPerKg')} reckoned={last.alkali} />
            {last.hydroxide && <BigNumber label={say('kettle:lot-of-it-hydroxide')} reckoned={last.hydroxide} />}
          </NumberRow>
        )}
        {tests.length === 0 ? (
          <>
            <p>{say('kettle:lot-not-tested')}</p>
            <Fold title={say('kettle:test-way-nothing')}>
              <Unmeasured lot={lot} />
            </Fold>
          </>
        ) : (
          <StrengthOverTime tests={tests} />
        )}
        <NextAction href={`/kettle/alkali/${alkaliLotId}/test`}>{say('kettle:lot-test')}</NextAction>
        <ButtonRow>
          <SideAction href={`/kettle/dose?lot=${alkaliLotId}`}>{say('kettle:lot-dose')}</SideAction>
        </ButtonRow>
      </Passage>
      <Passage title={say('kettle:lot-details')}>
        {lot.onlyCleanWood === false && <Caution sentence={{ key: 'cautions:ash-clean-wood' }} />}
        <Details lot={lot} />
        <Fold title={say('kettle:lot-put-right')}>
          <AlkaliLotForm lot={lot} />
        </Fold>
        <Fold title={say('shell:alkali-judge')}>
          <AlkaliJudgementForm alkaliLotId={alkaliLotId} />
        </Fold>
      </Passage>
      <Passage title={say('kettle:papers')} margin={<MarginNote>{say('kettle:papers-margin')}</MarginNote>}>
        <ButtonRow>
          <SideAction href={`/paper/lye-sheet/${alkaliLotId}`}>{say('kettle:page-lye')}</SideAction>
          <SideAction href={`/paper/titration/${alkaliLotId}`}>{say('kettle:page-titration')}</SideAction>
        </ButtonRow>
      </Passage>
    </Sheet>
  )
}

function Details({ lot }: { readonly lot: AlkaliLotFact }) {
  const { say } = useWords()
  const isAsh = lot.alkali === 'ash'
  const yes = (known: boolean | undefined) =>
    known === undefined ? undefined : say(known ? 'kettle:lot-yes' : 'kettle:lot-no')
  const firstSlip = lot.judgements.find(({ slipMin }) => slipMin !== undefined)?.slipMin
  const ash = [
    [say('shell:alkali-woods'), lot.woods],
    [say('kettle:lot-stove'), lot.stove],
    [say('kettle:lot-also-burnt'), lot.alsoBurnt],
    [say('shell:alkali-onlyCleanWood'), yes(lot.onlyCleanWood)],
    [say('shell:alkali-sifted'), yes(lot.sifted)],
    [say('shell:alkali-lidded'), yes(lot.lidded)],
    [say('kettle:lot-damp'), yes(lot.damp)],
  ] as const
  const rows = [
    ...(isAsh ? ash : [[say('kettle:lot-grade'), lot.grade] as const]),
    [say('shell:alkali-gathered'), lot.gatheredOn === undefined ? undefined : dayText(lot.gatheredOn)] as const,
    [say('kettle:lot-container'), lot.container] as const,
    [say('kettle:lot-first-slip'), firstSlip === undefined ? undefined : formatDuration(firstSlip)] as const,
    [say('shell:alkali-judged'), say(`shell:alkali-judged-${lot.judged}`)] as const,
  ]
  return (
    <dl className="facts">
      {rows.map(([what, text]) => (
        <div key={what} style={{ display: 'contents' }}>
          <dt>{what}</dt>
          <dd>{text ?? say('kettle:lot-not-told')}</dd>
        </div>
      ))}
    </dl>
  )
}
