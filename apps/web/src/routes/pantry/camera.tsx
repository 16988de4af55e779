/**
 * Camera: the picture of the camera, looked at a few times a second until a code is read. Props: onRead(text), onTrouble(why).
 * A browser lends its camera only to a page it trusts (https, or this very machine) and to a person who allows it.
 */
import { useEffect, useRef } from 'react'
import { useWords } from '../../words.tsx'
import { pixelsOf, readCode } from './read-code.ts'

export type CameraTrouble = 'refused' | 'none'

export function hasCamera(): boolean {
  return window.isSecureContext && Boolean(navigator.mediaDevices?.getUserMedia)
}

const EVERY_MS = 250

export function Camera({
  onRead,
  onTrouble,
}: {
  readonly onRead: (text: string) => void
  readonly onTrouble: (why: CameraTrouble) => void
}) {
  const { say } = useWords()
  const video = useRef<HTMLVideoElement>(null)
  const tell = useRef({ onRead, onTrouble })
  tell.current = { onRead, onTrouble }
  useEffect(() => {
    let stream: MediaStream | null = null
    let timer: ReturnType<typeof setTimeout> | undefined
    let closed = false
    const look = async () => {
      const seen = video.current
      if (closed || !seen) return
      if (seen.videoWidth > 0) {
        const text = await readCode(pixelsOf(seen, seen.videoWidth, seen.videoHeight)).catch(() => null)
        if (closed) return
        if (text !== null) return tell.current.onRead(text)
      }
      timer = setTimeout(look, EVERY_MS)
    }
    navigator.mediaDevices.getUserMedia({ video: { facingMode: 'environment' }, audio: false }).then(
      async (opened) => {
        stream = opened
        if (closed || !video.current) return stop(opened)
        video.current.srcObject = opened
        await video.current.play().catch(() => undefined)
        void look()
      },
      (error: unknown) => {
        if (closed) return
        const name = error instanceof DOMException ? error.name : ''
        tell.current.onTrouble(name === 'NotAllowedError' ? 'refused' : 'none')
      },
    )
    return () => {
      closed = true
      clearTimeout(timer)
      if (stream) stop(stream)
    }
  }, [])
  return <video ref={video} className="camera" muted playsInline aria-label={say('pantry:camera')} />
}

function stop(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop()
}
