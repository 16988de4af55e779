/**
 * How fast is the cross-section of a jar beside the same scheme in plain C, built here when a compiler is there; how much sooner
 * does the series tell what its middle is worth; and what memory does a run take.
 */
import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { curveLethalityMin, cylinderCurve, LETHALITY_250F } from '@crib/science'
import { createHeatKernel, createStepper } from '../packages/science/src/heat/finite-volume.ts'
import { gridOf } from '../packages/science/src/heat/finite-volume-grid.ts'
import { createPlainKernel } from '../packages/science/src/heat/finite-volume-plain.ts'
import { plainCylinderMesh } from '../packages/science/src/heat/jar-mesh.ts'
import { CELLS, FOOD, HISTORY, INITIAL_C, PINT, STEP_COUNT } from './heat-made.ts'
import { type BenchQuestion, type Measured, median } from './question.ts'

const COMPILER = process.env.CC ?? 'cc'
const RUN_COUNT = 11
/** What two programs may differ by, in one cell after the whole run. [°C] */
const SAME_C = 1e-9
/** What two methods may differ by in what the middle is worth. [fraction] */
const SAME_WORTH_FRACTION = 1e-3
const MOST_TIMES_C = 1.75
const MOST_MEMORY_KB = 64 * 1024
const CROSS_SECTION = `cross-section of ${CELLS.nr} x ${CELLS.nz} cells, ${STEP_COUNT} steps`

export const heatCrossSection: BenchQuestion = {
  asks: 'How fast is the cross-section of a jar beside the same scheme in C, and what does a run take?',
  answer: async () => {
    const memory = memoryOfARun()
    if (spawnSync(COMPILER, ['--version']).status === 0) return [...besideC(), memory]
    console.log('  NOT RUN: the cross-section beside C (no C compiler found)')
    return [memory]
  },
}

/** Medians of runs taken in turn. */
function besideC(): readonly Measured[] {
  const folder = mkdtempSync(join(tmpdir(), 'heat-'))
  try {
    const program = join(folder, 'finite-volume')
    execFileSync(COMPILER, ['-O3', '-march=native', '-o', program, join(import.meta.dirname, 'finite-volume.c'), '-lm'])
    const ms = { compiled: [] as number[], plain: [] as number[], series: [] as number[], inC: [] as number[] }
    for (let k = 0; k <= RUN_COUNT; k += 1) {
      const compiled = finiteVolume(createHeatKernel)
      const plain = finiteVolume(createPlainKernel)
      const series = bySeries()
      const answer = execFileSync(program, [CELLS.nr, CELLS.nz, STEP_COUNT].map(String)).toString().trim().split(' ')
      const [inCMs, middleC, , worthMin] = answer.map(Number) as [number, number, number, number]
      requireSame(plain.middleC, compiled.middleC, 0)
      requireSame(middleC, compiled.middleC, SAME_C)
      requireSame(worthMin, series.worthMin, SAME_WORTH_FRACTION * worthMin)
      if (k === 0) continue // warm-up
      ms.compiled.push(compiled.ms)
      ms.plain.push(plain.ms)
      ms.series.push(series.ms)
      ms.inC.push(inCMs)
    }
    const reference = { what: 'the same scheme in C, -O3 -march=native', value: median(ms.inC) }
    const of = (what: string, samples: readonly number[], mostTimes?: number): Measured => ({
      what: `${what}, median of ${RUN_COUNT} in turn`,
      value: median(samples),
      unit: 'ms',
      ...(mostTimes && { limit: mostTimes * reference.value }),
      reference,
    })
    return [
      of(`${CROSS_SECTION}, compiled`, ms.compiled, MOST_TIMES_C),
      of(`${CROSS_SECTION}, in plain numbers`, ms.plain),
      of('what the middle of it is worth, to 0.1 %, by the series', ms.series, 1),
    ]
  } finally {
    rmSync(folder, { recursive: true })
  }
}

function requireSame(one: number, other: number, most: number): void {
  if (!(Math.abs(one - other) <= most)) throw new Error(`two programs disagree: ${one} and ${other}`)
}

function finiteVolume(kernel: typeof createHeatKernel): { readonly ms: number; readonly middleC: number } {
  const grid = gridOf(plainCylinderMesh(PINT, FOOD, CELLS))
  const startC = new Float64Array(CELLS.nr * CELLS.nz).fill(INITIAL_C)
  const stepper = createStepper({ grid, startC }, { water: HISTORY, steam: HISTORY, stepS: 1 }, kernel)
  const from = process.cpuUsage()
  for (let k = 0; k < STEP_COUNT; k += 1) stepper.step()
  return { ms: processorMs(from), middleC: stepper.fieldC()[CELLS.nz / 2]! }
}

/** One reading a minute is enough for the tenth of a percent asked. */
function bySeries(): { readonly ms: number; readonly worthMin: number } {
  const from = process.cpuUsage()
  const curve = cylinderCurve(PINT, HISTORY, { initialC: INITIAL_C, stepS: 60 })
  const worthMin = curveLethalityMin(curve, LETHALITY_250F)
  return { ms: processorMs(from), worthMin }
}

/** As the C program counts it: other work on the machine does not. */
function processorMs(from: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(from)
  return (user + system) / 1000
}

/** The most a program that runs one holds, over what it holds before. */
function memoryOfARun(): Measured {
  const child = [join(import.meta.dirname, 'heat-cross-section.child.ts')]
  const { stdout, stderr, status } = spawnSync(process.execPath, child, { encoding: 'utf8' })
  if (status !== 0) throw new Error(stderr)
  const { beforeKb, peakKb } = JSON.parse(stdout)
  return {
    what: `${CROSS_SECTION}, kept once a minute, memory of the run`,
    value: peakKb - beforeKb,
    unit: 'kB',
    limit: MOST_MEMORY_KB,
    reference: { what: 'the program before it', value: beforeKb },
  }
}
