/**
 * Appends until it is killed, or a number of times; prints the id of each entry once the store has acknowledged it. A
 * store that cannot be opened or written ends it with the name of the trouble.
 */
import { writeSync } from 'node:fs'
import { createId } from '../author.ts'
import { createRecorder } from '../record.ts'
import { openStore } from '../stores/open.ts'
import { StoreTrouble } from '../stores/trouble.ts'

const [where, kitchenId, deviceId, times] = process.argv.slice(2) as [string, string, string, string?]
const clock = { now: () => Date.now() }
const random = { bytes: (count: number) => crypto.getRandomValues(new Uint8Array(count)) }
try {
  const store = await openStore(where)
  const { record } = createRecorder({ store, kitchenId, deviceId, personId: kitchenId, clock, random, zone: 'UTC' })
  for (let count = 0; times === undefined || count < Number(times); count += 1) {
    const potId = createId(clock, random)
    const entry = await record('pot-recorded', { potId, name: 'pot', volumeL: 18.9, material: 'enamel' })
    writeSync(1, `${entry.envelope.id}\n`)
  }
  await store.close()
} catch (cause) {
  if (!(cause instanceof StoreTrouble)) throw cause
  writeSync(1, `${cause.code}\n`)
}
