/**
 * Line drawings of the trade's own things, drawn for this book. One stroke width, one 48-unit square, the colour of the words.
 * Props: name (which drawing). Always beside words, so always hidden from a screen reader.
 */
const LINES = {
  /** A flint kernel: rounded crown, pointed tip cap, and the germ. */
  kernel:
    'M24 5c9 0 14 6 14 14 0 9-6 17-10 21-1 2-1 4-4 4s-3-2-4-4C16 36 10 28 10 19 10 11 15 5 24 5z M24 17c3 0 4.5 2.5 4.5 6 0 4-2 8-4.5 10-2.5-2-4.5-6-4.5-10 0-3.500 1.500-6 4.500-6z',
  /** A seed ear with its husk pulled back. */
  ear: 'M24 4c5 0 8 6 8 15s-3 17-8 17-8-8-8-17S19 4 24 4z M24 6v28 M17 13h14 M16 20h16 M17 27h14 M18 31C11 31 7 36 6 44c7 0 12-3 18-8 6 5 11 8 18 8-1-8-5-13-12-13',
  /** Ears tied in a braid, hung from a nail. */
  braid:
    'M24 3v5 M24 8c-6 3-6 7 0 10s6 7 0 10-6 7 0 10 3 5 0 7 M24 8c6 3 6 7 0 10s-6 7 0 10 6 7 0 10-3 5 0 7 M19 12c-6-1-10 1-12 5 5 2 9 1 12-1 M29 22c6-1 10 1 12 5-5 2-9 1-12-1 M19 32c-6-1-10 1-12 5 5 2 9 1 12-1',
  /** The hulling pot, on, with steam. */
  pot: 'M8 20h32v14c0 5-3 8-8 8H16c-5 0-8-3-8-8z M4 20h40 M8 25H4.500v5H8 M40 25h3.500v5H40 M17 14c-2-4 3-5 1-9 M25 14c-2-4 3-5 1-9 M33 14c-2-4 3-5 1-9',
  /** The neck of a jar: threads, lid, shoulder, headspace. */
  jar: 'M15 4h18v7H15z M16 11v4c0 3-6 5-6 10v15c0 2 1 4 4 4h20c3 0 4-2 4-4V25c0-5-6-7-6-10v-4 M16 14h16 M12 23h24 M18 31h.1 M25 28h.1 M30 33h.1 M22 37h.1 M31 39h.1',
  /** A pressure canner: lugs, gauge, weight. */
  canner:
    'M7 25h34v17c0 2-1 3-3 3H10c-2 0-3-1-3-3z M5 19h38v6H5z M10 19c2-3 7-4 14-4s12 1 14 4 M18 15v-3 M22 7.500a4 4 0 1 1-8 0 4 4 0 0 1 8 0z M18 7.500l2-1.500 M31 15v-5h4 M3 31h4 M41 31h4',
  tag: 'M13 14 20 6h13l7 8v30H13z M26.500 10.500a3 3 0 1 1-.1 0z M26.500 10c-1-5 6-8 12-7 M19 24h15 M19 31h15 M19 38h9',
  tin: 'M9 12c0-3 7-5 15-5s15 2 15 5-7 5-15 5-15-2-15-5z M9 12v25c0 4 7 6 15 6s15-2 15-6V12 M16 28h16 M16 34h10',
  /** A ridge with a hill of corn coming up. */
  field:
    'M3 38c7-5 13-5 21-5s14 0 21 5 M24 33V13 M24 24c-3-8-9-9-14-8 1 6 6 9 14 8z M24 19c2-8 8-10 13-9 0 6-5 10-13 9z M5 44h38',
  sheet: 'M10 6l3 2 4-2 4 2 4-2 4 2 4-2 5 2v36H10z M17 14v26 M22 17h11 M22 24h11 M22 31h8',
  scale: 'M24 6v36 M14 43h20 M8 13h32 M8 13l-5 13h10z M40 13l-5 13h10z M3 26c1 4 9 4 10 0 M35 26c1 4 9 4 10 0 M24 6h.1',
  house: 'M5 23 24 7l19 16 M10 19v24h28V19 M20 43V31h8v12 M33 15V8h4v10',
  /** The year: ears hung along a beam. */
  year: 'M3 8h42 M12 8v5 M24 8v8 M36 8v5 M12 13c4 3 4 15 0 19-4-4-4-16 0-19z M24 16c4 3 4 17 0 22-4-5-4-19 0-22z M36 13c4 3 4 15 0 19-4-4-4-16 0-19z M9 20h6 M9.500 26h5 M21 24h6 M21 31h6 M33 20h6 M33.500 26h5',
  tick: 'M8 26l10 10L40 12',
  /** Care: an open hand. */
  hand: 'M15 27V12a3 3 0 0 1 6 0v11 M21 22V8a3 3 0 0 1 6 0v14 M27 22V10a3 3 0 0 1 6 0v15 M33 25v-8a3 3 0 0 1 6 0v14c0 8-5 13-13 13-6 0-9-2-12-7L8 28c-2-4 3-6 5-3l2 3',
  /** A cut string: no connection. */
  'cut-string':
    'M3 24c5-6 9-6 13 0 M45 24c-5 6-9 6-13 0 M16 24l3-4 M16 24l3 3 M32 24l-3 4 M32 24l-3-3 M24 14v4 M24 30v4',
  string: 'M3 24c7-9 14-9 21 0s14 9 21 0',
  clock: 'M24 4a20 20 0 1 1-.1 0z M24 12v12l8 6',
  flag: 'M10 5v39 M10 8c9-5 15 5 27 0v18c-12 5-18-5-27 0',
} as const

export type DrawingName = keyof typeof LINES

export function Drawing({ name, className }: { readonly name: DrawingName; readonly className?: string }) {
  return (
    <svg
      viewBox="0 0 48 48"
      fill="none"
      stroke="currentColor"
      strokeWidth="2.5"
      strokeLinecap="round"
      strokeLinejoin="round"
      aria-hidden="true"
      focusable="false"
      className={className}
    >
      <path d={LINES[name]} />
    </svg>
  )
}
