/** A sound, a shake and a notice when something falls due, on this device and only if the keeper asked for it. */
import { useEffect, useRef, useState } from 'react'

const KEY = 'call-when-due'

export interface Due {
  readonly id: string
  readonly atMs: number
  readonly words: string
}

export interface DueCall {
  readonly wanted: boolean
  want(wanted: boolean): void
}

export function useDueCall(dues: readonly Due[], nowMs: number): DueCall {
  const [wanted, setWanted] = useState(remembered)
  const seenMs = useRef(nowMs)
  useEffect(() => {
    const fallen = dues.find(({ atMs }) => atMs > seenMs.current && atMs <= nowMs)
    seenMs.current = nowMs
    if (wanted && fallen) call(fallen)
  }, [dues, nowMs, wanted])
  return {
    wanted,
    want: (next) => {
      setWanted(next)
      remember(next)
      // The tap that turns it on is the one moment a browser lets a page ask and sound.
      if (next && 'Notification' in window && Notification.permission === 'default')
        void Notification.requestPermission()
      if (next) beep()
    },
  }
}

function call({ id, words }: Due): void {
  beep()
  navigator.vibrate?.([400, 200, 400])
  if (!('Notification' in window) || Notification.permission !== 'granted') return
  navigator.serviceWorker?.getRegistration().then(
    (worker) => worker?.showNotification('Kettle & Crib', { body: words, tag: id }),
    () => undefined, // the sheet itself still says it
  )
}

let speaker: AudioContext | null = null

function beep(): void {
  try {
    speaker ??= new AudioContext()
    const at = speaker.currentTime
    for (const delay of [0, 0.35, 0.7]) {
      const tone = speaker.createOscillator()
      const loudness = speaker.createGain()
      tone.frequency.value = 740
      loudness.gain.setValueAtTime(0.25, at + delay)
      loudness.gain.exponentialRampToValueAtTime(0.001, at + delay + 0.3)
      tone.connect(loudness).connect(speaker.destination)
      tone.start(at + delay)
      tone.stop(at + delay + 0.3)
    }
  } catch {
    // a device without sound
  }
}

function remembered(): boolean {
  try {
    return localStorage.getItem(KEY) === 'yes'
  } catch {
    return false
  }
}

function remember(wanted: boolean): void {
  try {
    localStorage.setItem(KEY, wanted ? 'yes' : 'no')
  } catch {
    // it holds until the page is closed
  }
}
