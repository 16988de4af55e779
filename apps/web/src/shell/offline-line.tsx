/**
 * One line on the connection: written here and copied; waiting to be copied; or open only while connected. It changes by
 * itself after every line written, so it always takes the room of its longest: nothing below moves under a finger.
 */
import { useBook } from '../book/book.tsx'
import { useWords } from '../words.tsx'

export function OfflineLine() {
  const { staysHere, asksToSignIn, online, pendingCount, secure } = useBook()
  const { say } = useWords()
  const count = Math.max(1, pendingCount)
  const lines = {
    stays: say('shell:demo-stays'),
    'sign-in': say('shell:people-sign-in-first'),
    waiting: say('shell:offline-waiting', { count }),
    offline: say('shell:offline'),
    copying: say('shell:copying', { count }),
    copied: say('shell:copied'),
  }
  const now = staysHere
    ? 'stays'
    : asksToSignIn
      ? 'sign-in'
      : online
        ? pendingCount > 0
          ? 'copying'
          : 'copied'
        : pendingCount > 0
          ? 'waiting'
          : 'offline'
  const always = secure ? '' : ` ${say('shell:only-while-connected')}`
  const longest = Object.values(lines).reduce((long, line) => (line.length > long.length ? line : long))
  return (
    <span className="strip-state" data-longest={longest + always}>
      <span role="status">{lines[now] + always}</span>
    </span>
  )
}
