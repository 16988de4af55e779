/** The width an element has on the screen, so that a drawing in real pixels keeps its words readable on a phone. */
import { type RefObject, useEffect, useState } from 'react'

export function useWidth(box: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(0)
  useEffect(() => {
    if (!box.current) return
    const watch = new ResizeObserver(([entry]) => setWidth(Math.round(entry?.contentRect.width ?? 0)))
    watch.observe(box.current)
    return () => watch.disconnect()
  }, [box])
  return width
}
