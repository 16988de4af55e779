/** Looks for the wash that leaves least alkali, beside the screen: every order of baths is tried. */
import { rinseResult, type WashInput, washPlan } from '@crib/planning'
import type { WashAnswer } from './use-wash.ts'

const tell = (answer: WashAnswer) => self.postMessage(answer)

self.addEventListener('message', ({ data }: MessageEvent<WashInput>) => {
  const beganMs = performance.now()
  const wash = washPlan(data, (triedCount, ofCount) => tell({ type: 'tried', triedCount, ofCount }))
  tell({
    type: 'found',
    result: rinseResult(data, wash),
    baths: wash?.plan.baths ?? [],
    tookMs: performance.now() - beganMs,
  })
})
