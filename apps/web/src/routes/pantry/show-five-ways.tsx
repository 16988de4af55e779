/** ShowFiveWays: in the invented kitchen, one invented harvest written down as if it had been kept five ways. Props: none. */
import { fiveWays } from '@crib/planning'
import { useState } from 'react'
import { useBook } from '../../book/book.tsx'
import { deviceZone } from '../../book/keeper.ts'
import { SideAction } from '../../parts-of-the-sheet/index.ts'
import { useWords } from '../../words.tsx'

export function ShowFiveWays() {
  const { facts, newId, write } = useBook()
  const { say } = useWords()
  const [busy, setBusy] = useState(false)
  const show = async () => {
    setBusy(true)
    const zone = deviceZone()
    try {
      for (const [kind, body, instant] of fiveWays(facts, { newId, nowMs: Date.now(), zone }))
        await write(kind, body as never, { happenedAt: { instant, zone } })
    } finally {
      setBusy(false)
    }
  }
  return (
    <SideAction onClick={show} disabled={busy}>
      {say('pantry:show-five-ways')}
    </SideAction>
  )
}
