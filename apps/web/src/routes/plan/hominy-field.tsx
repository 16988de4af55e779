/** HominyField: how much hominy one volume of dry corn makes, as low, middle and high. Props: ratio, onRatio. */
import type { Spread } from '@crib/planning'
import { useState } from 'react'
import { TextField } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

const ENDS = ['low', 'middle', 'high'] as const

export function HominyField({ ratio, onRatio }: { readonly ratio: Spread; readonly onRatio: (ratio: Spread) => void }) {
  const { say } = useWords()
  const [texts, setTexts] = useState({ low: String(ratio.low), middle: String(ratio.middle), high: String(ratio.high) })
  const spread = readSpread(texts)
  return (
    <>
      <p className="field-hint">{say('shell:plan-hominy-hint')}</p>
      {ENDS.map((end) => (
        <TextField
          key={end}
          label={say(`shell:plan-hominy-${end}`)}
          value={texts[end]}
          onValue={(text) => {
            const next = { ...texts, [end]: text }
            setTexts(next)
            const read = readSpread(next)
            if (read) onRatio(read)
          }}
          error={spread || end !== 'middle' ? null : say('shell:plan-hominy-fault')}
        />
      ))}
    </>
  )
}

/** Three numbers from 1 to 6, rising; null otherwise. */
function readSpread(texts: Record<(typeof ENDS)[number], string>): Spread | null {
  const [low, middle, high] = ENDS.map((end) => Number(texts[end].trim() || 'x')) as [number, number, number]
  return low >= 1 && low <= middle && middle <= high && high <= 6 ? { low, middle, high } : null
}
