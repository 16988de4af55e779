import { Empty, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'

export default function KeepingScreen() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:part-keeping')} drawing="tin" lead={say('shell:keeping-lead')}>
      <Passage>
        <Empty drawing="tin">
          <p>{say('shell:keeping-empty')}</p>
        </Empty>
      </Passage>
    </Sheet>
  )
}
