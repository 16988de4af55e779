/** PaperChoice: Letter or A4. Props: paper, onPaper. */
import type { PaperSize } from '@crib/paper'
import { ChoiceTags } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export function PaperChoice({
  paper,
  onPaper,
}: {
  readonly paper: PaperSize
  readonly onPaper: (paper: PaperSize) => void
}) {
  const { say } = useWords()
  return (
    <ChoiceTags
      legend={say('shell:print-paper')}
      options={(['letter', 'a4'] as const).map((value) => ({ value, label: say(`shell:print-paper-${value}`) }))}
      value={paper}
      onValue={onPaper}
    />
  )
}
