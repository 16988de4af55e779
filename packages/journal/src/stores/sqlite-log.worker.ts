/** The thread of sqlite-log.ts: takes the log into the file without holding up whoever reads or writes meanwhile. */
import { workerData } from 'node:worker_threads'
import { openDatabase } from './sqlite-driver.ts'

const db = openDatabase(workerData as string)
db.exec('pragma wal_checkpoint(passive)')
db.close()
