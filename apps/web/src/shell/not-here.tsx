import { NextAction } from '../parts-of-the-sheet/actions.tsx'
import { Passage, Sheet } from '../parts-of-the-sheet/sheet.tsx'
import { useWords } from '../words.tsx'

/** An address no part answers to. */
export function NotHere() {
  const { say } = useWords()
  return (
    <Sheet title={say('shell:not-here-title')}>
      <Passage>
        <p>{say('shell:not-here')}</p>
        <NextAction href="/">{say('shell:to-the-year')}</NextAction>
      </Passage>
    </Sheet>
  )
}
