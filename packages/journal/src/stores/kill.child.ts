/** Appends until it is killed; prints the id of each entry once the store has acknowledged it. Run by kill.test.ts. */
import { writeSync } from 'node:fs'
import { createId } from '../author.ts'
import { createRecorder } from '../record.ts'
import { openSqliteStore } from './sqlite.ts'

const [file, kitchenId, deviceId] = process.argv.slice(2) as [string, string, string]
const clock = { now: () => Date.now() }
const random = { bytes: (count: number) => crypto.getRandomValues(new Uint8Array(count)) }
const store = await openSqliteStore(file)
const { record } = createRecorder({ store, kitchenId, deviceId, personId: kitchenId, clock, random, zone: 'UTC' })
for (;;) {
  const potId = createId(clock, random)
  const entry = await record('pot-recorded', { potId, name: 'pot', volumeL: 18.9, material: 'enamel' })
  writeSync(1, `${entry.envelope.id}\n`)
}
