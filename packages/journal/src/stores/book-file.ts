import { join } from 'node:path'

/** Where the book is when nobody names a file: KETTLE_BOOK, else a folder of its own in the keeper's home. */
export function defaultBookFile(env: { readonly [name: string]: string | undefined }, home: string): string {
  return env.KETTLE_BOOK || join(home, '.kettle-and-crib', 'book.sqlite')
}
