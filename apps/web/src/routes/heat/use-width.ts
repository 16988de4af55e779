/** The width an element has on the screen, so that a drawing in real pixels keeps its words readable on a phone. */
import { type RefObject, useLayoutEffect, useState } from 'react'

export function useWidth(box: RefObject<HTMLElement | null>): number {
  const [width, setWidth] = useState(0)
  // Before the page is shown, so that what stands below does not move.
  useLayoutEffect(() => {
    if (!box.current) return
    setWidth(Math.round(box.current.clientWidth))
    const watch = new ResizeObserver(([entry]) => setWidth(Math.round(entry?.contentRect.width ?? 0)))
    watch.observe(box.current)
    return () => watch.disconnect()
  }, [box])
  return width
}
