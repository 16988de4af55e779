/** Pictures of a label's squares, as a photo and as what a camera sees; whole, or with a thumb over them. */
import { writeFileSync } from 'node:fs'
import { qrSquares } from '@crib/paper'

const SQUARE_PX = 8
const QUIET_PX = 40

interface Picture {
  readonly width: number
  readonly height: number
  /** 0 black to 255 white. */
  at(x: number, y: number): number
}

function picture(content: string, thumb: boolean): Picture {
  const squares = qrSquares(content)
  const side = squares.length * SQUARE_PX + 2 * QUIET_PX
  return {
    width: side,
    height: side,
    at: (x, y) => {
      // Over two of the three corners by which a reader finds its way.
      if (thumb && x < side / 2) return 128
      const [row, column] = [y, x].map((px) => Math.floor((px - QUIET_PX) / SQUARE_PX))
      return squares[row!]?.[column!] ? 0 : 255
    },
  }
}

/** A photo of the label, as a 24-bit bitmap. */
export function photoOf(content: string, { thumb = false } = {}): { name: string; mimeType: string; buffer: Buffer } {
  const { width, height, at } = picture(content, thumb)
  const row = Math.ceil((width * 3) / 4) * 4
  const buffer = Buffer.alloc(54 + row * height)
  buffer.write('BM', 0, 'latin1')
  buffer.writeUInt32LE(buffer.length, 2)
  buffer.writeUInt32LE(54, 10)
  buffer.writeUInt32LE(40, 14)
  buffer.writeInt32LE(width, 18)
  buffer.writeInt32LE(height, 22)
  buffer.writeUInt16LE(1, 26)
  buffer.writeUInt16LE(24, 28)
  for (let y = 0; y < height; y += 1)
    // A bitmap stands on its head.
    for (let x = 0; x < width; x += 1) buffer.fill(at(x, height - 1 - y), 54 + y * row + x * 3, 57 + y * row + x * 3)
  return { name: 'label.bmp', mimeType: 'image/bmp', buffer }
}

/** What a camera held over the label would see, as a file that Chromium takes for its camera. */
export function writeCameraFile(file: string, content: string): void {
  const width = 640
  const height = 480
  const label = picture(content, false)
  const luma = Buffer.alloc(width * height, 200)
  const left = (width - label.width) >> 1
  const top = (height - label.height) >> 1
  for (let y = 0; y < label.height; y += 1)
    for (let x = 0; x < label.width; x += 1) luma[(top + y) * width + left + x] = label.at(x, y)
  const frame = Buffer.concat([Buffer.from('FRAME\n'), luma, Buffer.alloc((width * height) / 2, 128)])
  const head = Buffer.from(`YUV4MPEG2 W${width} H${height} F10:1 Ip A1:1 C420mpeg2\n`)
  writeFileSync(file, Buffer.concat([head, ...Array.from({ length: 10 }, () => frame)]))
}
