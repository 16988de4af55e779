/**
 * What is half typed in a form, kept on this device until it is written down: a reload or a flat battery loses none of it.
 * `const [value, setValue, forget] = useHalfTyped(name, fresh)`. Nothing here is a fact, and nothing of it leaves the device.
 * `forget(written)` keeps what was typed while `written` was on its way into the book.
 */
import { useCallback, useRef, useState } from 'react'
import { useBook } from './book/book.tsx'

export function useHalfTyped<T>(
  name: string,
  fresh: T,
): readonly [value: T, set: (value: T) => void, forget: (written?: T) => void] {
  const { kitchenId } = useBook()
  const key = `half-typed:${kitchenId}:${name}`
  const [held, setHeld] = useState<{ readonly key: string; readonly value: T } | null>(() => read<T>(key))
  // A form that moves on to another subject does not carry the last one's words with it.
  const value = held?.key === key ? held.value : (read<T>(key)?.value ?? fresh)
  const latest = useRef(value)
  latest.current = value
  const set = useCallback(
    (next: T) => {
      latest.current = next
      setHeld({ key, value: next })
      put(key, JSON.stringify(next))
    },
    [key],
  )
  const forget = useCallback(
    (written?: T) => {
      if (written !== undefined && JSON.stringify(latest.current) !== JSON.stringify(written)) return
      setHeld(null)
      put(key, null)
    },
    [key],
  )
  return [value, set, forget]
}

function read<T>(key: string): { readonly key: string; readonly value: T } | null {
  try {
    const kept = localStorage.getItem(key)
    return kept === null ? null : { key, value: JSON.parse(kept) as T }
  } catch {
    return null
  }
}

/** A browser without a shelf of its own simply forgets it. */
function put(key: string, text: string | null): void {
  try {
    if (text === null) localStorage.removeItem(key)
    else localStorage.setItem(key, text)
  } catch {
    // Nothing is lost but the convenience.
  }
}
