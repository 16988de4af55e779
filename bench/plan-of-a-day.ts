/** How long does it take to work out the village day (24 households, three canners) anew after one change? */
import { findCalc, readInputs } from '@crib/catalogue'
import type { BenchQuestion } from './question.ts'
import { medianCallMs } from './question.ts'

const LIMIT_MS = 20

export const planOfADay: BenchQuestion = {
  asks: 'How long does a village day take to plan anew?',
  answer: async () => {
    const calc = findCalc('village-day')
    if (!calc) return { notRun: 'there is no calculation village-day' }
    const { example } = calc
    const plan = () => {
      const read = readInputs(calc.inputs, example)
      if (!read.ok) throw new TypeError(`the example of ${calc.id} cannot be read`)
      const result = calc.run(read.input as never)
      if (!result.ok) throw new TypeError(`the example of ${calc.id} is refused`)
    }
    return [
      {
        what: 'village day planned anew, median',
        value: medianCallMs(plan),
        unit: 'ms',
        limit: LIMIT_MS,
        reference: {
          what: 'the same input through JSON and back',
          value: medianCallMs(() => JSON.parse(JSON.stringify(example))),
        },
      },
    ]
  },
}
