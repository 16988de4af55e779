/** A newer version is on this device and waits: it is put in by a tap, never in the middle of a run. */
import { useSyncExternalStore } from 'react'
import { SideAction } from '../parts-of-the-sheet/actions.tsx'
import { Slip } from '../parts-of-the-sheet/slips.tsx'
import { useWords } from '../words.tsx'
import { newerVersion } from './newer-version.ts'

export function NewerSlip() {
  const waiting = useSyncExternalStore(newerVersion.subscribe, newerVersion.isWaiting)
  const { say } = useWords()
  if (!waiting) return null
  return (
    <Slip drawing="tag">
      <p>{say('shell:newer-version')}</p>
      <SideAction onClick={newerVersion.putIn}>{say('shell:newer-version-put-in')}</SideAction>
    </Slip>
  )
}
