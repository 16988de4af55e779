/** Folds one kitchen's book in a program of its own and tells what it took, as JSON. Run by journal-million.ts. */
import { enableCompileCache } from 'node:module'
import { openBook, openStore } from '@crib/journal/open'
import { peakKb } from './peak-memory.ts'
import { median } from './question.ts'

enableCompileCache() // as the server and the terminal do

const [file, kitchenId, does] = process.argv.slice(2) as [string, string, 'cold' | 'warm']
const store = await openStore(file)
const from = performance.now()
const book = await openBook(store, kitchenId)
const [first] = await book.list('runs', { onlyOpen: true, limit: 20 })
const firstMs = performance.now() - from
const mostKb = peakKb()
const screens: number[] = []
if (does === 'warm') {
  const runs = await book.list('runs', { limit: 500 })
  const screensOf = async (runId: string, i: number): Promise<void> => {
    const one = async (ask: () => Promise<unknown>) => {
      const at = performance.now()
      await ask()
      screens.push(performance.now() - at)
    }
    const after = runs[i % runs.length]!.runId
    await one(() => book.get('runs', runId))
    await one(() => book.list('foodLots', { onlyOpen: true, limit: 50, after }))
    await one(() => book.list('cornLots', { limit: 50, after }))
    await one(() => book.list('runs', { limit: 20, after }))
    await one(() => book.list('batches', { limit: 20, after }))
    await one(() => book.counts())
    await one(() => book.questions(50))
    await one(() => book.history(runs[i % runs.length]!.begun.at.entryId))
    await one(() => store.read({ kitchenId, after: i * 100, limit: 200 }))
    await one(() => store.kitchens())
  }
  for (let i = 0; i < 200; i += 1) await screensOf(runs[(i * 37) % runs.length]!.runId, i)
}
const sorted = screens.toSorted((a, b) => a - b)
const p99Ms = sorted[Math.ceil(sorted.length * 0.99) - 1] ?? 0
const medianMs = sorted.length > 0 ? median(sorted) : 0
await store.close()
console.log(JSON.stringify({ firstMs, peakKb: mostKb, p99Ms, medianMs, found: first !== undefined }))
