/** The time it is, for redrawing only: everything due is reckoned from what was written down. */
import { useEffect, useState } from 'react'

const EVERY_MS = 1000

/** Milliseconds since 1970, anew each second and at once when the page is seen again. */
export function useNow(): number {
  const [nowMs, setNowMs] = useState(() => Date.now())
  useEffect(() => {
    const look = () => setNowMs(Date.now())
    const timer = setInterval(look, EVERY_MS)
    document.addEventListener('visibilitychange', look)
    window.addEventListener('pageshow', look)
    return () => {
      clearInterval(timer)
      document.removeEventListener('visibilitychange', look)
      window.removeEventListener('pageshow', look)
    }
  }, [])
  return nowMs
}
