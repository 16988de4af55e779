/** Reads a PDF back as a printer's customer would: its words, where they lie, its pictures. Needs poppler-utils. */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import jsqr from 'jsqr'
import { PNG } from 'pngjs'

export const POPPLER_FOUND = ['pdftotext', 'pdftoppm'].every((tool) => spawnSync(tool, ['-v']).error === undefined)

/** All words in the order they were printed, spaces made single. */
export function textOf(pdf: Uint8Array): string {
  return withFile(pdf, (file) => run('pdftotext', ['-raw', '-enc', 'UTF-8', file, '-']).toString('utf8'))
    .replace(/[\s\u00a0]+/g, ' ')
    .trim()
}

interface PlacedWord {
  readonly text: string
  readonly xMin: number
  readonly yMin: number
  readonly xMax: number
  readonly yMax: number
}

export interface ReadPage {
  readonly widthPt: number
  readonly heightPt: number
  readonly words: readonly PlacedWord[]
}

export function pagesOf(pdf: Uint8Array): ReadPage[] {
  const xml = withFile(pdf, (file) => run('pdftotext', ['-bbox', file, '-']).toString('utf8'))
  return xml
    .split('<page ')
    .slice(1)
    .map((page) => ({
      widthPt: attribute(page, 'width'),
      heightPt: attribute(page, 'height'),
      words: [...page.matchAll(/<word [^>]*>[^<]*<\/word>/g)].map(([word]) => ({
        text: /<word [^>]*>([^<]*)</.exec(word)?.[1] ?? '',
        xMin: attribute(word, 'xMin'),
        yMin: attribute(word, 'yMin'),
        xMax: attribute(word, 'xMax'),
        yMax: attribute(word, 'yMax'),
      })),
    }))
}

function attribute(xml: string, name: string): number {
  return Number(new RegExp(`${name}="([0-9.]+)"`).exec(xml)?.[1])
}

/** Each page as it would look on paper. */
export function picturesOf(pdf: Uint8Array, dotsPerInch: number): PNG[] {
  return withFile(pdf, (file, folder) => {
    run('pdftoppm', ['-r', String(dotsPerInch), '-png', file, join(folder, 'page')])
    const names = readdirSync(folder).filter((name) => name.endsWith('.png'))
    return names.sort().map((name) => PNG.sync.read(readFileSync(join(folder, name))))
  })
}

export interface Crop {
  readonly x: number
  readonly y: number
  readonly width: number
  readonly height: number
}

/** What a phone reads in this part of a picture; null when it reads nothing. [dots] */
export function codeIn(picture: PNG, crop: Crop): string | null {
  const [x, y, width, height] = [crop.x, crop.y, crop.width, crop.height].map(Math.round) as [
    number,
    number,
    number,
    number,
  ]
  const part = new PNG({ width, height })
  PNG.bitblt(picture, part, x, y, Math.min(width, picture.width - x), Math.min(height, picture.height - y), 0, 0)
  // jsqr is CommonJS: its function is the default export's default under Node's own rules.
  const read =
    (jsqr as unknown as { default?: typeof jsqr.default }).default ?? (jsqr as unknown as typeof jsqr.default)
  return read(new Uint8ClampedArray(part.data), width, height)?.data ?? null
}

/** The tallest unbroken upright stroke of black in a picture. [dots] */
export function tallestStroke(picture: PNG): number {
  let tallest = 0
  for (let x = 0; x < picture.width; x += 1) {
    let stroke = 0
    for (let y = 0; y < picture.height; y += 1) {
      const black = (picture.data[(y * picture.width + x) * 4] ?? 255) < 100
      stroke = black ? stroke + 1 : 0
      tallest = Math.max(tallest, stroke)
    }
  }
  return tallest
}

function withFile<T>(pdf: Uint8Array, use: (file: string, folder: string) => T): T {
  const folder = mkdtempSync(join(tmpdir(), 'paper-'))
  try {
    const file = join(folder, 'sheet.pdf')
    writeFileSync(file, pdf)
    return use(file, folder)
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

function run(tool: string, args: readonly string[]): Buffer {
  const { status, stdout, stderr, error } = spawnSync(tool, args, { maxBuffer: 64 * 1024 * 1024 })
  if (error || status !== 0) throw new Error(`${tool} failed: ${error?.message ?? stderr.toString('utf8')}`)
  return stdout
}
