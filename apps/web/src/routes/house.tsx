import { Passage, Sheet } from '../parts-of-the-sheet/index.ts'
import { useWords } from '../words.tsx'

export default function HouseScreen() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:part-house')} drawing="house" lead={say('shell:house-lead')}>
      <Passage />
    </Sheet>
  )
}
