/** One line on the connection: written here and copied; waiting to be copied; or open only while connected. */
import { useBook } from '../book/book.tsx'
import { useWords } from '../words.tsx'

export function OfflineLine() {
  const { staysHere, asksToSignIn, online, pendingCount, secure } = useBook()
  const { say } = useWords()
  const state = staysHere
    ? say('shell:demo-stays')
    : asksToSignIn
      ? say('shell:people-sign-in-first')
      : !online
        ? pendingCount > 0
          ? say('shell:offline-waiting', { count: pendingCount })
          : say('shell:offline')
        : pendingCount > 0
          ? say('shell:copying', { count: pendingCount })
          : say('shell:copied')
  return (
    <span role="status">
      {state}
      {!secure && ` ${say('shell:only-while-connected')}`}
    </span>
  )
}
