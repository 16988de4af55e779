/**
 * How fast is heat in the jar worked out: the closed series, a band of ten thousand samples, and the finite-volume model beside the
 * same scheme in plain C, built here when a compiler is there.
 */
import { execFileSync, spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { cylinderCurve, JAR_SIZES, studyJar } from '@crib/science'
import { createStepper, gridOf } from '../packages/science/src/heat/finite-volume.ts'
import { plainCylinderMesh } from '../packages/science/src/heat/jar-mesh.ts'
import { type BenchQuestion, type Measured, median, medianCallMs } from './question.ts'

const HISTORY = [
  { timeMin: 0, temperatureC: 60 },
  { timeMin: 5, temperatureC: 98 },
  { timeMin: 15, temperatureC: 99 },
  { timeMin: 20, temperatureC: 116 },
  { timeMin: 60, temperatureC: 116 },
  { timeMin: 90, temperatureC: 98 },
  { timeMin: 120, temperatureC: 40 },
]
const PINT = { ...JAR_SIZES.pint, diffusivityM2PerS: 1.5e-7 }
const FOOD = { conductivityWPerMK: 0.6, heatCapacityJPerM3K: 4e6 }
const CELLS = { nr: 64, nz: 128 }
const STEP_COUNT = 7200
const COMPILER = process.env.CC ?? 'cc'
const RUN_COUNT = 11
/** What the two may differ by, in one cell after the whole run. [°C] */
const SAME_C = 1e-9

const series = () => cylinderCurve(PINT, HISTORY, { initialC: 60, stepS: 1 })

export const heatInTheJar: BenchQuestion = {
  asks: 'How fast is heat in the jar worked out?',
  answer: async () => {
    const seriesMs = medianCallMs(series)
    const bandMs = medianCallMs(
      () =>
        studyJar(
          {
            jar: 'pint',
            pack: 'packed solid',
            elevationM: 250,
            gaugeKPa: 75.84,
            gaugeReadsHighKPa: 0,
            ventMin: 10,
            holdMin: 60,
            fillC: 82,
            coolDownMin: 35,
          },
          10_000,
        ),
      { warmUpCount: 1, samplesCount: 5 },
    )
    const measured: Measured[] = [
      {
        what: 'cold spot of a 120-minute run at 1 s steps by the series, median',
        value: seriesMs,
        unit: 'ms',
        limit: 1,
        reference: {
          what: 'one exponential for each of its 7,201 temperatures',
          value: medianCallMs(() => exponentials(7201)),
        },
      },
      {
        what: 'band of 10,000 samples, packed solid, median',
        value: bandMs,
        unit: 'ms',
        limit: 1000,
        reference: {
          what: 'fifty exponentials for each sample',
          value: medianCallMs(() => exponentials(500_000), { samplesCount: 9 }),
        },
      },
    ]
    const beside = besideC()
    if (beside) measured.push(beside)
    else console.log('  NOT RUN: the finite-volume model beside C (no C compiler found)')
    return measured
  },
}

function exponentials(count: number): number {
  let sum = 0
  for (let k = 0; k < count; k += 1) sum += Math.exp(-k * 1e-6)
  return sum
}

/** Median of runs taken in turn; null without a compiler. */
function besideC(): Measured | null {
  if (spawnSync(COMPILER, ['--version']).status !== 0) return null
  const folder = mkdtempSync(join(tmpdir(), 'heat-'))
  try {
    const program = join(folder, 'finite-volume')
    const source = join(import.meta.dirname, 'finite-volume.c')
    execFileSync(COMPILER, ['-O3', '-march=native', '-o', program, source, '-lm'])
    const [ours, inC]: [number[], number[]] = [[], []]
    for (let k = 0; k <= RUN_COUNT; k += 1) {
      const one = finiteVolume()
      const answer = execFileSync(program, [CELLS.nr, CELLS.nz, STEP_COUNT].map(String)).toString().trim().split(' ')
      if (Math.abs(Number(answer[1]) - one.middleC) > SAME_C) {
        throw new Error(`the two programs disagree: ${answer[1]} and ${one.middleC} °C`)
      }
      if (k === 0) continue // warm-up
      ours.push(one.ms)
      inC.push(Number(answer[0]))
    }
    return {
      what: `finite volumes, ${CELLS.nr} x ${CELLS.nz} cells, ${STEP_COUNT} steps, median of ${RUN_COUNT} in turn`,
      value: median(ours),
      unit: 'ms',
      reference: { what: 'the same scheme in C, -O3 -march=native', value: median(inC) },
    }
  } finally {
    rmSync(folder, { recursive: true })
  }
}

function finiteVolume(): { readonly ms: number; readonly middleC: number } {
  const grid = gridOf(plainCylinderMesh(PINT, FOOD, CELLS))
  const u = new Float64Array(CELLS.nr * CELLS.nz).fill(60)
  const stepper = createStepper(grid, u, { water: HISTORY, steam: HISTORY, stepS: 1 })
  const from = performance.now()
  for (let k = 0; k < STEP_COUNT; k += 1) stepper.step()
  return { ms: performance.now() - from, middleC: u[CELLS.nz / 2]! }
}
