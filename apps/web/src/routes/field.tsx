import { Empty, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'

export default function FieldScreen() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:part-field')} drawing="field" lead={say('shell:field-lead')}>
      <Passage>
        <Empty drawing="field">
          <p>{say('shell:field-empty')}</p>
        </Empty>
      </Passage>
    </Sheet>
  )
}
