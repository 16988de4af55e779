import { Empty, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'

export default function PantryScreen() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:part-pantry')} drawing="jar" lead={say('shell:pantry-lead')}>
      <Passage>
        <Empty drawing="jar">
          <p>{say('shell:pantry-empty')}</p>
        </Empty>
      </Passage>
    </Sheet>
  )
}
