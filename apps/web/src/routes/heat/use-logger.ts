/** Reading a logger's file beside the page: how far it is, what came of it, and an end to it. */
import type { TracedLogger } from '@crib/planning'
import { useCallback, useEffect, useRef, useState } from 'react'
import type { LoggerAnswer, LoggerTask } from './logger.worker.ts'

type LoggerWork =
  | { readonly state: 'idle' }
  | { readonly state: 'reading'; readonly shareFraction: number }
  | { readonly state: 'read'; readonly traced: TracedLogger }
  | { readonly state: 'failed'; readonly message: string }

export function useLogger(): {
  readonly work: LoggerWork
  readonly read: (task: LoggerTask) => void
  readonly stop: () => void
} {
  const [work, setWork] = useState<LoggerWork>({ state: 'idle' })
  const worker = useRef<Worker | null>(null)
  const end = useCallback(() => {
    worker.current?.terminate()
    worker.current = null
  }, [])
  useEffect(() => end, [end])
  return {
    work,
    read: (task) => {
      end()
      setWork({ state: 'reading', shareFraction: 0 })
      worker.current = new Worker(new URL('./logger.worker.ts', import.meta.url), { type: 'module' })
      worker.current.onmessage = ({ data }: MessageEvent<LoggerAnswer>) => {
        if (data.kind === 'progress') return setWork({ state: 'reading', shareFraction: data.shareFraction })
        end()
        setWork(
          data.kind === 'traced' ? { state: 'read', traced: data.traced } : { state: 'failed', message: data.message },
        )
      }
      worker.current.onerror = ({ message }) => {
        end()
        setWork({ state: 'failed', message })
      }
      worker.current.postMessage(task)
    },
    stop: () => {
      end()
      setWork({ state: 'idle' })
    },
  }
}
