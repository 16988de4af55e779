/** A document as a PDF file. Node only: it reads the font files. */
import { once } from 'node:events'
import PDFDocument from 'pdfkit'
import { eachPage, layOut, type PageOfInk } from '../layout/pages.ts'
import type { PaperDocument } from '../model.ts'
import { DrawnCodes } from './drawn-codes.ts'
import { Faces } from './faces.ts'
import { paint } from './paint.ts'
import { scriptsOf } from './scripts.ts'

export { LabelTooSmallError } from '../layout/labels.ts'

/** Of the messages. */
const LANGUAGE = 'en'

/**
 * A PDF of the document: vector ink, real text, embedded type. The same document gives the same bytes.
 *
 * @throws {RangeError} when `madeAt` is no instant, or labels share a document with other blocks.
 * @throws {LabelTooSmallError} when a label cannot hold its shortest wording at 9 pt.
 */
export async function renderPdf(document: PaperDocument): Promise<Uint8Array> {
  const madeAt = new Date(document.madeAt)
  if (Number.isNaN(madeAt.getTime()))
    throw new RangeError(`madeAt is "${document.madeAt}"; it must be a UTC instant, ISO 8601`)
  const doc = new PDFDocument({
    autoFirstPage: false,
    margin: 0,
    lang: LANGUAGE,
    displayTitle: true,
    pdfVersion: '1.7',
    info: { Title: document.title, Producer: 'Kettle & Crib', Creator: 'Kettle & Crib', CreationDate: madeAt },
  })
  const written: Uint8Array[] = []
  const faces = new Faces(doc)
  const codes = new DrawnCodes(doc)
  for (const page of pagesOf(document, faces)) {
    doc.addPage({ size: [page.widthPt, page.heightPt], margin: 0 })
    for (const ink of page.ink) paint(doc, faces, codes, ink)
    takeWritten(doc, written)
  }
  const ended = once(doc, 'end')
  doc.end()
  takeWritten(doc, written)
  await ended
  return joined(written)
}

/** What is ready of the file, so that a page once written is held no longer than its own few bytes. */
function takeWritten(doc: PDFKit.PDFDocument, written: Uint8Array[]): void {
  for (let bytes = doc.read(); bytes !== null; bytes = doc.read()) written.push(Uint8Array.from(bytes as Buffer))
}

/** Missing letters are known only once everything was measured, and the footer must say so. */
function pagesOf(document: PaperDocument, faces: Faces): Iterable<PageOfInk> {
  // Labels have no footer.
  if (document.blocks[0]?.kind === 'labels') return eachPage(document, faces)
  const pages = layOut(document, faces)
  return faces.missingLetters.size === 0 ? pages : layOut(document, faces, scriptsOf(faces.missingLetters, LANGUAGE))
}

function joined(parts: readonly Uint8Array[]): Uint8Array {
  const whole = new Uint8Array(parts.reduce((total, { length }) => total + length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}
