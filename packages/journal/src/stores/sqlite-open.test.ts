import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Worker } from 'node:worker_threads'
import { afterEach, beforeEach, expect, test } from 'vitest'

let folder: string
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'book-open-'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** Opens each file it is told of at the very moment the others do, so that they meet in the first microseconds. */
const OPENER = `
  const { parentPort, workerData } = require('node:worker_threads')
  const gate = new Int32Array(workerData.gate)
  import(workerData.driver).then(({ openDatabase }) => {
    parentPort.on('message', ({ file, turn }) => {
      Atomics.add(gate, 0, 1)
      while (Atomics.load(gate, 0) < turn * workerData.count) {}
      try {
        openDatabase(file).close()
        parentPort.postMessage('opened')
      } catch (cause) {
        parentPort.postMessage(String(cause))
      }
    })
    parentPort.postMessage('ready')
  })`

test('[J45] of several programs that make one new file at once, none is turned away', { timeout: 60_000 }, async () => {
  const count = 2
  const gate = new SharedArrayBuffer(4)
  const driver = new URL('./sqlite-driver.ts', import.meta.url).href
  const openers = Array.from(
    { length: count },
    () => new Worker(OPENER, { eval: true, workerData: { gate, count, driver } }),
  )
  const answers = () => Promise.all(openers.map((each) => new Promise((resolve) => each.once('message', resolve))))
  try {
    expect(await answers()).toEqual(['ready', 'ready'])
    for (let turn = 1; turn <= 60; turn += 1) {
      const told = answers()
      for (const each of openers) each.postMessage({ file: join(folder, `book-${turn}.sqlite`), turn })
      expect(await told, `opening ${turn}`).toEqual(['opened', 'opened'])
    }
  } finally {
    await Promise.all(openers.map((each) => each.terminate()))
  }
})
