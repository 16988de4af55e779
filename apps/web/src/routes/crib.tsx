import { Empty, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'

export default function CribScreen() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:part-crib')} drawing="braid" lead={say('shell:crib-lead')}>
      <Passage>
        <Empty drawing="braid">
          <p>{say('shell:crib-empty')}</p>
        </Empty>
      </Passage>
    </Sheet>
  )
}
