/** SheetChoices: what every sheet may be printed as. Props: hand (useDesk), paper? (false where labels bring their own). */
import { ChoiceTags, FlagTag } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'
import { PaperChoice } from './paper-choice.tsx'
import type { DeskInHand } from './use-desk.ts'

export function SheetChoices({ hand, paper = true }: { readonly hand: DeskInHand; readonly paper?: boolean }) {
  const { say } = useWords()
  const { desk, setPaper, setLargePrint } = hand
  return (
    <>
      {paper && <PaperChoice paper={desk.paper} onPaper={setPaper} />}
      <FlagTag label={say('shell:print-large')} value={desk.isLargePrint} onValue={setLargePrint} />
    </>
  )
}

/** Audience: whose eyes the sheet is for. Props: hand, hidesName (true where the sheet then leaves the name off). */
export function AudienceChoice({ hand, hidesName }: { readonly hand: DeskInHand; readonly hidesName: boolean }) {
  const { say } = useWords()
  const { desk, setAudience } = hand
  return (
    <>
      <ChoiceTags
        legend={say('shell:print-for-whom')}
        options={(['keeper', 'family', 'community'] as const).map((value) => ({
          value,
          label: say(`shell:print-for-${value}`),
        }))}
        value={desk.audience === 'open' ? 'community' : desk.audience}
        onValue={setAudience}
      />
      {hidesName && <p role="status">{say('shell:print-name-left-off')}</p>}
    </>
  )
}
