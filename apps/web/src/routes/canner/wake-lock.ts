/** Keeps the screen on while a run is under way, where the browser allows it. Times never depend on it. */
import { useEffect, useState } from 'react'

export function useWakeLock(isWanted: boolean): boolean {
  const [isHeld, setHeld] = useState(false)
  useEffect(() => {
    if (!isWanted || !('wakeLock' in navigator)) return
    let lock: WakeLockSentinel | null = null
    let over = false
    const ask = async () => {
      if (document.hidden || over) return
      try {
        lock = await navigator.wakeLock.request('screen')
        if (over) return void lock.release()
        setHeld(true)
        lock.addEventListener('release', () => setHeld(false))
      } catch {
        setHeld(false) // low battery, or not allowed here
      }
    }
    void ask()
    document.addEventListener('visibilitychange', ask)
    return () => {
      over = true
      document.removeEventListener('visibilitychange', ask)
      void lock?.release()
    }
  }, [isWanted])
  return isHeld
}
