/** QR codes of one PDF: each drawn once, and placed by its name wherever it stands, as four jars carry the same. */
import { deflateSync } from 'node:zlib'
import type { SquaresInk } from '../layout/ink.ts'

type Doc = PDFKit.PDFDocument
type Rows = SquaresInk['rows']

/** A code is some two thousand bytes; the usual room for packing would be a hundred times that. [bytes] */
const SMALL = { chunkSize: 2048, windowBits: 12, memLevel: 6 }

interface Drawn {
  readonly name: string
  readonly form: PDFKit.PDFKitReference
}

export class DrawnCodes {
  readonly #doc: Doc
  readonly #byRows = new WeakMap<Rows, Drawn>()
  #count = 0

  constructor(doc: Doc) {
    this.#doc = doc
  }

  place({ box, rows }: SquaresInk): void {
    const { name, form } = this.#drawn(rows)
    this.#doc.page.xobjects[name] = form
    const edge = short(box.width / rows.length)
    this.#doc.addContent(`q ${edge} 0 0 ${edge} ${short(box.x)} ${short(box.y)} cm /${name} Do Q`)
  }

  #drawn(rows: Rows): Drawn {
    const known = this.#byRows.get(rows)
    if (known) return known
    this.#count += 1
    const edge = rows.length
    const form = this.#doc.ref({
      Type: 'XObject',
      Subtype: 'Form',
      BBox: [0, 0, edge, edge],
      Resources: {},
      Filter: 'FlateDecode',
    })
    form.end(deflateSync(squaresContent(rows), SMALL))
    const drawn = { name: `Code${this.#count}`, form }
    this.#byRows.set(rows, drawn)
    return drawn
  }
}

/** Black squares of one unit, joined along each row, so that no hairline shows between them. */
function squaresContent(rows: Rows): string {
  let strokes = '0 g'
  for (const [rowIndex, row] of rows.entries()) {
    for (let from = 0; from < row.length; ) {
      let to = from
      while (row[to]) to += 1
      if (to > from) strokes += ` ${from} ${rowIndex} ${to - from} 1 re`
      from = to + 1
    }
  }
  return `${strokes} f`
}

function short(value: number): number {
  return Number(value.toFixed(4))
}
