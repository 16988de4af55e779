import { createWords } from '@crib/wording'
import { describe, expect, test } from 'vitest'
import { LABEL_CASES, PLAIN_CASES } from '../testing/every-sheet.ts'
import { OSTREY_BATCH, setting } from '../testing/invented-days.ts'
import { batchSheet, renderHtml, renderHtmlPage } from './index.ts'

const CASES = [...PLAIN_CASES, ...LABEL_CASES]
const articleOf = (html: string) => html.slice(0, html.indexOf('</article>'))
const wordsOf = (html: string) =>
  html
    .replace(/<[^>]+>/g, ' ')
    .replaceAll('&#39;', "'")
    .replace(/[\s\u00a0]+/g, ' ')

describe('for the browser', () => {
  test.each(CASES)('$name: as many pages go to the printer as the PDF has', ({ document, pageCount }) => {
    expect(renderHtml(document).match(/<svg class="paper-page"/g)).toHaveLength(pageCount)
  })

  test('the article reads in order, with headings, lists and tables', () => {
    const article = articleOf(renderHtml(PLAIN_CASES[0]!.document))
    for (const tag of ['<h1>', '<h2>', '<dl ', '<ol ', '<table>', '<th scope="col"', 'role="img"']) {
      expect(article).toContain(tag)
    }
    expect(wordsOf(article)).toContain('Care Dressed (treated) seed corn is never food.')
    expect(wordsOf(article)).toContain('Invented demo, not a real kitchen')
  })

  test('what a keeper wrote is text, never markup', () => {
    const batch = '<script>alert(1)</script> & "Lantern"'
    const html = renderHtmlPage(batchSheet({ ...OSTREY_BATCH, batch }, setting('a4'), createWords()))
    expect(html).not.toContain('<script>')
    expect(html).toContain('&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;Lantern&quot;')
  })

  test('a page of its own asks nothing of the network', () => {
    expect(renderHtmlPage(PLAIN_CASES[0]!.document)).not.toMatch(/(src|href)=|url\(|@import/)
  })
})
