/** A picture from the camera drawn anew: small enough to keep, and without the place and camera its file tells of. */
import { PHOTO_LONGEST_PX, PHOTO_MOST_CHARACTERS } from '@crib/journal'

export interface SmallerPicture {
  readonly mediaType: 'image/jpeg'
  readonly widthPx: number
  readonly heightPx: number
  /** Base64. */
  readonly image: string
}

/** Each step is smaller than the one before; the first that fits is kept. */
const STEPS = [
  { longestPx: PHOTO_LONGEST_PX, quality: 0.8 },
  { longestPx: 1024, quality: 0.7 },
  { longestPx: 800, quality: 0.6 },
  { longestPx: 640, quality: 0.5 },
] as const

/** Null for a file that is no picture this device can read. */
export async function smallerPicture(file: Blob): Promise<SmallerPicture | null> {
  const bitmap = await createImageBitmap(file).catch(() => null)
  if (!bitmap) return null
  try {
    for (const { longestPx, quality } of STEPS) {
      const { widthPx, heightPx } = fitted(bitmap, longestPx)
      const canvas = document.createElement('canvas')
      canvas.width = widthPx
      canvas.height = heightPx
      canvas.getContext('2d')?.drawImage(bitmap, 0, 0, widthPx, heightPx)
      const image = canvas.toDataURL('image/jpeg', quality).split(',')[1] ?? ''
      if (image !== '' && image.length <= PHOTO_MOST_CHARACTERS)
        return { mediaType: 'image/jpeg', widthPx, heightPx, image }
    }
    return null
  } finally {
    bitmap.close()
  }
}

/** Never made larger. */
export function fitted(
  { width, height }: { readonly width: number; readonly height: number },
  longestPx: number,
): { readonly widthPx: number; readonly heightPx: number } {
  const scale = Math.min(1, longestPx / Math.max(width, height))
  return { widthPx: Math.max(1, Math.round(width * scale)), heightPx: Math.max(1, Math.round(height * scale)) }
}
