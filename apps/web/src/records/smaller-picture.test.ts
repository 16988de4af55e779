import { expect, test } from 'vitest'
import { fitted } from './smaller-picture.ts'

test('a picture keeps its shape within the longest side, and is never made larger', () => {
  expect(fitted({ width: 4032, height: 3024 }, 1280)).toEqual({ widthPx: 1280, heightPx: 960 })
  expect(fitted({ width: 3024, height: 4032 }, 1280)).toEqual({ widthPx: 960, heightPx: 1280 })
  expect(fitted({ width: 640, height: 480 }, 1280)).toEqual({ widthPx: 640, heightPx: 480 })
  expect(fitted({ width: 9000, height: 2 }, 1280)).toEqual({ widthPx: 1280, heightPx: 1 })
})
