/** Reckons the cross-section and the band of a made-up jar off the page: a rough band at once, then the whole one. */
import { createCurveBand, jarFrames, jarPicture, type MadeUpRun, studyJar, studyQuality } from '@crib/science'
import type { BandAnswer } from './band-answer.ts'

const ROUGH_COUNT = 512
const WHOLE_COUNT = 10_000
/** Enough for two digits of a band of the food. */
const QUALITY_COUNT = 2048
/** Samples between two words of progress. */
const TOLD_EVERY = 500

self.addEventListener('message', ({ data: run }: MessageEvent<MadeUpRun>) => {
  const tell = (answer: BandAnswer) => self.postMessage(answer)
  try {
    if (run.pack === 'packed solid') tell({ kind: 'frames', frames: jarFrames(run) })
    const readingsCount = Math.ceil(jarPicture(run).coldSpotC.length / 2)
    for (const samplesCount of [ROUGH_COUNT, WHOLE_COUNT]) {
      const counted = createCurveBand(readingsCount, 2)
      let seenCount = 0
      const study = studyJar(run, samplesCount, (curve) => {
        counted.add(curve)
        seenCount += 1
        if (seenCount % TOLD_EVERY === 0) tell({ kind: 'progress', shareFraction: seenCount / samplesCount })
      })
      tell({ kind: 'band', isWhole: samplesCount === WHOLE_COUNT, study, band: counted.band() })
    }
    tell({ kind: 'quality', quality: studyQuality(run, QUALITY_COUNT) })
  } catch (error) {
    tell({ kind: 'failed', message: error instanceof Error ? error.message : String(error) })
  }
})
