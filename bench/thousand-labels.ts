/** How long, and how much memory, does a PDF of 1,000 labels take, four to a household? */
import { spawnSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import type { BenchQuestion } from './question.ts'

const LABELS_COUNT = 1000
const LIMIT = { tookMs: 3000, peakKb: 150_000 }
/** Fewer than this would mean that labels were left out. [bytes] */
const LEAST_BYTES = 200_000

interface Took {
  readonly tookMs: number
  readonly peakKb: number
  readonly bytes: number
}

function set(labelsCount: number): Took {
  const child = fileURLToPath(new URL('./thousand-labels.child.ts', import.meta.url))
  const { status, stdout, stderr } = spawnSync(process.execPath, [child, String(labelsCount)], { encoding: 'utf8' })
  if (status !== 0) throw new Error(stderr)
  return JSON.parse(stdout) as Took
}

export const thousandLabels: BenchQuestion = {
  asks: `What does a PDF of ${LABELS_COUNT} labels cost?`,
  answer: () => {
    const one = set(1)
    const all = set(LABELS_COUNT)
    if (all.bytes < LEAST_BYTES) throw new Error(`${all.bytes} bytes hold no ${LABELS_COUNT} labels`)
    return Promise.resolve([
      {
        what: '1,000 labels set as a PDF',
        value: all.tookMs,
        unit: 'ms',
        limit: LIMIT.tookMs,
        reference: { what: 'one label', value: one.tookMs },
      },
      {
        what: 'most memory while setting them',
        value: all.peakKb,
        unit: 'kB',
        limit: LIMIT.peakKb,
        reference: { what: 'for one label', value: one.peakKb },
      },
    ])
  },
}
