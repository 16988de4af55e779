/** Preview: an empty book in memory, until the book on the device is joined to it. */
import { type ReactNode, useMemo, useState } from 'react'
import { type Book, BookContext } from './book.tsx'
import { EMPTY_FACTS } from './empty-facts.ts'
import { newId } from './new-id.ts'

export function BookProvider({ children }: { readonly children: ReactNode }) {
  const [kitchenId, setKitchenId] = useState<string | null>(null)
  const book = useMemo<Book>(
    () => ({
      ready: true,
      failure: null,
      kitchenId,
      facts: EMPTY_FACTS,
      write: async () => {
        throw new Error('the preview book keeps nothing')
      },
      newId: () => newId(),
      pendingCount: 0,
      online: true,
      secure: window.isSecureContext,
      clockQuestion: null,
      answerClockQuestion: () => undefined,
      openOwnKitchen: async () => setKitchenId(newId()),
      openDemoKitchen: async () => setKitchenId(newId()),
      joinKitchen: async (id) => setKitchenId(id),
      closeKitchen: async () => setKitchenId(null),
      kitchensOnServer: async () => [],
    }),
    [kitchenId],
  )
  return <BookContext value={book}>{children}</BookContext>
}
