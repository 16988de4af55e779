/**
 * The wash for the water at hand, looked for in a worker so that the screen stays awake.
 * `const wash = useWash(input)`: wash.state tells how far it is; cancel() stops it, again() starts anew.
 */
import type { WashInput } from '@crib/planning'
import type { CalcResult, PlannedBath } from '@crib/science'
import { useCallback, useEffect, useRef, useState } from 'react'

export type WashAnswer =
  | { readonly type: 'tried'; readonly triedCount: number; readonly ofCount: number }
  | {
      readonly type: 'found'
      readonly result: CalcResult
      readonly baths: readonly PlannedBath[]
      /** In the worker. [ms] */
      readonly tookMs: number
    }

export type WashState =
  | { readonly kind: 'idle' | 'stopped' | 'failed' }
  /** isSlow: it takes longer than a person waits without a word. */
  | { readonly kind: 'working'; readonly isSlow: boolean; readonly triedCount: number; readonly ofCount: number }
  | (Extract<WashAnswer, { readonly type: 'found' }> & { readonly kind: 'found' })

const SLOW_MS = 200

export function useWash(input: WashInput | null): {
  readonly state: WashState
  readonly cancel: () => void
  readonly again: () => void
} {
  const [state, setState] = useState<WashState>({ kind: 'idle' })
  const [round, setRound] = useState(0)
  const running = useRef<Worker | null>(null)
  const asked = input && JSON.stringify(input)
  const stop = useCallback(() => {
    running.current?.terminate()
    running.current = null
  }, [])
  // biome-ignore lint/correctness/useExhaustiveDependencies: a new round asks the same again
  useEffect(() => {
    if (asked === null) {
      setState({ kind: 'idle' })
      return
    }
    const worker = new Worker(new URL('./wash.worker.ts', import.meta.url), { type: 'module' })
    running.current = worker
    setState({ kind: 'working', isSlow: false, triedCount: 0, ofCount: 1 })
    const slow = setTimeout(() => setState((now) => (now.kind === 'working' ? { ...now, isSlow: true } : now)), SLOW_MS)
    worker.onmessage = ({ data }: MessageEvent<WashAnswer>) => {
      if (data.type === 'found') {
        setState({ ...data, kind: 'found' })
        stop()
        return
      }
      const { triedCount, ofCount } = data
      setState((now) => (now.kind === 'working' ? { ...now, triedCount, ofCount } : now))
    }
    worker.onerror = () => {
      setState({ kind: 'failed' })
      stop()
    }
    worker.postMessage(JSON.parse(asked))
    return () => {
      clearTimeout(slow)
      worker.terminate()
    }
  }, [asked, round, stop])
  return {
    state,
    cancel: () => {
      stop()
      setState({ kind: 'stopped' })
    },
    again: () => setRound((before) => before + 1),
  }
}
