/** Kettle: pots, ash and other alkali lots, and how each worked. */
import { useBook } from '../book/book.tsx'
import { Empty, Fold, MarginNote, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { AlkaliJudgementForm, AlkaliLotForm, AlkaliLots } from '../records/alkali-lots.tsx'
import { PotForm, Pots } from '../records/pots.tsx'
import { useWords } from '../words.tsx'

export default function KettleScreen() {
  const { facts } = useBook()
  const { say } = useWords()
  const hasLots = Object.keys(facts.alkaliLots).length > 0
  return (
    <Sheet title={say('shell:part-kettle')} drawing="pot" lead={say('shell:kettle-lead')}>
      {Object.keys(facts.batches).length === 0 && (
        <Passage>
          <Empty drawing="kernel">
            <p>{say('shell:kettle-empty')}</p>
          </Empty>
        </Passage>
      )}
      <Passage title={say('shell:alkali-title')} margin={<MarginNote>{say('shell:alkali-margin')}</MarginNote>}>
        <AlkaliLots />
        <Fold title={say('shell:alkali-one-more')}>
          <AlkaliLotForm />
        </Fold>
        {hasLots && (
          <Fold title={say('shell:alkali-judge')}>
            <AlkaliJudgementForm />
          </Fold>
        )}
      </Passage>
      <Passage title={say('shell:pots-title')}>
        <Pots />
        <Fold title={say('shell:pot-one-more')}>
          <PotForm />
        </Fold>
      </Passage>
    </Sheet>
  )
}
