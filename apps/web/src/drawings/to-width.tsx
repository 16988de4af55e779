/** ToWidth: hands its own width in real pixels to what it draws, so that words in a picture keep their size on a phone. */
import { type ReactNode, useEffect, useRef, useState } from 'react'

export function ToWidth({ children }: { readonly children: (width: number) => ReactNode }) {
  const box = useRef<HTMLDivElement>(null)
  const [width, setWidth] = useState(0)
  useEffect(() => {
    if (!box.current) return
    const watch = new ResizeObserver(([entry]) => setWidth(Math.round(entry?.contentRect.width ?? 0)))
    watch.observe(box.current)
    return () => watch.disconnect()
  }, [])
  return <div ref={box}>{width > 0 && children(width)}</div>
}
