/** The time it is, for redrawing only: everything due is reckoned from what was written down. */
import { useEffect, useState } from 'react'

const EVERY_MS = 1000

/** Milliseconds since 1970, anew each second and at once when the page is seen again. */
export function useNow(): number {
  const [, redraw] = useState(0)
  useEffect(() => {
    const look = () => redraw(Date.now())
    const timer = setInterval(look, EVERY_MS)
    document.addEventListener('visibilitychange', look)
    window.addEventListener('pageshow', look)
    return () => {
      clearInterval(timer)
      document.removeEventListener('visibilitychange', look)
      window.removeEventListener('pageshow', look)
    }
  }, [])
  // Read at each drawing: a line written this second is never ahead of the clock it is drawn with.
  return Date.now()
}
