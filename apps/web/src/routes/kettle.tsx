import { Empty, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'

export default function KettleScreen() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:part-kettle')} drawing="pot" lead={say('shell:kettle-lead')}>
      <Passage>
        <Empty drawing="pot">
          <p>{say('shell:kettle-empty')}</p>
        </Empty>
      </Passage>
    </Sheet>
  )
}
