/**
 * The write-ahead log while a long book is folded anew. Emptying it into the file as it fills costs as much as the
 * folding, and facts can be made again: so it is left to grow, and emptied afterwards in a thread that nobody waits for.
 */
import { Worker } from 'node:worker_threads'
import type { OpenedDatabase } from './sqlite-driver.ts'
import { threadEnv } from './thread-env.ts'

export interface LongLog {
  /** Runs `work`, the log growing meanwhile. */
  during<T>(work: () => Promise<T>): Promise<T>
  /** Once nothing empties the log beside any more. */
  settled(): Promise<void>
}

export function createLongLog(db: OpenedDatabase, file: string): LongLog {
  let emptying: Promise<void> = Promise.resolve()
  const usual = db.all<[number]>('pragma wal_autocheckpoint')[0]![0]
  const growTo = (pages: number): void => db.exec(`pragma wal_autocheckpoint = ${pages}`)
  return {
    async during(work) {
      await emptying
      growTo(0)
      try {
        return await work()
      } finally {
        // Until then a commit would empty it here and now.
        emptying = emptied(file).then(() => growTo(usual))
      }
    },
    settled: () => emptying,
  }
}

/** Whether or not it could be: what is left, the next commits see to. */
function emptied(file: string): Promise<void> {
  return new Promise((resolve) => {
    const worker = new Worker(new URL('./sqlite-log.worker.ts', import.meta.url), {
      workerData: file,
      env: threadEnv(),
    })
    worker.on('error', () => {})
    worker.on('exit', () => resolve())
  })
}
