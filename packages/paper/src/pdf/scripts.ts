/** Names of the scripts that letters belong to, for saying what the type lacks. */

/** Four-letter codes of ISO 15924, as engines name scripts. Those a household's words are likeliest to be in. */
const SCRIPTS = [
  ...['Arab', 'Armn', 'Beng', 'Cans', 'Cher', 'Cyrl', 'Deva', 'Ethi', 'Geor', 'Grek', 'Gujr', 'Guru', 'Hang', 'Hani'],
  ...['Hebr', 'Hira', 'Kana', 'Khmr', 'Knda', 'Laoo', 'Mlym', 'Mymr', 'Osge', 'Sinh', 'Taml', 'Telu', 'Thai', 'Tibt'],
].map((code) => ({ code, letters: new RegExp(`\\p{Script=${code}}`, 'u') }))

/** Named in the sheet's language: `Cyrillic, Greek`. A letter of no script listed is named by its number: `U+1F33D`. */
export function scriptsOf(letters: Iterable<string>, language: string): string {
  const names = new Intl.DisplayNames([language], { type: 'script' })
  const found = new Set<string>()
  for (const letter of letters) {
    const script = SCRIPTS.find((one) => one.letters.test(letter))
    const number = (letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')
    found.add(script ? (names.of(script.code) ?? script.code) : `U+${number}`)
  }
  return [...found].sort().join(', ')
}
