/** A sentence to be worded later; a key no message file has does not compile. */
import type { Sentence } from '@crib/science'
import type { MessageKey } from '@crib/wording'

export function say(key: MessageKey, params?: NonNullable<Sentence['params']>): Sentence {
  return params ? { key, params } : { key }
}
