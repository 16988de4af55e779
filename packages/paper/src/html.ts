/** The same document for a browser: an article to read on the screen, and its pages for the printer. Needs no network. */
import { escapeHtml } from './escape-html.ts'
import { blockHtml } from './html-blocks.ts'
import type { PaperDocument } from './model.ts'
import { PRINT_CSS } from './print-css.ts'
import { pagesSvg } from './print-pages.ts'

/**
 * HTML to put into a page that carries PRINT_CSS and the two faces. On the screen it is an article with headings, lists
 * and tables; on paper it is the very pages of the PDF.
 *
 * @throws {LabelTooSmallError} when a label cannot hold its shortest wording at 9 pt.
 */
export function renderHtml(document: PaperDocument): string {
  const { paper, footer } = document
  const invented = document.invented ? ` <strong>${escapeHtml(footer.inventedLine)}</strong>` : ''
  const foot = `<footer>${escapeHtml(document.title)} · ${escapeHtml(footer.edition)}${invented}</footer>`
  const article = `<article class="paper"${document.largePrint ? ' data-print="large"' : ''} lang="en">${document.blocks.map(blockHtml).join('')}${foot}</article>`
  return `${article}<div class="paper-pages" data-paper="${paper}">${pagesSvg(document)}</div>`
}

/** A whole page, for a frame or a file of its own. */
export function renderHtmlPage(document: PaperDocument): string {
  return `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>${escapeHtml(document.title)}</title><style>${PRINT_CSS}</style></head><body>${renderHtml(document)}</body></html>`
}
