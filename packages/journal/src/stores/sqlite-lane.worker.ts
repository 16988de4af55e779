/** One thread of sqlite-lanes.ts: reads and folds its stories, a few pages ahead of the writing. */
import { once } from 'node:events'
import { parentPort, workerData } from 'node:worker_threads'
import { foldLane } from '../tables/fold-anew.ts'
import type { LaneRows } from '../tables/port.ts'
import { openDatabase } from './sqlite-driver.ts'
import { sqliteFacts } from './sqlite-facts.ts'
import type { LaneData, LaneMessage } from './sqlite-lanes.ts'

/** Changes on their way: enough that neither side waits, few enough to hold. */
const MOST_AHEAD = 8

/** Pages written in one change: every change ends with half-full leaves that the next one writes again. */
const PAGES_A_CHANGE = 4

const port = parentPort!
const { file, lane, kitchenId, upTo } = workerData as LaneData
const db = openDatabase(file)
db.exec('pragma cache_size = -16384') // it reads straight on and comes back to nothing
let ahead = 0
port.on('message', () => {
  ahead -= 1
})
const tell = (message: LaneMessage): void => port.postMessage(message)

let gathered: LaneRows[] = []
const handOn = async (): Promise<void> => {
  const rows = {
    facts: gathered.flatMap(({ facts = [] }) => facts),
    questions: gathered.flatMap(({ questions = [] }) => questions),
    refs: gathered.flatMap(({ refs = [] }) => refs),
  }
  gathered = []
  tell({ rows })
  ahead += 1
  while (ahead >= MOST_AHEAD) await once(port, 'message')
}
const storyCount = await foldLane({ tables: sqliteFacts(db), kitchenId, upTo }, lane, async (rows) => {
  gathered.push(rows)
  if (gathered.length >= PAGES_A_CHANGE) await handOn()
})
await handOn()
db.close()
tell({ storyCount })
port.close()
