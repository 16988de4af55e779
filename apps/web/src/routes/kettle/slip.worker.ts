/** Learns from the book's own pots when hulls slip, beside the screen. */
import { slipKnowledge } from '@crib/planning'
import type { SlipPot } from '@crib/science'

self.addEventListener('message', ({ data }: MessageEvent<readonly SlipPot[]>) => {
  self.postMessage(slipKnowledge(data))
})
