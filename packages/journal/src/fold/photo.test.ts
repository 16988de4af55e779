import { expect, test } from 'vitest'
import { checkBody } from '../kinds/index.ts'
import { PHOTO_MOST_CHARACTERS } from '../kinds/photo.ts'
import { MOST_BODY_CHARACTERS } from '../stores/admit.ts'
import { testKitchen } from '../testing/invented.ts'
import { foldFacts } from './fold.ts'
import { history } from './history.ts'

const kitchen = testKitchen()
const body = {
  photoId: kitchen.newId(),
  ofId: kitchen.newId(),
  potLoad: 1,
  words: 'half of them slip',
  mediaType: 'image/jpeg' as const,
  widthPx: 640,
  heightPx: 480,
  image: '/9j/4AAQ',
}

test('the facts tell of a picture, its bytes stay in its entry', () => {
  const entry = kitchen.author().write('photo-taken', body)
  const facts = foldFacts([entry])
  const { image, ...rest } = body
  expect(facts.photos[body.photoId]).toMatchObject(rest)
  expect(facts.photos[body.photoId]).not.toHaveProperty('image')
  expect(history(facts, entry.envelope.id)!.standing!.body).toMatchObject({ image })
})

test('a picture that is no JPEG, is too long, or was not made smaller first is refused', () => {
  const long = `/9j/${'A'.repeat(PHOTO_MOST_CHARACTERS)}`
  for (const wrong of [{ image: 'iVBORw0KGgo=' }, { image: long }, { widthPx: 4032 }])
    expect(checkBody('photo-taken', { ...body, ...wrong } as never).ok, JSON.stringify(wrong).slice(0, 40)).toBe(false)
  const longest = { ...body, image: long.slice(0, PHOTO_MOST_CHARACTERS) }
  expect(checkBody('photo-taken', longest).ok).toBe(true)
  expect(JSON.stringify(longest).length).toBeLessThan(MOST_BODY_CHARACTERS)
})
