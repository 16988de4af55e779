/** The words of every part, fetched after the first screen. The terminal's own are for the terminal. */
import { ENGLISH, type MessageFiles } from '@crib/wording'

export const ALL_WORDS: MessageFiles = ENGLISH
