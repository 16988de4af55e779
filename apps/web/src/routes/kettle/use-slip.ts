/**
 * What the book's other pots teach of slipping, worked out in a worker so that a tap is never lost on a long book.
 * `const { state, again } = useSlip(pots)`. What was found before stays in sight until the newer answer is there.
 */
import type { SlipKnowledge } from '@crib/planning'
import type { SlipPot } from '@crib/science'
import { useEffect, useState } from 'react'

export type SlipState =
  | { readonly kind: 'working'; readonly isSlow: boolean }
  | { readonly kind: 'found'; readonly knowledge: SlipKnowledge }
  | { readonly kind: 'failed' }

/** A shorter wait is not spoken of. */
const SLOW_MS = 200

export function useSlip(pots: readonly SlipPot[]): { readonly state: SlipState; readonly again: () => void } {
  const [state, setState] = useState<SlipState>({ kind: 'working', isSlow: false })
  const [round, setRound] = useState(0)
  const asked = JSON.stringify(pots)
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new round asks the same again
  useEffect(() => {
    const worker = new Worker(new URL('./slip.worker.ts', import.meta.url), { type: 'module' })
    const slow = setTimeout(() => setState((now) => (now.kind === 'working' ? { ...now, isSlow: true } : now)), SLOW_MS)
    worker.onmessage = ({ data }: MessageEvent<SlipKnowledge>) => {
      setState({ kind: 'found', knowledge: data })
      worker.terminate()
    }
    worker.onerror = () => {
      setState({ kind: 'failed' })
      worker.terminate()
    }
    worker.postMessage(JSON.parse(asked))
    return () => {
      clearTimeout(slow)
      worker.terminate()
    }
  }, [asked, round])
  return {
    state,
    again: () => {
      setState({ kind: 'working', isSlow: false })
      setRound((before) => before + 1)
    },
  }
}
