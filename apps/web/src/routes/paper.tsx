import { Empty, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'

export default function PaperScreen() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:part-paper')} drawing="sheet" lead={say('shell:paper-lead')}>
      <Passage>
        <Empty drawing="sheet">
          <p>{say('shell:paper-empty')}</p>
        </Empty>
      </Passage>
    </Sheet>
  )
}
