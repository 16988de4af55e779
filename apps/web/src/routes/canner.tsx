import { Empty, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'

export default function CannerScreen() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:part-canner')} drawing="canner" lead={say('shell:canner-lead')}>
      <Passage>
        <Empty drawing="canner">
          <p>{say('shell:canner-empty')}</p>
        </Empty>
      </Passage>
    </Sheet>
  )
}
