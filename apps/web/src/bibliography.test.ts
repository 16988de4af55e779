import { readFileSync } from 'node:fs'
import { expect, test } from 'vitest'
import { readBib } from './bibliography.ts'

const bib = readFileSync(new URL('../../../packages/science/sources.bib', import.meta.url), 'utf8')

test('every key of the bibliography is found, each with a title', () => {
  const keys = [...bib.matchAll(/^@\w+\s*\{\s*([^,\s]+)/gm)].map(([, key]) => key)
  const sources = readBib(bib)
  expect(keys.length).toBeGreaterThan(20)
  expect(Object.keys(sources).sort()).toEqual([...keys].sort())
  const untitled = Object.entries(sources).filter(([key, { title }]) => title === key || title === '')
  expect(untitled).toEqual([])
})

test('braces, nested braces and quotes are taken off, and a link is found in howpublished', () => {
  const source = readBib(`@misc{a-2020,
  author = {{Office of Kettles}},
  title = {On {Hominy}},
  year = 2020,
  howpublished = {\\url{https://example.org/a}},
  note = {seen}
}`)['a-2020']
  expect(source).toEqual({
    author: 'Office of Kettles',
    title: 'On Hominy',
    year: '2020',
    url: 'https://example.org/a',
    note: 'seen',
  })
})
