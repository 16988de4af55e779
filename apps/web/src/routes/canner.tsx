/** Canner: the canners at hand and their gauges. */
import { useBook } from '../book/book.tsx'
import { Empty, Fold, MarginNote, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { CannerForm, Canners } from '../records/canners.tsx'
import { GaugeTestForm } from '../records/gauge-test-form.tsx'
import { useWords } from '../words.tsx'

export default function CannerScreen() {
  const { facts } = useBook()
  const { say } = useWords()
  const canners = Object.values(facts.canners)
  return (
    <Sheet title={say('shell:part-canner')} drawing="canner" lead={say('shell:canner-lead')}>
      <Passage title={say('shell:canners-title')}>
        {canners.length === 0 && (
          <Empty drawing="canner">
            <p>{say('shell:canner-empty')}</p>
          </Empty>
        )}
        <Canners />
      </Passage>
      <Passage title={say('shell:canners-more-title')} margin={<MarginNote>{say('shell:gauge-margin')}</MarginNote>}>
        {canners.some(({ gauges }) => gauges.includes('dial')) && (
          <Fold title={say('shell:gauge-one-more')}>
            <GaugeTestForm />
          </Fold>
        )}
        <Fold title={say('shell:canner-one-more')} open={canners.length === 0}>
          <CannerForm />
        </Fold>
      </Passage>
    </Sheet>
  )
}
