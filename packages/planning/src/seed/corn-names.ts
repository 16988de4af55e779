/** Whether two names mean one corn: a keeper writes "Heron Foot flint 2026" on a tin and "heron foot flint" on a plot. */

/** The corn's own name: without the year at its end, without doubled spaces, in small letters. */
function cornKey(name: string): string {
  const plain = name.normalize('NFC').toLowerCase().replace(/\s+/g, ' ').trim()
  const withoutYear = plain.replace(/[\s,(–-]*\b(19|20)\d{2}\)?$/, '')
  return withoutYear === '' ? plain : withoutYear
}

export function isSameCorn(one: string, other: string): boolean {
  return cornKey(one) === cornKey(other)
}
