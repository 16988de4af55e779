/**
 * The band of a made-up jar, reckoned beside the page. A new jar ends the work on the last one at once. What is shown stays
 * until its successor is there and says whose it is.
 */
import type { CurveBand, JarFrames, JarQuality, JarStudy, MadeUpRun } from '@crib/science'
import { useEffect, useRef, useState } from 'react'
import type { BandAnswer } from './band-answer.ts'

export interface BandNow {
  /** The jar that band and study belong to. */
  readonly of: MadeUpRun
  readonly study: JarStudy
  readonly band: CurveBand
  readonly isWhole: boolean
}

export interface BandWork {
  readonly now: BandNow | null
  readonly frames: { readonly of: MadeUpRun; readonly frames: JarFrames } | null
  /** What the run does to the food; comes after the band. */
  readonly quality: { readonly of: MadeUpRun; readonly quality: JarQuality } | null
  /** Told only of work that takes longer than a fifth of a second; null while there is none. */
  readonly progressFraction: number | null
  readonly failure: string | null
  readonly isStopped: boolean
  /** Ends the work; what is shown stays. */
  readonly stop: () => void
  readonly again: () => void
}

/** A slider that still moves is not reckoned for. */
const SETTLE_MS = 90
const QUIET_MS = 200

export function useBand(run: MadeUpRun): BandWork {
  const [now, setNow] = useState<BandNow | null>(null)
  const [frames, setFrames] = useState<BandWork['frames']>(null)
  const [quality, setQuality] = useState<BandWork['quality']>(null)
  const [progressFraction, setProgress] = useState<number | null>(null)
  const [failure, setFailure] = useState<string | null>(null)
  const [stoppedOf, setStoppedOf] = useState<MadeUpRun | null>(null)
  const [round, setRound] = useState(0)
  const worker = useRef<Worker | null>(null)
  const isBusy = useRef(false)

  // biome-ignore lint/correctness/useExhaustiveDependencies: `round` asks for the same jar once more
  useEffect(() => {
    const end = () => {
      // A worker at rest is kept: starting one costs more than a rough band.
      if (isBusy.current) {
        worker.current?.terminate()
        worker.current = null
        isBusy.current = false
      }
      setProgress(null)
    }
    end()
    setFailure(null)
    setStoppedOf(null)
    let startedMs = 0
    const listen = ({ data }: MessageEvent<BandAnswer>) => {
      switch (data.kind) {
        case 'frames':
          return setFrames({ of: run, frames: data.frames })
        case 'progress':
          if (performance.now() - startedMs > QUIET_MS) setProgress(data.shareFraction)
          return
        case 'band':
          setNow({ of: run, study: data.study, band: data.band, isWhole: data.isWhole })
          if (data.isWhole) setProgress(null)
          return
        case 'quality':
          isBusy.current = false
          return setQuality({ of: run, quality: data.quality })
        case 'failed':
          isBusy.current = false
          setProgress(null)
          return setFailure(data.message)
      }
    }
    const timer = setTimeout(() => {
      worker.current ??= new Worker(new URL('./band.worker.ts', import.meta.url), { type: 'module' })
      worker.current.onmessage = listen
      worker.current.onerror = ({ message }) => {
        isBusy.current = false
        setProgress(null)
        setFailure(message)
      }
      isBusy.current = true
      startedMs = performance.now()
      worker.current.postMessage(run)
    }, SETTLE_MS)
    return () => {
      clearTimeout(timer)
      end()
    }
  }, [run, round])

  useEffect(
    () => () => {
      worker.current?.terminate()
      worker.current = null
    },
    [],
  )

  return {
    now,
    frames,
    quality,
    progressFraction,
    failure,
    isStopped: stoppedOf === run,
    stop: () => {
      worker.current?.terminate()
      worker.current = null
      isBusy.current = false
      setProgress(null)
      setStoppedOf(run)
    },
    again: () => setRound((count) => count + 1),
  }
}
