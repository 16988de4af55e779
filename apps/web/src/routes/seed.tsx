import { Empty, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'

export default function SeedScreen() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:part-seed')} drawing="ear" lead={say('shell:seed-lead')}>
      <Passage>
        <Empty drawing="ear">
          <p>{say('shell:seed-empty')}</p>
        </Empty>
      </Passage>
    </Sheet>
  )
}
