/** A noun of the keeper's may open a name, and is written small in the middle of a sentence. */
export function upperFirst(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
