/** Sets 1,000 labels in a program of its own and tells what it took, as JSON. Run by thousand-labels.ts. */
import { enableCompileCache } from 'node:module'
import type { Reckoned } from '@crib/science'
import { peakKb } from './peak-memory.ts'

// As server and terminal do: what was compiled once is not held in memory as source again.
enableCompileCache()
const { foodLabels } = await import('@crib/paper')
const { renderPdf } = await import('@crib/paper/pdf')
const { createWords } = await import('@crib/wording')

const [labelsCount] = process.argv.slice(2).map(Number) as [number]
const boilMin: Reckoned = {
  id: 'boilBeforeTastingMin',
  value: 11,
  unit: 'Min',
  rounding: { mode: 'up', step: 1 },
  basis: 'published',
  sourceKeys: [],
  inputs: {},
  edition: 'bench',
  codeVersion: '0',
}
/** Invented: four jars to a household, as in scenario S6, each household's lot with words and a code of its own. */
const JARS_A_HOUSEHOLD = 4
const lots = Array.from({ length: Math.ceil(labelsCount / JARS_A_HOUSEHOLD) }, (_, index) => ({
  loadCode: `MILL-261103-${index}`,
  date: '2026-11-03',
  contents: 'Copper Hinge hominy',
  household: `house ${index}`,
  boilMin,
  departed: index % 7 === 0,
  conditions: index % 5 === 0 ? ['Not to be sold.'] : [],
  record: `crib:lot/${index.toString(16).padStart(12, '0')}`,
}))
const labels = Array.from({ length: labelsCount }, (_, jar) => lots[Math.floor(jar / JARS_A_HOUSEHOLD)]!)
const setting = { paper: 'letter', invented: false, edition: 'bench', madeAt: '2026-11-03T07:00:00Z' } as const
const from = performance.now()
const pdf = await renderPdf(foodLabels(labels, { sheet: 'letter-2x5' }, setting, createWords()))
const tookMs = performance.now() - from
console.log(JSON.stringify({ tookMs, peakKb: peakKb(), bytes: pdf.byteLength }))
