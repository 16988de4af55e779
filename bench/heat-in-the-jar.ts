/** How fast is heat in a made-up jar worked out without a mesh: the closed series, and a band of ten thousand samples. */
import { cylinderCurve, studyJar } from '@crib/science'
import { HISTORY, PINT } from './heat-made.ts'
import { type BenchQuestion, medianCallMs } from './question.ts'

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
    return [
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
  },
}

function exponentials(count: number): number {
  let sum = 0
  for (let k = 0; k < count; k += 1) sum += Math.exp(-k * 1e-6)
  return sum
}
