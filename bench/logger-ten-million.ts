/**
 * How long does a logger's file of ten million rows take, and how much memory? Written to disk a piece at a time, read the same
 * way, thinned to a few thousand points. The reference reads the same bytes and counts its lines.
 */

import { once } from 'node:events'
import { createReadStream, createWriteStream, mkdtempSync, rmSync, statSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { type LoggerMapping, traceLogger } from '@crib/planning'
import type { BenchQuestion } from './question.ts'

const ROWS = 10_000_000
const ROWS_A_PIECE = 20_000
/** What reading may add to the memory of the process. [MB] */
const MEMORY_MB = 64
const MAPPING: LoggerMapping = {
  delimiter: ',',
  decimal: '.',
  time: { column: 'time (s)', kind: 'seconds' },
  values: [
    { column: 'canner (C)', unit: 'C' },
    { column: 'gauge (psi)', unit: 'PsiGauge' },
  ],
}

/** A head that says every unit, and so many rows ten a second, written a piece at a time. */
export async function writeRows(file: string, rowsCount = ROWS): Promise<void> {
  const out = createWriteStream(file)
  out.write('time (s),canner (C),gauge (psi)\n')
  for (let from = 0; from < rowsCount; from += ROWS_A_PIECE) {
    let piece = ''
    for (let k = from; k < from + ROWS_A_PIECE; k += 1) {
      const celsius = 100 + 16 * Math.sin(k / 40_000) + 0.2 * Math.sin(k / 7)
      piece += `${(k / 10).toFixed(1)},${celsius.toFixed(2)},${(6 + 6 * Math.sin(k / 40_000)).toFixed(2)}\n`
    }
    if (!out.write(piece)) await once(out, 'drain')
  }
  out.end()
  await once(out, 'finish')
}

export const loggerTenMillion: BenchQuestion = {
  asks: 'How long does a logger file of ten million rows take?',
  answer: async () => {
    const folder = mkdtempSync(join(tmpdir(), 'logger-'))
    try {
      const file = join(folder, 'rows.csv')
      await writeRows(file)
      const countFrom = performance.now()
      let lines = 0
      for await (const piece of createReadStream(file, 'utf8')) {
        for (let at = piece.indexOf('\n'); at >= 0; at = piece.indexOf('\n', at + 1)) lines += 1
      }
      const countMs = performance.now() - countFrom
      const restMb = process.memoryUsage().rss / 1e6
      let mostMb = restMb
      const watch = setInterval(() => {
        mostMb = Math.max(mostMb, process.memoryUsage().rss / 1e6)
      }, 50)
      const from = performance.now()
      const { outcome, traces } = await traceLogger(createReadStream(file, 'utf8'), MAPPING, ['canner', 'gauge'])
      const ms = performance.now() - from
      clearInterval(watch)
      if (!outcome.ok || outcome.readingCount !== ROWS || lines !== ROWS + 1) throw new Error('not every row was read')
      const points = traces.reduce((sum, trace) => sum + trace.points.length, 0)
      const addedMb = mostMb - restMb
      console.log(
        `  ${(statSync(file).size / 1e6).toFixed(0)} MB read with ${addedMb.toFixed(0)} MB more memory (${mostMb.toFixed(0)} MB in all), ${points} points kept`,
      )
      if (addedMb > MEMORY_MB) throw new Error(`reading added ${addedMb.toFixed(0)} MB; ${MEMORY_MB} MB are allowed`)
      return [
        {
          what: 'a file of 10,000,000 rows read, checked and thinned',
          value: ms,
          unit: 'ms',
          reference: { what: 'counting its lines', value: countMs },
        },
      ]
    } finally {
      rmSync(folder, { recursive: true })
    }
  },
}
