import { Empty, NextAction, Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'

export default function HomeScreen() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:part-season')} drawing="year">
      <Passage>
        <Empty drawing="braid" action={<NextAction href="/crib">{say('shell:bring-in')}</NextAction>}>
          <p>{say('shell:year-empty')}</p>
        </Empty>
      </Passage>
    </Sheet>
  )
}
