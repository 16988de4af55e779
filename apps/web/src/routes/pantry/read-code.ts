/** Reading a QR code out of a picture, on this device alone. The reader is fetched only when somebody scans. */

/** The text of the first code found in the picture; null where none can be read: none there, or too damaged. */
export async function readCode(image: ImageData): Promise<string | null> {
  const { default: read } = await import('jsqr')
  return read(image.data, image.width, image.height)?.data ?? null
}

/** Larger pictures are drawn smaller: a label needs no more, and an old phone takes seconds over a whole photo. [px] */
const LARGEST_PX = 1200

/** A photo as pixels. @throws when the file is no picture the browser knows. */
export async function pixelsOfFile(file: Blob): Promise<ImageData> {
  const bitmap = await createImageBitmap(file)
  try {
    return pixelsOf(bitmap, bitmap.width, bitmap.height)
  } finally {
    bitmap.close()
  }
}

export function pixelsOf(source: CanvasImageSource, width: number, height: number): ImageData {
  const scale = Math.min(1, LARGEST_PX / Math.max(width, height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(width * scale))
  canvas.height = Math.max(1, Math.round(height * scale))
  const context = canvas.getContext('2d', { willReadFrequently: true })
  if (!context) throw new Error('this browser cannot read a picture')
  context.drawImage(source, 0, 0, canvas.width, canvas.height)
  return context.getImageData(0, 0, canvas.width, canvas.height)
}
