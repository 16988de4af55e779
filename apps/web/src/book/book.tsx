/**
 * The open book, for every screen: `const { facts, write, newId } = useBook()`.
 * facts: what the book says now. write(kind, body, { happenedAt? }): keeps an entry on this device, then changes the screen;
 *   throws BodyRefused with a reason for each field. newId(): an id for a new lot, pot, batch or run.
 * pendingCount: entries this device has kept and the server has not. online: the server answered lately.
 */
import type { BodyOf, Facts, Kind, KitchenSummary, Role, StoredEntry, WriteOptions } from '@crib/journal'
import { createContext, useContext } from 'react'
import type { ClockQuestion } from './clock-watch.ts'

export interface Book {
  readonly ready: boolean
  readonly failure: unknown
  /** Null until a kitchen is chosen. */
  readonly kitchenId: string | null
  readonly facts: Facts
  write<K extends Kind>(kind: K, body: BodyOf<K>, options?: WriteOptions): Promise<StoredEntry>
  newId(): string
  readonly pendingCount: number
  readonly online: boolean
  /** The invented kitchen of this device: never copied anywhere. */
  readonly staysHere: boolean
  /** False on plain HTTP from another machine: no service worker there, so the book opens only while connected. */
  readonly secure: boolean
  /** This person's role in the open kitchen; undefined at home, where nobody signs in. */
  readonly role: Role | undefined
  /** The house server asks who is there; until somebody signs in nothing is copied. */
  readonly asksToSignIn: boolean
  readonly clockQuestion: ClockQuestion | null
  answerClockQuestion(): void
  openOwnKitchen(name: string): Promise<void>
  openDemoKitchen(): Promise<void>
  /** A kitchen the server holds, for example one opened on another device of the house. */
  joinKitchen(kitchenId: string): Promise<void>
  closeKitchen(): Promise<void>
  /** Goes on as the person who signed in, in their kitchen, and opens the page anew. */
  goOnAs(personId: string, kitchenId: string | null): Promise<void>
  kitchensOnServer(): Promise<readonly KitchenSummary[]>
}

export const BookContext = createContext<Book | null>(null)

export function useBook(): Book {
  const book = useContext(BookContext)
  if (!book) throw new Error('useBook is used outside the book')
  return book
}

export type { ClockQuestion }
