/** What the band's worker says while it works. */
import type { CurveBand, JarFrames, JarQuality, JarStudy } from '@crib/science'

export type BandAnswer =
  | { readonly kind: 'frames'; readonly frames: JarFrames }
  | { readonly kind: 'progress'; readonly shareFraction: number }
  | {
      readonly kind: 'band'
      /** False for the rough one that comes first. */
      readonly isWhole: boolean
      readonly study: JarStudy
      /** One reading a minute. */
      readonly band: CurveBand
    }
  /** Last: the work is done. */
  | { readonly kind: 'quality'; readonly quality: JarQuality }
  | { readonly kind: 'failed'; readonly message: string }
