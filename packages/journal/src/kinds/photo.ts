/** What was seen, as a picture: the handful of a rub test, a suspect jar, an ear. */
import * as v from 'valibot'
import { count, defineKind, id, maybe, name } from './kind.ts'

/** Longest side of a kept picture. [px] */
export const PHOTO_LONGEST_PX = 1280
/** Longest picture as text, under the longest body a store keeps. [characters] */
export const PHOTO_MOST_CHARACTERS = 240_000

/**
 * A picture is the body of its own entry, so it is copied, opened to others and erased like any other words. It is drawn
 * anew before it is kept: place and camera that a file tells of stay behind.
 */
export const photoTaken = defineKind({
  kind: 'photo-taken',
  version: 1,
  schema: v.strictObject({
    photoId: id(),
    /** The batch, lot or run it shows. */
    ofId: id(),
    potLoad: maybe(count(1, 100)),
    /** The one line it shows: the rub test of a handful. */
    ofEntryId: maybe(id()),
    words: maybe(name()),
    mediaType: v.literal('image/jpeg'),
    widthPx: count(1, PHOTO_LONGEST_PX, 'px'),
    heightPx: count(1, PHOTO_LONGEST_PX, 'px'),
    /** Base64 (RFC 4648 section 4) of a JPEG file. */
    image: v.pipe(v.string(), v.regex(/^\/9j\/[A-Za-z0-9+/]+={0,2}$/, 'JPEG'), v.maxLength(PHOTO_MOST_CHARACTERS)),
  }),
  migrate: [],
  entity: ({ photoId }) => `photo:${photoId}`,
})
