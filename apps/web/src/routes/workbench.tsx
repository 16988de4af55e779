import { Empty, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'

export default function WorkbenchScreen() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:part-workbench')} drawing="scale" lead={say('shell:workbench-lead')}>
      <Passage>
        <Empty drawing="scale">
          <p>{say('shell:workbench-empty')}</p>
        </Empty>
      </Passage>
    </Sheet>
  )
}
