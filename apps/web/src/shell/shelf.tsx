/** The parts as tags on one string: along the bottom on a phone, down the left edge on a laptop. */
import { useEffect, useRef } from 'react'
import { Link, useLocation } from 'wouter'
import { useWords } from '../words.tsx'
import { PARTS } from './parts.ts'

export function Shelf() {
  const { say } = useWords()
  const [location] = useLocation()
  const list = useRef<HTMLUListElement>(null)
  const current = partOf(location)
  // biome-ignore lint/correctness/useExhaustiveDependencies: the tag to show is the one of this address
  useEffect(() => {
    const shelf = list.current
    const tag = shelf?.querySelector<HTMLElement>('[aria-current="page"]')
    if (!shelf || !tag) return
    // Only sideways: the page itself must not move.
    shelf.scrollLeft = tag.offsetLeft - (shelf.clientWidth - tag.offsetWidth) / 2
  }, [current])
  return (
    <nav className="shelf" aria-label={say('shell:parts')}>
      <ul ref={list}>
        {PARTS.map(({ path, name }) => (
          <li key={path}>
            <Link href={path} className="tag" aria-current={path === current ? 'page' : undefined}>
              {say(name)}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  )
}

function partOf(location: string): string {
  const first = location.split('/')[1] ?? ''
  return `/${first}`
}
