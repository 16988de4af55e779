/** The curves of a jar, worked out on the spot: fast enough to follow a finger. Null where the jar is out of range. */
import { type JarPicture, jarPicture, type MadeUpRun } from '@crib/science'
import { useMemo } from 'react'

export function usePicture(run: MadeUpRun): JarPicture | null {
  return useMemo(() => {
    try {
      return jarPicture(run)
    } catch {
      return null // what was kept is from another edition; the sheet offers to set it back
    }
  }, [run])
}
