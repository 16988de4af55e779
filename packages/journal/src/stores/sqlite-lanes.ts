/** A long book folded in several threads: each reads the file by itself, this one alone writes. */
import { Worker } from 'node:worker_threads'
import { LANES, type Lane } from '../tables/fold-anew.ts'
import type { LaneJob, LaneRows } from '../tables/port.ts'
import { threadEnv } from './thread-env.ts'

export interface LaneData extends LaneJob {
  readonly file: string
  readonly lane: Lane
}

/** From a lane: rows to write, or how many stories it folded in all. */
export type LaneMessage = { readonly rows: LaneRows } | { readonly storyCount: number }

export async function foldInLanes(
  file: string,
  job: LaneJob,
  take: (rows: LaneRows) => Promise<void>,
): Promise<number> {
  const workers: Worker[] = []
  let turn: Promise<void> = Promise.resolve()
  const run = (lane: Lane): Promise<number> =>
    new Promise((resolve, reject) => {
      const workerData: LaneData = { file, lane, ...job }
      const worker = new Worker(new URL('./sqlite-lane.worker.ts', import.meta.url), {
        workerData,
        env: threadEnv(),
        // What a page leaves behind is cleared away soon instead of piling up.
        resourceLimits: { maxYoungGenerationSizeMb: 48 },
      })
      workers.push(worker)
      worker.on('error', reject)
      worker.on('exit', () => reject(new Error(`the thread that folds ${lane} ended early`)))
      worker.on('message', (message: LaneMessage) => {
        if ('storyCount' in message) return resolve(message.storyCount)
        turn = turn.then(() => take(message.rows)).then(() => worker.postMessage('written'))
        turn.catch(reject)
      })
    })
  try {
    const counts = await Promise.all(LANES.map(run))
    return counts.reduce((sum, count) => sum + count, 0)
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()))
  }
}
