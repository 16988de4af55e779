/** The words of a choice: a message where the stored word alone would say too little, else the word itself. */
import { ENGLISH, type MessageKey } from '@crib/wording'

export function optionWords(option: string, say: (key: MessageKey) => string): string {
  const key = `option-${option}`
  if (key in ENGLISH.workbench) return say(`workbench:${key}` as MessageKey)
  const words = option.replaceAll('-', ' ')
  return words.charAt(0).toUpperCase() + words.slice(1)
}
