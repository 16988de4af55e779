/** Squares of a QR code (ISO/IEC 18004). Leaves out: what the content means. */
import { encode } from 'uqr'

/** Rows of squares, true for black, without the quiet zone. Error correction M: a splash or a thumb may hide 15 %. */
export function qrSquares(content: string): readonly (readonly boolean[])[] {
  return encode(content, { ecc: 'M', border: 0 }).data
}
