/** Before heat: what must be so when the canner is loaded, and when its lid is seated. */
import { cannerWaterRule, headspaceRule } from '@crib/guidance'
import { formatQuantity } from '@crib/wording'
import { useState } from 'react'
import { ChoiceTags } from '../../parts-of-the-sheet/index.ts'
import { TapButton, TapGroup, type Taps } from '../../walk/taps.tsx'
import { Say, useWords } from '../../words.tsx'
import { eventWords, type RunNow } from './run-of.ts'

/** Depths a finger or a ruler tells apart. [in] */
const DEPTHS_IN = ['1', '2', '2.5', '3', '4'] as const

export function Loading({ at, taps }: { readonly at: RunNow; readonly taps: Taps }) {
  const words = useWords()
  const { say } = words
  const [depth, setDepth] = useState<(typeof DEPTHS_IN)[number] | null>(null)
  const { value, unit } = headspaceRule().figure
  const load = () => {
    const event = { type: 'canner-loaded', ...(depth && { waterIn: Number(depth) }) } as const
    void taps.keep(eventWords(event, at, words), [['run-event', { runId: at.run.runId, event }]])
  }
  return (
    <>
      <ul className="checks">
        <li>{say('canner:run-screen-check-jars')}</li>
        <li>{say('canner:run-screen-check-headspace', { headspace: { value, unit } })}</li>
        <li>{say('canner:run-screen-check-rims')}</li>
        <li>{say('canner:run-screen-check-rack')}</li>
      </ul>
      <ChoiceTags
        legend={say('canner:run-screen-water')}
        hint={<Say sentence={cannerWaterRule().say} />}
        options={DEPTHS_IN.map((each) => ({
          value: each,
          label: formatQuantity({ value: Number(each), unit: 'In' }, 'alone'),
        }))}
        value={depth}
        onValue={setDepth}
      />
      <TapGroup>
        <TapButton isNext disabled={taps.busy} onClick={load}>
          {say('canner:run-screen-load-all-so')}
        </TapButton>
      </TapGroup>
    </>
  )
}

export function LidChecks() {
  const { say } = useWords()
  return (
    <ul className="checks">
      <li>{say('canner:run-screen-check-level')}</li>
      <li>{say('canner:run-screen-check-knobs')}</li>
      <li>{say('canner:run-screen-check-vent')}</li>
    </ul>
  )
}
