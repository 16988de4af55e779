/**
 * What a person typed as a number, or null where it is none: a minus, a letter, or a part where a whole number is asked.
 * Nothing typed is 0. `1,100` is a thousand and a hundred where whole numbers are asked, `12,5` twelve and a half elsewhere.
 */
export function typedNumber(text: string, isWhole: boolean): number | null {
  const plain = isWhole ? text.replace(/[\s,]/g, '') : text.trim().replace(',', '.')
  if (!(isWhole ? /^\d*$/ : /^\d*\.?\d*$/).test(plain)) return null
  return plain === '.' ? 0 : Number(plain)
}
