/** Something asked of the house server, and what a form does with its answer. */
import { useCallback, useEffect, useState } from 'react'
import { useWords } from '../words.tsx'
import { PeopleRefused } from './door.ts'

/** What `ask` gave; undefined until it has, null when it was refused. `again` asks once more. */
export function useAnswer<T>(ask: () => Promise<T>): { readonly answer: T | null | undefined; again(): void } {
  const [answer, setAnswer] = useState<T | null>()
  const [turn, setTurn] = useState(0)
  // biome-ignore lint/correctness/useExhaustiveDependencies: a turn asks anew
  useEffect(() => {
    let stale = false
    ask().then(
      (given) => !stale && setAnswer(given),
      () => !stale && setAnswer(null),
    )
    return () => {
      stale = true
    }
  }, [ask, turn])
  return { answer, again: useCallback(() => setTurn((each) => each + 1), []) }
}

/** Runs one act at a time; `fault` is the server's own sentence. */
export function useAct(): {
  readonly busy: boolean
  readonly fault: string | null
  run(act: () => Promise<void>): Promise<void>
} {
  const { say } = useWords()
  const [busy, setBusy] = useState(false)
  const [fault, setFault] = useState<string | null>(null)
  const run = async (act: () => Promise<void>) => {
    setBusy(true)
    setFault(null)
    try {
      await act()
    } catch (cause) {
      if (!(cause instanceof PeopleRefused)) setFault(say('shell:people-passkey-not-taken'))
      else setFault(cause.status === 0 ? say('shell:people-unreached') : cause.message)
    }
    setBusy(false)
  }
  return { busy, fault, run }
}
