/** Unmeasured: what an ash may bring when nobody measured it, by how it was kept, with the whole spread. Props: lot. */
import type { AlkaliLotFact } from '@crib/journal'
import { unmeasuredAsh } from '@crib/planning'
import { useState } from 'react'
import { BigNumber, ChoiceTags, NumberRow, Reasons } from '../../../parts-of-the-sheet/index.ts'
import { useWords } from '../../../words.tsx'

const KEPT = ['fresh', 'air-aged', 'rained-on'] as const

export function Unmeasured({ lot }: { readonly lot: AlkaliLotFact }) {
  const { say } = useWords()
  const [kept, setKept] = useState<(typeof KEPT)[number]>(lot.lidded === false || lot.damp ? 'air-aged' : 'fresh')
  if (lot.alkali !== 'ash') return <p>{say('kettle:lot-bought-strength')}</p>
  const read = unmeasuredAsh(kept)
  if (!read.ok) return <Reasons sentences={read.why} />
  return (
    <>
      <ChoiceTags
        legend={say('kettle:lot-kept')}
        options={KEPT.map((value) => ({ value, label: say(`kettle:lot-kept-${value}`) }))}
        value={kept}
        onValue={setKept}
      />
      <NumberRow>
        {read.values
          .filter(({ id }) => id === 'lotEqPerKg' || id === 'hydroxideFraction')
          .map((value) => (
            <BigNumber
              key={value.id}
              label={say(
                value.id === 'lotEqPerKg' ? 'kettle:test-value-lotEqPerKg' : 'kettle:test-value-hydroxideFraction',
              )}
              reckoned={value}
              size="small"
            />
          ))}
      </NumberRow>
      <Reasons sentences={read.reasons} />
    </>
  )
}
